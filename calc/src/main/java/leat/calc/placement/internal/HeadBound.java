package leat.calc.placement.internal;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;

/** How few heads could do. */
final class HeadBound {

    private HeadBound() {}

    /**
     * No choice among the heads considered can do with fewer. Each reach that is wanted costs at least one over the most that
     * any head reaching that cell reaches; the sum is a feasible point of the dual of the covering program.
     *
     * @param tried the heads considered, each once
     * @param left  families of which no head was looked at
     */
    static int least(Plot plot, Given given, List<Pool> tried, List<Offer> left) {
        int[] most = new int[plot.targetCells()];
        int[] times = new int[plot.targetCells()];
        for (Offer offer : left) {
            Arrays.fill(most, Math.max(most.length == 0 ? 0 : most[0], (int) cellsWithinReach(plot, offer)));
            Arrays.fill(times, plot.wanted());
        }
        for (Pool pool : tried) {
            for (Candidate one : pool.candidates()) {
                each(one.bits(), cell -> {
                    most[cell] = Math.max(most[cell], one.reached());
                    times[cell]++;
                });
            }
        }
        int[] has = new int[plot.targetCells()];
        for (int head = 0; head < given.count(); head++) {
            each(given.bits(head), cell -> has[cell]++);
        }
        double least = 0;
        for (int cell = 0; cell < most.length; cell++) {
            int wanted = Math.min(plot.wanted() - has[cell], times[cell]);
            least += wanted > 0 ? (double) wanted / most[cell] : 0;
        }
        return (int) Math.ceil(least - 1e-6);
    }

    /** More cells than any head of the family reaches. */
    static double cellsWithinReach(Plot plot, Offer offer) {
        double radiusCells = offer.radiusM() / plot.grid().cellM() + 1;
        return Math.PI * radiusCells * radiusCells;
    }

    private static void each(long[] bits, IntConsumer action) {
        for (int word = 0; word < bits.length; word++) {
            for (long left = bits[word]; left != 0; left &= left - 1) {
                action.accept((word << 6) + Long.numberOfTrailingZeros(left));
            }
        }
    }
}
