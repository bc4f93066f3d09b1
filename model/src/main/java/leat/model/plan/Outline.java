package leat.model.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.quantity.UnitSystem;

/** A piece of ground as a script states it. */
public final class Outline {

    /** Sides of the polygon that stands for a circle; its area is 0.3 % less than the circle's. */
    private static final int CIRCLE_SIDES = 48;

    private final Function<UnitSystem, Region> shape;

    private Outline(Function<UnitSystem, Region> shape) {
        this.shape = shape;
    }

    static Outline polygon(List<Place> corners) {
        List<Place> kept = List.copyOf(corners);
        return new Outline(
                units -> Region.of(kept.stream().map(corner -> corner.in(units)).toList()));
    }

    static Outline rectangle(Place corner, Length east, Length north) {
        return new Outline(units -> {
            Point sw = corner.in(units);
            double x = sw.xM() + east.metres();
            double y = sw.yM() + north.metres();
            return Region.of(sw, new Point(x, sw.yM()), new Point(x, y), new Point(sw.xM(), y));
        });
    }

    static Outline circle(Place centre, Length radius) {
        return new Outline(units -> {
            List<Point> corners = new ArrayList<>();
            for (int i = 0; i < CIRCLE_SIDES; i++) {
                corners.add(centre.in(units).moved(new Angle(360.0 * i / CIRCLE_SIDES), radius));
            }
            return Region.of(corners);
        });
    }

    static Outline of(Region region) {
        return new Outline(units -> region);
    }

    /** The same ground with a hole in it. */
    public Outline without(Outline hole) {
        return new Outline(units -> in(units).without(hole.in(units)));
    }

    /** The ground on the plan of a yard in those units. */
    public Region in(UnitSystem units) {
        return shape.apply(units);
    }
}
