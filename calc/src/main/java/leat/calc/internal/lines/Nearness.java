package leat.calc.internal.lines;

/** How near two lines of straight pieces come to each other, and how often they cross. */
public final class Nearness {

    private Nearness() {}

    /** The least distance; 0 where they meet. Arrays are parallel, one entry a point, two or more points a line. */
    public static double leastDistanceM(double[] x1, double[] y1, double[] x2, double[] y2) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < x1.length; i++) {
            for (int j = 1; j < x2.length; j++) {
                if (cross(x1, y1, i, x2, y2, j)) {
                    return 0;
                }
                least = Math.min(least, pointToPiece(x1[i - 1], y1[i - 1], x2, y2, j));
                least = Math.min(least, pointToPiece(x1[i], y1[i], x2, y2, j));
                least = Math.min(least, pointToPiece(x2[j - 1], y2[j - 1], x1, y1, i));
                least = Math.min(least, pointToPiece(x2[j], y2[j], x1, y1, i));
            }
        }
        return least;
    }

    /** The least distance of a point. */
    public static double pointToLineM(double pointX, double pointY, double[] x, double[] y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < x.length; i++) {
            least = Math.min(least, pointToPiece(pointX, pointY, x, y, i));
        }
        return least;
    }

    /** How many pieces of one line run from one side of a piece of the other to its other side. */
    public static int crossings(double[] x1, double[] y1, double[] x2, double[] y2) {
        int count = 0;
        for (int i = 1; i < x1.length; i++) {
            for (int j = 1; j < x2.length; j++) {
                count += cross(x1, y1, i, x2, y2, j) ? 1 : 0;
            }
        }
        return count;
    }

    /** Where the first piece that crosses the other line does so, as x and y; not a number where none does. */
    public static double[] firstCrossing(double[] x1, double[] y1, double[] x2, double[] y2) {
        for (int i = 1; i < x1.length; i++) {
            for (int j = 1; j < x2.length; j++) {
                if (cross(x1, y1, i, x2, y2, j)) {
                    double before = side(x2, y2, j, x1[i - 1], y1[i - 1]);
                    double share = before / (before - side(x2, y2, j, x1[i], y1[i]));
                    return new double[] {
                        x1[i - 1] + share * (x1[i] - x1[i - 1]), y1[i - 1] + share * (y1[i] - y1[i - 1])
                    };
                }
            }
        }
        return new double[] {Double.NaN, Double.NaN};
    }

    private static boolean cross(double[] x1, double[] y1, int i, double[] x2, double[] y2, int j) {
        double a = side(x1, y1, i, x2[j - 1], y2[j - 1]);
        double b = side(x1, y1, i, x2[j], y2[j]);
        double c = side(x2, y2, j, x1[i - 1], y1[i - 1]);
        double d = side(x2, y2, j, x1[i], y1[i]);
        return a > 0 != b > 0 && c > 0 != d > 0 && (a != 0 || b != 0);
    }

    private static double side(double[] x, double[] y, int i, double px, double py) {
        return (x[i] - x[i - 1]) * (py - y[i - 1]) - (y[i] - y[i - 1]) * (px - x[i - 1]);
    }

    private static double pointToPiece(double px, double py, double[] x, double[] y, int i) {
        double dx = x[i] - x[i - 1];
        double dy = y[i] - y[i - 1];
        double along = ((px - x[i - 1]) * dx + (py - y[i - 1]) * dy) / (dx * dx + dy * dy);
        double share = Math.max(0, Math.min(1, along));
        return Math.hypot(px - x[i - 1] - share * dx, py - y[i - 1] - share * dy);
    }
}
