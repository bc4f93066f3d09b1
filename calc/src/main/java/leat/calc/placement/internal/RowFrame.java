package leat.calc.placement.internal;

/**
 * Turns the plan so that rows run along u and lie beside each other along v.
 *
 * @param cos of the angle from east to the rows
 * @param sin likewise
 */
record RowFrame(double cos, double sin) {

    /** A bed whose longest side is a smaller share of its extent has none to speak of: it is round. */
    private static final double LEAST_SIDE_RATIO = 0.25;

    /** Sides whose lengths differ by less are equal: the first of them counts. */
    private static final double SAME_M = 1e-6;

    /** Along the longest side of a border; of a round one along the longer extent, east or north. */
    static RowFrame of(double[] ringM) {
        double longestM = 0;
        double alongXM = 1;
        double alongYM = 0;
        double westM = Double.POSITIVE_INFINITY;
        double eastM = Double.NEGATIVE_INFINITY;
        double southM = Double.POSITIVE_INFINITY;
        double northM = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < ringM.length; i += 2) {
            int next = (i + 2) % ringM.length;
            double xM = ringM[next] - ringM[i];
            double yM = ringM[next + 1] - ringM[i + 1];
            double sideM = Math.hypot(xM, yM);
            if (sideM > longestM + SAME_M) {
                longestM = sideM;
                alongXM = xM;
                alongYM = yM;
            }
            westM = Math.min(westM, ringM[i]);
            eastM = Math.max(eastM, ringM[i]);
            southM = Math.min(southM, ringM[i + 1]);
            northM = Math.max(northM, ringM[i + 1]);
        }
        double widthM = eastM - westM;
        double heightM = northM - southM;
        if (longestM < LEAST_SIDE_RATIO * Math.max(widthM, heightM)) {
            return heightM > widthM + SAME_M ? new RowFrame(0, 1) : new RowFrame(1, 0);
        }
        return new RowFrame(alongXM / longestM, alongYM / longestM);
    }

    double[] turned(double[] xyM) {
        double[] uvM = new double[xyM.length];
        for (int i = 0; i < xyM.length; i += 2) {
            uvM[i] = cos * xyM[i] + sin * xyM[i + 1];
            uvM[i + 1] = cos * xyM[i + 1] - sin * xyM[i];
        }
        return uvM;
    }

    double xM(double uM, double vM) {
        return cos * uM - sin * vM;
    }

    double yM(double uM, double vM) {
        return sin * uM + cos * vM;
    }
}
