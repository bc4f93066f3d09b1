package leat.model.geometry;

import leat.model.fault.Require;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;

/**
 * A place on the plan.
 *
 * @param xM metres to the east of the yard's datum
 * @param yM metres to the north of it
 */
public record Point(double xM, double yM) {

    public Point {
        Require.finite("point", "x", xM);
        Require.finite("point", "y", yM);
        xM += 0.0; // no -0.0, see Length
        yM += 0.0;
    }

    public static Point at(Length east, Length north) {
        return new Point(east.metres(), north.metres());
    }

    public Length east() {
        return new Length(xM);
    }

    public Length north() {
        return new Length(yM);
    }

    public Length distance(Point other) {
        return new Length(distanceM(other));
    }

    public double distanceM(Point other) {
        return Math.hypot(other.xM - xM, other.yM - yM);
    }

    /** The bearing of the other point from here, clockwise from north; north for the point itself. */
    public Angle bearingTo(Point other) {
        return Angle.radians(Math.atan2(other.xM - xM, other.yM - yM)).turned();
    }

    /** The point that far away on that bearing. */
    public Point moved(Angle bearing, Length distance) {
        double radians = bearing.inRadians();
        return new Point(xM + distance.metres() * Math.sin(radians), yM + distance.metres() * Math.cos(radians));
    }
}
