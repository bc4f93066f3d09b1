package leat.model.geometry;

import java.util.ArrayList;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;

/** What closed lines of points have in common: signed area, crossing of their own sides, turning direction. */
final class Ring {

    private Ring() {}

    /** Positive when the points run counter-clockwise. Shoelace formula, from the first point. */
    static double signedAreaM2(List<Point> points) {
        Point origin = points.get(0); // far from the datum the products of whole coordinates would lose digits
        double twice = 0;
        for (int i = 1; i + 1 < points.size(); i++) {
            twice += turn(origin, points.get(i), points.get(i + 1));
        }
        return twice / 2;
    }

    /** The ring turned the wanted way, its first point kept; refused if it is no simple closed line. */
    static List<Point> checked(String field, List<Point> points, boolean counterClockwise) {
        List<Point> ring = new ArrayList<>(Require.entries("region", field, points));
        if (ring.size() > 1 && ring.get(0).equals(ring.get(ring.size() - 1))) {
            ring.remove(ring.size() - 1); // written closed; kept open
        }
        if (ring.size() < 3) {
            throw new InvalidValueException(
                    "region", field, "a line of " + ring.size() + " points", "one of at least 3");
        }
        for (int i = 0; i < ring.size(); i++) {
            for (int j = i + 1; j < ring.size(); j++) {
                if (meet(ring, i, j)) {
                    String where = "a line whose side " + (j + 1) + " meets its side " + (i + 1);
                    throw new InvalidValueException(
                            "region", field, where, "one that neither crosses nor touches itself");
                }
            }
        }
        if (signedAreaM2(ring) > 0 != counterClockwise) {
            List<Point> turned = new ArrayList<>();
            turned.add(ring.get(0));
            for (int i = ring.size() - 1; i > 0; i--) {
                turned.add(ring.get(i));
            }
            return List.copyOf(turned);
        }
        return List.copyOf(ring);
    }

    private static boolean meet(List<Point> ring, int i, int j) {
        int count = ring.size();
        Point a = ring.get(i);
        Point b = ring.get((i + 1) % count);
        Point c = ring.get(j);
        Point d = ring.get((j + 1) % count);
        if (a.equals(b) || c.equals(d)) {
            return true;
        }
        if (j == i + 1) {
            return foldsBack(a, b, d);
        }
        if (i == 0 && j == count - 1) {
            return foldsBack(c, a, b);
        }
        return crossOrTouch(a, b, c, d);
    }

    /** Whether the side from b runs back over the side that came to b from a. */
    private static boolean foldsBack(Point a, Point b, Point next) {
        return turn(a, b, next) == 0
                && (b.xM() - a.xM()) * (next.xM() - b.xM()) + (b.yM() - a.yM()) * (next.yM() - b.yM()) < 0;
    }

    static boolean crossOrTouch(Point a, Point b, Point c, Point d) {
        double abc = turn(a, b, c);
        double abd = turn(a, b, d);
        double cda = turn(c, d, a);
        double cdb = turn(c, d, b);
        if (((abc > 0 && abd < 0) || (abc < 0 && abd > 0)) && ((cda > 0 && cdb < 0) || (cda < 0 && cdb > 0))) {
            return true;
        }
        return (abc == 0 && within(a, b, c))
                || (abd == 0 && within(a, b, d))
                || (cda == 0 && within(c, d, a))
                || (cdb == 0 && within(c, d, b));
    }

    private static double turn(Point a, Point b, Point c) {
        return (b.xM() - a.xM()) * (c.yM() - a.yM()) - (b.yM() - a.yM()) * (c.xM() - a.xM());
    }

    private static boolean within(Point a, Point b, Point c) {
        return Math.min(a.xM(), b.xM()) <= c.xM()
                && c.xM() <= Math.max(a.xM(), b.xM())
                && Math.min(a.yM(), b.yM()) <= c.yM()
                && c.yM() <= Math.max(a.yM(), b.yM());
    }

    /** Even-odd rule; points on the line may fall on either side. */
    static boolean contains(List<Point> ring, Point point) {
        boolean inside = false;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            Point a = ring.get(i);
            Point b = ring.get(j);
            if (a.yM() > point.yM() != b.yM() > point.yM()
                    && point.xM() < (b.xM() - a.xM()) * (point.yM() - a.yM()) / (b.yM() - a.yM()) + a.xM()) {
                inside = !inside;
            }
        }
        return inside;
    }
}
