package leat.report;

/** Lines beside a line, such as the two walls of a conduit. */
final class Parallels {

    /** Corners sharper than this are cut rather than thrown far out. */
    private static final double LEAST_COSINE = -0.7;

    private Parallels() {}

    /** The line shifted to its right hand on the sheet, or to its left if the distance is negative. */
    static double[] beside(double[] xy, double mm) {
        int last = xy.length - 2;
        double[] shifted = new double[xy.length];
        for (int i = 0; i <= last; i += 2) {
            double[] before = i == 0 ? right(xy, 0) : right(xy, i - 2);
            double[] after = i == last ? before : right(xy, i);
            double cosine = before[0] * after[0] + before[1] * after[1];
            double share = cosine < LEAST_COSINE ? 0.5 : 1 / (1 + cosine);
            shifted[i] = xy[i] + mm * share * (before[0] + after[0]);
            shifted[i + 1] = xy[i + 1] + mm * share * (before[1] + after[1]);
        }
        return shifted;
    }

    private static double[] right(double[] xy, int i) {
        double dx = xy[i + 2] - xy[i];
        double dy = xy[i + 3] - xy[i + 1];
        double lengthMm = Math.hypot(dx, dy);
        return lengthMm == 0 ? new double[] {0, 0} : new double[] {-dy / lengthMm, dx / lengthMm};
    }
}
