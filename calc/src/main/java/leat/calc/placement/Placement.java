package leat.calc.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.calc.HeadPhases;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.placement.internal.Found;
import leat.calc.placement.internal.Lattice;
import leat.calc.placement.internal.Offer;
import leat.calc.placement.internal.Search;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.HeadShape;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Bound;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.Id;
import leat.model.plan.Aspect;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Count;
import leat.model.quantity.UnitSystem;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Watering;
import leat.model.water.Head;

/** Places the heads and drip lines that are missing. A stage: replaces planned ones only. */
public final class Placement {

    private Placement() {}

    /**
     * Goes through the surfaces by name, those of later last; heads placed on one count for the next where they reach it,
     * but heads of later count for nothing of now. A surface that given heads reach already gets none. A bed
     * watered by drip gets drip lines, unless some are given or it has bubblers. Where full reach cannot be had, gives the best it found and a reason.
     *
     * @throws InvalidValueException if a family is unknown, is neither rotor nor spray, or does not make the drip line that it is to
     */
    public static Proposal run(Site site, PlacementParameters parameters, Progress progress) {
        Yard yard = site.yard();
        List<Offer> offers = offers(site, parameters);
        List<Head> heads = new ArrayList<>(yard.water().heads().stream()
                .filter(head -> !yard.isPlanned(head.id(), Aspect.POSITION))
                .toList());
        List<Id> placed = new ArrayList<>();
        List<Bound> bounds = new ArrayList<>();
        List<Reason> reasons = new ArrayList<>();
        DripBeds drip = DripBeds.of(site, parameters.drip(), heads, lattice(yard));
        heads.addAll(drip.lines());
        drip.lines().forEach(line -> placed.add(line.id()));
        reasons.addAll(drip.reasons());
        boolean stopped = false;
        List<Surface> surfaces = wantingHeads(yard);
        for (int i = 0; i < surfaces.size(); i++) {
            Surface surface = surfaces.get(i);
            progress.at((double) i / surfaces.size(), "heads of " + surface.id());
            if (progress.stopped()) {
                stopped = true;
                break;
            }
            SurfacePlot plot =
                    SurfacePlot.of(site, parameters, surface, counting(heads, surface, yard), farthestM(offers));
            double reserve = parameters.reserve().value();
            double paceRatio = site.rules().get("zoning.precipitation").limit().si();
            int effort = (int) parameters.effort().value();
            Found found = new Search(plot.plot(), plot.given(), reserve, paceRatio, effort, progress::stopped)
                    .run(offers, lattice(yard));
            List<Head> made = MadeHeads.of(surface, found, heads);
            heads.addAll(made);
            made.forEach(head -> placed.add(head.id()));
            stopped |= found.cutShort();
            bounds.add(new Bound(
                    MadeHeads.prefix(surface) + "heads",
                    Count.of(made.size()),
                    Count.of(Math.min(made.size(), found.least()))));
            if (found.missing() > 0) {
                reasons.add(new Reason(
                        Subject.of(surface.id()),
                        "no head of the families on offer reaches the rest of " + surface.id()
                                + " without throwing on what must stay dry"));
            }
        }
        Status status = stopped ? Status.STOPPED : reasons.isEmpty() ? Status.COMPLETE : Status.PARTIAL;
        return new Proposal(HeadReplacement.in(yard, heads, placed), status, bounds, reasons);
    }

    /** A tenth of a foot or five centimetres. */
    private static Lattice lattice(Yard yard) {
        return yard.units() == UnitSystem.US ? new Lattice(0.3048, 10) : new Lattice(1, 20);
    }

    private static List<Head> counting(List<Head> heads, Surface surface, Yard yard) {
        return heads.stream()
                .filter(head -> HeadPhases.of(head, yard).compareTo(surface.phase()) <= 0)
                .toList();
    }

    private static List<Surface> wantingHeads(Yard yard) {
        return yard.terrain().surfaces().stream()
                .filter(surface -> surface.watering() == Watering.HEADS)
                .filter(surface -> surface.kind() == SurfaceKind.LAWN || surface.kind() == SurfaceKind.BED)
                .sorted(Comparator.comparing(Surface::phase)) // keeps the order of names within a phase
                .toList();
    }

    private static List<Offer> offers(Site site, PlacementParameters parameters) {
        List<Offer> offers = new ArrayList<>();
        for (String key : parameters.families()) {
            HeadFamily family = site.catalog().head(key);
            if (family.shape() != HeadShape.ROTOR && family.shape() != HeadShape.SPRAY) {
                throw new InvalidValueException(
                        "placement", "families", "'" + key + "', a " + family.shape(), "rotors and sprays");
            }
            offers.add(Offer.of(
                    offers.size(), family, site.catalog().profile(family.jet().profile())));
        }
        return offers;
    }

    private static double farthestM(List<Offer> offers) {
        return offers.stream().mapToDouble(Offer::radiusM).max().orElse(0);
    }
}
