package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Region;
import leat.model.id.OutletId;
import leat.model.plan.Yard;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.PowerSystem;
import leat.model.power.Transformer;
import leat.model.quantity.Length;
import leat.model.quantity.Power;
import leat.model.quantity.Ratio;
import leat.model.site.SurfaceKind;

/** Figures of transformers, and what is wrong with them, their outlets, and the places of their lamps. */
final class TransformerReview {

    private static final Citation SUM = new Citation("sum of the lines above", Standing.RECOMPUTED);

    private final Yard yard;
    private final PowerSystem power;
    private final ElectricalCode code;
    private final List<CircuitReview> circuits;

    TransformerReview(Yard yard, ElectricalCode code, List<CircuitReview> circuits) {
        this.yard = yard;
        this.power = yard.power();
        this.code = code;
        this.circuits = circuits;
    }

    TransformerFigures figures(Transformer transformer) {
        Power load = load(of(transformer));
        return new TransformerFigures(transformer.id(), load, transformer.rating(), share(load, transformer.rating()));
    }

    private List<CircuitReview> of(Transformer transformer) {
        return circuits.stream()
                .filter(one -> one.circuit().supply().equals(transformer.id()))
                .toList();
    }

    private static Power load(List<CircuitReview> reviews) {
        return new Power(reviews.stream().mapToDouble(one -> one.taken().si()).sum());
    }

    private static Ratio share(Power load, Power rating) {
        return Ratio.of(load.si() / rating.si());
    }

    /** What each circuit takes, their sum, and its share of the rating. */
    List<Step> load(Transformer transformer) {
        List<Step> steps = new ArrayList<>();
        for (CircuitReview review : of(transformer)) {
            steps.add(Steps.step(
                    "taken by circuit " + review.circuit().id() + ", losses of its cables included",
                    "P = U · I",
                    review.taken(),
                    Steps.OHM,
                    Steps.input("U", review.circuit().voltage()),
                    Steps.input("I", review.figures().current())));
        }
        Power load = load(of(transformer));
        steps.add(new Step("load of the transformer", "Σ P", List.of(), load, SUM));
        steps.add(Steps.step(
                "share of its rating",
                "P / P₀",
                share(load, transformer.rating()),
                SUM,
                Steps.input("P", load),
                Steps.input("P₀", transformer.rating())));
        return steps;
    }

    void look(Looks looks) {
        SortedMap<OutletId, Power> plugged = new TreeMap<>();
        for (Transformer transformer : power.transformers()) {
            lookAtLoad(transformer, looks);
            looks.note(
                    code.lampListing(),
                    Subject.of(transformer.id()),
                    "ask for the mark, and lay all by the instructions that come with it");
            transformer.plug().ifPresent(plug -> {
                plugged.merge(plug, transformer.rating(), Power::plus);
                outlet(plug).ifPresent(outlet -> lookAtCord(transformer, outlet, looks));
            });
        }
        plugged.forEach((id, rating) -> outlet(id)
                .ifPresent(outlet -> looks.hold(
                        looks.rule("power.transformer.outlet"),
                        Subject.of(id, "power"),
                        rating,
                        outlet.power(),
                        "reckon with as much for the outlet: draws")));
        power.luminaires().forEach(one -> lookAtWater(one, looks));
    }

    private Optional<Outlet> outlet(OutletId id) {
        return power.outlets().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    private void lookAtLoad(Transformer transformer, Looks looks) {
        Ratio loaded = figures(transformer).loaded();
        Subject subject = Subject.of(transformer.id(), "load");
        String advice = "take one of a greater rating, or put fewer lamps on it";
        if (looks.rule("power.transformer.rating").isKeptBy(loaded)) {
            looks.hold(looks.rule("power.transformer.load"), subject, loaded, advice);
        } else {
            looks.hold(looks.rule("power.transformer.rating"), subject, loaded, advice);
        }
    }

    private static void lookAtCord(Transformer transformer, Outlet outlet, Looks looks) {
        looks.hold(
                looks.rule("power.transformer.cord"),
                Subject.of(transformer.id(), "at"),
                transformer.at().distance(outlet.at()),
                "hang it nearer to the outlet; lengthen the cable of low voltage, not the cord");
    }

    private void lookAtWater(Luminaire luminaire, Looks looks) {
        boolean isLow = luminaire.lamp().isPresent()
                || circuits.stream()
                        .anyMatch(one -> one.circuit().isLowVoltage()
                                && luminaire
                                        .circuit()
                                        .filter(one.circuit().id()::equals)
                                        .isPresent());
        if (!isLow) {
            return;
        }
        yard.terrain().surfaces().stream()
                .filter(surface -> surface.kind() == SurfaceKind.WATER)
                .map(surface -> away(surface.region(), luminaire.at()))
                .min(Length::compareTo)
                .ifPresent(away -> looks.hold(
                        code.lampWaterDistance(),
                        Subject.of(luminaire.id(), "at"),
                        away,
                        "set it further away, or take lamps and cable that are made for the water's edge and ask the"
                                + " inspector"));
    }

    private static Length away(Region region, Point point) {
        if (region.contains(point)) {
            return Length.ZERO;
        }
        List<Point> ring = new ArrayList<>(region.outer());
        ring.add(ring.get(0));
        return new Polyline(ring).nearest(point).distance(point);
    }
}
