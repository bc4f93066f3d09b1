package leat.model.geometry;

import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;

/** The upright rectangle around something, in metres. */
public record Bounds(double leastXM, double leastYM, double mostXM, double mostYM) {

    public Bounds {
        Require.finite("bounds", "leastX", leastXM);
        Require.finite("bounds", "leastY", leastYM);
        Require.finite("bounds", "mostX", mostXM);
        Require.finite("bounds", "mostY", mostYM);
    }

    /** The bounds of at least one point. */
    public static Bounds around(List<Point> points) {
        if (points.isEmpty()) {
            throw new InvalidValueException("bounds", "points", "none", "at least one");
        }
        double leastX = Double.POSITIVE_INFINITY;
        double leastY = Double.POSITIVE_INFINITY;
        double mostX = Double.NEGATIVE_INFINITY;
        double mostY = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            leastX = Math.min(leastX, point.xM());
            leastY = Math.min(leastY, point.yM());
            mostX = Math.max(mostX, point.xM());
            mostY = Math.max(mostY, point.yM());
        }
        return new Bounds(leastX, leastY, mostX, mostY);
    }

    public Bounds union(Bounds other) {
        return new Bounds(
                Math.min(leastXM, other.leastXM),
                Math.min(leastYM, other.leastYM),
                Math.max(mostXM, other.mostXM),
                Math.max(mostYM, other.mostYM));
    }

    public Bounds grown(double byM) {
        return new Bounds(leastXM - byM, leastYM - byM, mostXM + byM, mostYM + byM);
    }

    public double widthM() {
        return mostXM - leastXM;
    }

    public double heightM() {
        return mostYM - leastYM;
    }
}
