package leat.calc.trenching;

import java.util.List;
import leat.calc.internal.lines.Nearness;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.Tolls;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.site.ExistingService;
import leat.model.site.LimitLine;
import leat.model.site.Obstacle;
import leat.model.site.Terrain;
import leat.model.trench.TrenchSegment;

/** Whether trenches run where they may. */
final class TrenchPlaces {

    /** Less than this inside a forbidden patch is rounding, or a pipe that ends at a wall. */
    static final double TOUCH_M = 0.005;

    private final Site site;
    private final Barriers barriers;
    private final Tolls roots = new Tolls();
    private final Tolls lot = new Tolls();

    TrenchPlaces(Site site) {
        this.site = site;
        Terrain terrain = site.yard().terrain();
        barriers = new Barriers(terrain);
        for (Obstacle obstacle : terrain.obstacles()) {
            if (obstacle instanceof Obstacle.Tree tree) {
                roots.add(DigSite.disc(tree.at(), tree.rootZone()), 2);
            }
        }
        terrain.lot().map(DigSite::patch).ifPresent(patch -> lot.add(patch, 2));
    }

    void look(TrenchSegment trench, List<Finding> findings) {
        for (Barriers.Crossing one : barriers.crossings(trench.route().points())) {
            findings.add(Finding.of(
                    site.rules().get(one.barrier().rule()),
                    Subject.of(trench.id(), "through " + one.barrier().name(), one.at()),
                    new Length(one.lengthM()),
                    one.barrier().cure()));
        }
        if (site.yard().terrain().lot().isPresent()) {
            double outsideM = trench.route().lengthM() - insideM(lot, trench);
            hold("trench.lot", trench, outsideM, "keep it inside the lot", findings);
        }
        if (!trench.byHand()) {
            hold(
                    "trench.roots",
                    trench,
                    insideM(roots, trench),
                    "dig it by hand there, or keep off the roots",
                    findings);
        }
        lookAtLines(trench, findings);
    }

    private void lookAtLines(TrenchSegment trench, List<Finding> findings) {
        double[] x = east(trench.route().points());
        double[] y = north(trench.route().points());
        for (LimitLine line : site.yard().terrain().limitLines()) {
            List<Point> points = line.line().points();
            int crossings = Nearness.crossings(x, y, east(points), north(points));
            if (crossings > 0) {
                double[] at = Nearness.firstCrossing(x, y, east(points), north(points));
                findings.add(Finding.of(
                        site.rules().get("trench.limit-line"),
                        Subject.of(trench.id(), "across " + Barriers.name(line.id()), new Point(at[0], at[1])),
                        Count.of(crossings),
                        "lead it on this side, or get leave in writing from those whom the line protects"));
            }
        }
        double nearestM = Double.POSITIVE_INFINITY;
        for (ExistingService service : site.yard().terrain().services()) {
            List<Point> points = service.route().points();
            double awayM = Nearness.leastDistanceM(x, y, east(points), north(points))
                    - service.doubt().metres();
            nearestM = Math.min(nearestM, Math.max(0, awayM));
        }
        if (!trench.byHand() && nearestM < Double.POSITIVE_INFINITY) {
            hold(
                    site.rules().get("trench.service"),
                    trench,
                    new Length(nearestM),
                    "have the line marked by its owner, and dig by hand there",
                    findings);
        }
    }

    private void hold(String rule, TrenchSegment trench, double lengthM, String advice, List<Finding> findings) {
        if (lengthM > TOUCH_M) {
            hold(site.rules().get(rule), trench, new Length(lengthM), advice, findings);
        }
    }

    private static void hold(
            Rule rule, TrenchSegment trench, Quantity measured, String advice, List<Finding> findings) {
        if (!rule.isKeptBy(measured)) {
            findings.add(Finding.of(rule, Subject.of(trench.id()), measured, advice));
        }
    }

    /** A metre inside costs two, one outside costs one: what is above the length is what lies inside. */
    static double insideM(Tolls tolls, TrenchSegment trench) {
        List<Point> points = trench.route().points();
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            sum += tolls.costM(a.xM(), a.yM(), b.xM(), b.yM()) - a.distanceM(b);
        }
        return Math.max(0, sum);
    }

    private static double[] east(List<Point> points) {
        return points.stream().mapToDouble(Point::xM).toArray();
    }

    private static double[] north(List<Point> points) {
        return points.stream().mapToDouble(Point::yM).toArray();
    }
}
