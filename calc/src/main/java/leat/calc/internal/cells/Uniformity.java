package leat.calc.internal.cells;

/** The measures of evenness on plain lists of depths, as they are taken from catch cans. {@link Evenness} does the same on cells. */
public final class Uniformity {

    private Uniformity() {}

    /**
     * Christiansen's coefficient, CU = 1 − Σ|d − m| / (n m), with m the mean; 1 when all depths are equal, 0 when nothing falls.
     *
     * @see "J. E. Christiansen, Irrigation by Sprinkling, University of California Bulletin 670, 1942"
     */
    public static double christiansen(double[] relativeDepths) {
        double mean = mean(relativeDepths);
        double deviations = 0;
        for (double depth : relativeDepths) {
            deviations += Math.abs(depth - mean);
        }
        return mean > 0 ? 1 - deviations / (relativeDepths.length * mean) : 0;
    }

    /**
     * Low-quarter distribution uniformity: mean of the lowest quarter over the mean of all. The quarter is n/4 rounded down, but
     * at least one; sources do not agree on the rounding, which tells on short lists only.
     *
     * @see "J. L. Merriam and J. Keller, Farm Irrigation System Evaluation, 1978; ASABE S436"
     */
    public static double lowQuarter(double[] relativeDepths) {
        return low(relativeDepths, quarterOf(relativeDepths.length));
    }

    /** Mean of the {@code count} lowest over the mean of all; 0 when nothing falls. */
    public static double low(double[] relativeDepths, int count) {
        double mean = mean(relativeDepths);
        return mean > 0 ? LowSum.of(relativeDepths.clone(), relativeDepths.length, count) / count / mean : 0;
    }

    static int quarterOf(int count) {
        return Math.max(1, count / 4);
    }

    private static double mean(double[] relativeDepths) {
        double sum = 0;
        for (double depth : relativeDepths) {
            sum += depth;
        }
        return sum / relativeDepths.length;
    }

    /** Mean depth rate of a flow over an area; the trade's 96.25 q/A in inches an hour from gallons a minute and square feet. */
    public static double precipitationRateMPerS(double flowM3PerS, double areaM2) {
        return flowM3PerS / areaM2;
    }
}
