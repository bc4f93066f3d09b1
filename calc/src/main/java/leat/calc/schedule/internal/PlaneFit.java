package leat.calc.schedule.internal;

/** The plane that fits heights best. */
public final class PlaneFit {

    private PlaneFit() {}

    /**
     * Its slope: rise over run in the steepest direction, by least squares; 0 for places that lie on one line.
     *
     * @param xM parallel to {@code yM} and {@code heightM}
     */
    public static double slope(double[] xM, double[] yM, double[] heightM) {
        double meanX = mean(xM);
        double meanY = mean(yM);
        double meanHeight = mean(heightM);
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double xh = 0;
        double yh = 0;
        for (int i = 0; i < xM.length; i++) {
            double x = xM[i] - meanX;
            double y = yM[i] - meanY;
            double height = heightM[i] - meanHeight;
            xx += x * x;
            xy += x * y;
            yy += y * y;
            xh += x * height;
            yh += y * height;
        }
        double determinant = xx * yy - xy * xy;
        // Places on one line leave nothing but rounding here.
        if (determinant <= 1e-12 * xx * yy || xx == 0 || yy == 0) {
            return 0;
        }
        double east = (xh * yy - yh * xy) / determinant;
        double north = (yh * xx - xh * xy) / determinant;
        return StrictMath.hypot(east, north);
    }

    private static double mean(double[] valuesM) {
        double sum = 0;
        for (double value : valuesM) {
            sum += value;
        }
        return sum / valuesM.length;
    }
}
