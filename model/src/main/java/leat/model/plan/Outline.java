package leat.model.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
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
        List<Place> kept = Require.entries("polygon", "corners", corners);
        return new Outline(
                units -> Region.of(kept.stream().map(corner -> corner.in(units)).toList()));
    }

    static Outline rectangle(Place corner, Length east, Length north) {
        Require.moreThan("rectangle", "width to the east", east, Length.ZERO);
        Require.moreThan("rectangle", "length to the north", north, Length.ZERO);
        return new Outline(units -> {
            Point sw = corner.in(units);
            double x = sw.xM() + east.metres();
            double y = sw.yM() + north.metres();
            return Region.of(sw, new Point(x, sw.yM()), new Point(x, y), new Point(sw.xM(), y));
        });
    }

    static Outline circle(Place centre, Length radius) {
        Require.moreThan("circle", "radius", radius, Length.ZERO);
        return new Outline(units -> {
            Point middle = centre.in(units);
            List<Point> corners = new ArrayList<>();
            for (int i = 0; i < CIRCLE_SIDES; i++) {
                corners.add(middle.moved(new Angle(360.0 * i / CIRCLE_SIDES), radius));
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

    /** The same for a thing that is named if its ground cannot be so. */
    Region in(UnitSystem units, String owner) {
        try {
            return in(units);
        } catch (InvalidValueException e) {
            throw e.within(owner);
        }
    }
}
