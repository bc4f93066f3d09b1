package leat.report;

import java.util.List;
import leat.model.geometry.Bounds;
import leat.model.geometry.Point;
import leat.model.geometry.Region;

/** A place well inside a region, for its name: the farthest from every side among the points of a coarse grid. */
final class Interior {

    private static final int STEPS = 24;

    private Interior() {}

    static Point of(Region region) {
        Bounds bounds = region.bounds();
        Point best = region.outer().get(0);
        double mostM = -1;
        for (int i = 1; i < STEPS; i++) {
            for (int j = 1; j < STEPS; j++) {
                Point point = new Point(
                        bounds.leastXM() + bounds.widthM() * i / STEPS,
                        bounds.leastYM() + bounds.heightM() * j / STEPS);
                if (region.contains(point)) {
                    double awayM = fromSidesM(region, point);
                    // A millimetre more, or the middle of an even strip would depend on rounding.
                    if (awayM > mostM + 0.001) {
                        mostM = awayM;
                        best = point;
                    }
                }
            }
        }
        return best;
    }

    private static double fromSidesM(Region region, Point point) {
        double leastM = Double.POSITIVE_INFINITY;
        for (List<Point> ring : region.rings()) {
            for (int i = 0; i < ring.size(); i++) {
                leastM = Math.min(leastM, fromSideM(ring.get(i), ring.get((i + 1) % ring.size()), point));
            }
        }
        return leastM;
    }

    private static double fromSideM(Point a, Point b, Point point) {
        double dx = b.xM() - a.xM();
        double dy = b.yM() - a.yM();
        double share = ((point.xM() - a.xM()) * dx + (point.yM() - a.yM()) * dy) / (dx * dx + dy * dy);
        double clipped = Math.max(0, Math.min(1, share));
        return point.distanceM(new Point(a.xM() + clipped * dx, a.yM() + clipped * dy));
    }
}
