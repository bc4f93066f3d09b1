package leat.bench;

/** Quick selection, for rivals: what a careful programmer writes instead of sorting. */
final class Selection {

    private Selection() {}

    /** Reorders the first {@code size} values. */
    static double sumOfSmallest(double[] values, int size, int count) {
        int low = 0;
        int high = size - 1;
        while (low < high) {
            double pivot = values[(low + high) >>> 1];
            int i = low - 1;
            int j = high + 1;
            while (true) {
                do {
                    i++;
                } while (values[i] < pivot);
                do {
                    j--;
                } while (values[j] > pivot);
                if (i >= j) {
                    break;
                }
                double swap = values[i];
                values[i] = values[j];
                values[j] = swap;
            }
            if (count - 1 <= j) {
                high = j;
            } else {
                low = j + 1;
            }
        }
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += values[i];
        }
        return sum;
    }
}
