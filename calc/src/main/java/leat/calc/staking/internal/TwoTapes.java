package leat.calc.staking.internal;

/** A place by its distances from two marks: where two circles meet. Geometry in any surveying text. */
public final class TwoTapes {

    private TwoTapes() {}

    /**
     * Writes x and y of the place that both tapes reach. From mark A along the line to mark B it lies
     * x' = (b² + r₁² − r₂²) / 2b, and y' = √(r₁² − x'²) off that line.
     *
     * @param firstM  tape from mark A
     * @param secondM tape from mark B
     * @param left    which of the two places: the one on the left when looking from A to B
     * @param outXyM   two numbers; NaN when the tapes do not meet
     */
    public static void locate(
            double aX, double aY, double bX, double bY, double firstM, double secondM, boolean left, double[] outXyM) {
        double baseM = Math.hypot(bX - aX, bY - aY);
        double alongM = (baseM * baseM + firstM * firstM - secondM * secondM) / (2 * baseM);
        double offM = Math.sqrt((firstM - alongM) * (firstM + alongM)) * (left ? 1 : -1);
        double eastward = (bX - aX) / baseM;
        double northward = (bY - aY) / baseM;
        outXyM[0] = aX + alongM * eastward - offM * northward;
        outXyM[1] = aY + alongM * northward + offM * eastward;
    }

    /** The angle at (x, y) between the lines to two marks, from 0 to π. */
    public static double crossingRad(double x, double y, double aX, double aY, double bX, double bY) {
        double cross = (aX - x) * (bY - y) - (aY - y) * (bX - x);
        double dot = (aX - x) * (bX - x) + (aY - y) * (bY - y);
        return Math.abs(Math.atan2(cross, dot));
    }

    /** Whether (x, y) lies to the left when looking from A to B. */
    public static boolean isLeft(double x, double y, double aX, double aY, double bX, double bY) {
        return (bX - aX) * (y - aY) - (bY - aY) * (x - aX) > 0;
    }

    /**
     * How far off a place taped from two marks may be: each tape moves it along its own line, by its error over the sine
     * of the crossing. Root of the sum of the squares; endless where the tapes lie in one line.
     */
    public static double errorM(double firstErrorM, double secondErrorM, double crossingRad) {
        return Math.hypot(firstErrorM, secondErrorM) / Math.sin(crossingRad);
    }
}
