package leat.calc.internal.cells;

/** Sum of the smallest of many numbers by selection, not by sorting: linear time, nothing allocated. */
public final class LowSum {

    private LowSum() {}

    /**
     * Hoare's selection with the median of three as pivot.
     *
     * @param values the first {@code size} are used, and left in another order
     * @param count  how many of the smallest to add; 0 gives 0
     */
    public static double of(double[] values, int size, int count) {
        select(values, size, count - 1);
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += values[i];
        }
        return sum;
    }

    /** Reorders so that nothing before {@code target} is larger than what stands there, and nothing after it smaller. */
    private static void select(double[] values, int size, int target) {
        int low = 0;
        int high = size - 1;
        while (low < high && target >= 0) {
            double pivot = medianOfThree(values[low], values[(low + high) >>> 1], values[high]);
            int i = low;
            int j = high;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double swap = values[i];
                    values[i++] = values[j];
                    values[j--] = swap;
                }
            }
            if (target <= j) {
                high = j;
            } else if (target >= i) {
                low = i;
            } else {
                return;
            }
        }
    }

    private static double medianOfThree(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
