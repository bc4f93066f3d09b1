package leat.calc.trenching;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leat.calc.GroundLine;
import leat.calc.GroundLines;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.Tolls;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.site.ExistingService;
import leat.model.trench.TrenchSegment;
import leat.model.water.Head;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/** Where holes and trenches come near to lines that lie in the ground already. */
final class HoleReview {

    private final Site site;
    private final List<Finding> findings;

    HoleReview(Site site, List<Finding> findings) {
        this.site = site;
        this.findings = findings;
    }

    /** Heads and valve boxes that are to be built; those on pipes that are there stand already. */
    void look() {
        WaterSystem water = site.yard().water();
        List<GroundLine> lines = GroundLines.of(site.yard());
        for (Head head : water.heads()) {
            if (!isThere(feeding(head, water))) {
                holdHole(head.id(), head.at(), lines);
            }
        }
        List<GroundLine> others =
                lines.stream().filter(line -> !(line.id() instanceof PipeId)).toList();
        for (Manifold manifold : water.manifolds()) {
            holdHole(manifold.id(), manifold.at(), others); // it is joined to the main, so it may stand on it
        }
        site.yard().terrain().services().forEach(this::holdTrenches);
    }

    private static Optional<PipeRun> feeding(Head head, WaterSystem water) {
        return water.laterals().stream()
                .flatMap(lateral -> Optional.ofNullable(lateral.heads().get(head.id())).stream())
                .findFirst()
                .flatMap(water::pipe);
    }

    private static boolean isThere(Optional<PipeRun> run) {
        return run.filter(PipeRun::existing).isPresent();
    }

    /** Only the nearest line counts. */
    private void holdHole(Id id, Point at, List<GroundLine> lines) {
        double nearestM = Double.POSITIVE_INFINITY;
        String nearest = "";
        for (GroundLine line : lines) {
            double awayM = Math.max(
                    0, line.route().nearest(at).distanceM(at) - line.doubt().metres());
            if (awayM < nearestM) {
                nearestM = awayM;
                nearest = Barriers.name(line.id());
            }
        }
        Rule rule = site.rules().get("trench.hole");
        if (nearestM < Double.POSITIVE_INFINITY && !rule.isKeptBy(new Length(nearestM))) {
            findings.add(Finding.of(
                    rule,
                    Subject.of(id, "near " + nearest),
                    new Length(nearestM),
                    "set it further off, or have the line marked and dig that hole by hand"));
        }
    }

    /** One for each line, so that who reads it knows where to go slowly. */
    private void holdTrenches(ExistingService service) {
        double nearM = site.rules().get("trench.service").limit().si()
                + service.doubt().metres();
        var near = new Tolls();
        near.add(DigSite.strip(service.route().points(), nearM), 2);
        double sumM = 0;
        List<TrenchSegment> trenches = new ArrayList<>();
        for (TrenchSegment trench : site.yard().trenches()) {
            double insideM = TrenchPlaces.insideM(near, trench);
            if (insideM > TrenchPlaces.TOUCH_M) {
                sumM += insideM;
                trenches.add(trench);
            }
        }
        Rule rule = site.rules().get("trench.by-hand");
        if (!rule.isKeptBy(new Length(sumM))) {
            String names = trenches.stream().map(one -> one.id().name()).collect(Collectors.joining(", "));
            findings.add(Finding.of(
                    rule,
                    Subject.of(service.id()),
                    new Length(sumM),
                    "have it marked by its owner before anything is dug, then dig by hand in " + names));
        }
    }
}
