package leat.calc.internal.cells;

/** Distances from points to straight pieces. */
public final class Segments {

    private Segments() {}

    /** Distance of (x, y) from the piece between two points. */
    public static double distanceM(double xM, double yM, double x0M, double y0M, double x1M, double y1M) {
        double alongX = x1M - x0M;
        double alongY = y1M - y0M;
        double squared = alongX * alongX + alongY * alongY;
        double share = squared == 0 ? 0 : ((xM - x0M) * alongX + (yM - y0M) * alongY) / squared;
        double clipped = Math.max(0, Math.min(1, share));
        double awayX = xM - x0M - clipped * alongX;
        double awayY = yM - y0M - clipped * alongY;
        return Math.sqrt(awayX * awayX + awayY * awayY);
    }

    /** Least distance of (x, y) from the border of a region. */
    public static double distanceToBorderM(double xM, double yM, double[][] ringsM) {
        double leastM = Double.POSITIVE_INFINITY;
        for (double[] ringM : ringsM) {
            for (int i = 0, before = ringM.length - 2; i < ringM.length; before = i, i += 2) {
                leastM = Math.min(leastM, distanceM(xM, yM, ringM[before], ringM[before + 1], ringM[i], ringM[i + 1]));
            }
        }
        return leastM;
    }
}
