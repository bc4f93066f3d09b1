package leat.calc.schedule;

import java.util.ArrayList;
import java.util.List;
import leat.calc.schedule.internal.PlaneFit;
import leat.model.geometry.Bounds;
import leat.model.geometry.Point;
import leat.model.quantity.Ratio;
import leat.model.site.Ground;
import leat.model.site.Surface;

/** How steep a surface is on the whole: the slope of the plane that fits the finished ground at a grid of places on it. */
final class SurfaceSlope {

    private static final int SIDE = 8;

    private SurfaceSlope() {}

    static Ratio of(Surface surface, Ground ground) {
        List<Point> places = places(surface);
        double[] xM = places.stream().mapToDouble(Point::xM).toArray();
        double[] yM = places.stream().mapToDouble(Point::yM).toArray();
        double[] heightM = places.stream()
                .mapToDouble(place -> ground.levelFinished(place).metres())
                .toArray();
        return Ratio.of(PlaneFit.slope(xM, yM, heightM));
    }

    private static List<Point> places(Surface surface) {
        Bounds bounds = surface.region().bounds();
        List<Point> places = new ArrayList<>();
        for (int row = 0; row < SIDE; row++) {
            for (int column = 0; column < SIDE; column++) {
                Point place = new Point(
                        bounds.leastXM() + (column + 0.5) / SIDE * bounds.widthM(),
                        bounds.leastYM() + (row + 0.5) / SIDE * bounds.heightM());
                if (surface.region().contains(place)) {
                    places.add(place);
                }
            }
        }
        return places;
    }
}
