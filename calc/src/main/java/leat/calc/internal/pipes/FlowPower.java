package leat.calc.internal.pipes;

/**
 * x^0.852, the power behind the Hazen–Williams law, to 7e-16 of its value.
 * <p>
 * Why not {@link Math#pow}: it takes most of the time of a solution, and its last bits may differ between Java releases.
 * Here the number is split into 2^e · c · (1 + t) with c one of 128 steps between 1 and 2, so that |t| is at most 1/256;
 * the first two powers come from tables that {@link StrictMath} fills, the last one is five terms of the binomial series
 * (the sixth is below 2e-17).
 */
public final class FlowPower {

    /** Exponent of the flow in the law of Hazen and Williams, less one. */
    public static final double EXPONENT = 0.852;

    private static final int LEAST_EXPONENT = -64;
    private static final int MOST_EXPONENT = 63;
    private static final int STEP_BITS = 7;
    private static final int STEPS = 1 << STEP_BITS;
    private static final long MANTISSA = (1L << 52) - 1;
    private static final long ONE = Double.doubleToRawLongBits(1);

    private static final double[] POWER_OF_TWO = new double[MOST_EXPONENT - LEAST_EXPONENT + 1];
    private static final double[] POWER_OF_STEP = new double[STEPS];
    private static final double[] ONE_OVER_STEP = new double[STEPS];

    private static final double B1 = EXPONENT;
    private static final double B2 = B1 * (EXPONENT - 1) / 2;
    private static final double B3 = B2 * (EXPONENT - 2) / 3;
    private static final double B4 = B3 * (EXPONENT - 3) / 4;
    private static final double B5 = B4 * (EXPONENT - 4) / 5;

    static {
        for (int e = LEAST_EXPONENT; e <= MOST_EXPONENT; e++) {
            POWER_OF_TWO[e - LEAST_EXPONENT] = StrictMath.pow(StrictMath.scalb(1.0, e), EXPONENT);
        }
        for (int j = 0; j < STEPS; j++) {
            ONE_OVER_STEP[j] = 1 / (1 + (j + 0.5) / STEPS);
            POWER_OF_STEP[j] = StrictMath.pow(1 / ONE_OVER_STEP[j], EXPONENT);
        }
    }

    private FlowPower() {}

    /** x^0.852 for x of 0 or more. */
    public static double of(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int row = (int) (bits >>> 52) - (1023 + LEAST_EXPONENT);
        if (row < 0 || row >= POWER_OF_TWO.length) {
            return StrictMath.pow(x, EXPONENT);
        }
        int step = (int) (bits >>> 52 - STEP_BITS) & STEPS - 1;
        double t = Double.longBitsToDouble(bits & MANTISSA | ONE) * ONE_OVER_STEP[step] - 1;
        double series = 1 + t * (B1 + t * (B2 + t * (B3 + t * (B4 + t * B5))));
        return POWER_OF_TWO[row] * POWER_OF_STEP[step] * series;
    }
}
