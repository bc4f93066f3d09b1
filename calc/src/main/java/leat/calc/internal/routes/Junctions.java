package leat.calc.internal.routes;

/**
 * Places where a branch may leave a trench on the way. Where two trenches of a tree meet at less than 120 degrees, the
 * point that sees the three places 120 degrees apart makes the tree shorter on even ground.
 *
 * @see "Courant, R. and Robbins, H., What is Mathematics?, 1941, chapter VII, section 5 (from memory)"
 */
final class Junctions {

    private Junctions() {}

    /**
     * Writes the point of least total distance to three corners to {@code out}; false if that is one of the corners.
     * From the construction with an outer equilateral triangle on each of two sides.
     */
    static boolean least(double ax, double ay, double bx, double by, double cx, double cy, double[] out) {
        if (isWide(ax, ay, bx, by, cx, cy) || isWide(bx, by, cx, cy, ax, ay) || isWide(cx, cy, ax, ay, bx, by)) {
            return false;
        }
        double turn = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
        double half = turn > 0 ? 0.5 * Math.sqrt(3) : -0.5 * Math.sqrt(3);
        double px = (bx + cx) / 2 - half * (by - cy);
        double py = (by + cy) / 2 + half * (bx - cx);
        double qx = (cx + ax) / 2 - half * (cy - ay);
        double qy = (cy + ay) / 2 + half * (cx - ax);
        double along = (px - ax) * (qy - by) - (py - ay) * (qx - bx);
        if (along == 0) {
            return false;
        }
        double t = ((bx - ax) * (qy - by) - (by - ay) * (qx - bx)) / along;
        out[0] = ax + t * (px - ax);
        out[1] = ay + t * (py - ay);
        return true;
    }

    /** Whether the angle at the first corner is 120 degrees or more, or the corner falls on another one. */
    private static boolean isWide(double ax, double ay, double bx, double by, double cx, double cy) {
        double dot = (bx - ax) * (cx - ax) + (by - ay) * (cy - ay);
        double lengths = Math.hypot(bx - ax, by - ay) * Math.hypot(cx - ax, cy - ay);
        return lengths == 0 || dot <= -0.5 * lengths;
    }
}
