package leat.model.plan;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.quantity.Length;
import leat.model.quantity.UnitSystem;

/** A place as a script states it: lengths, or plain numbers in the yard's unit (feet or metres). */
public final class Place {

    private final double east;
    private final double north;
    private final Optional<Point> point;

    private Place(double east, double north, Optional<Point> point) {
        this.east = east;
        this.north = north;
        this.point = point;
    }

    static Place numbers(double east, double north) {
        Require.finite("place", "east", east);
        Require.finite("place", "north", north);
        return new Place(east, north, Optional.empty());
    }

    static Place of(Point point) {
        return new Place(point.xM(), point.yM(), Optional.of(point));
    }

    /** The place on the plan of a yard in those units. */
    public Point in(UnitSystem units) {
        return point.orElseGet(() -> Point.at(length(east, units), length(north, units)));
    }

    static Length length(double number, UnitSystem units) {
        return units == UnitSystem.US ? Length.feet(number) : Length.metres(number);
    }

    @Override
    public String toString() {
        return point.map(one -> "at " + one.east() + ", " + one.north()).orElse("at " + east + ", " + north);
    }
}
