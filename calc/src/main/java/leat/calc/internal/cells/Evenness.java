package leat.calc.internal.cells;

import java.util.Arrays;

/**
 * How evenly a surface is wetted: mean rate, shares reached, Christiansen's coefficient and the low-quarter uniformity, as
 * {@link Uniformity} defines them. Cells that no head reaches count as dry. Can be used again and again; allocates only when a
 * surface is larger than any before.
 * <p>
 * One pass puts every cell into a bucket of rate, keeping the number and the sum of each bucket. The sums below the mean and
 * below the quartile are then known but for the two buckets that these fall into, and a second pass looks at the cells of those.
 * Buckets are cut from the bits of the number itself: 256 to each doubling, so that no scale has to be found first.
 */
public final class Evenness {

    private static final int BUCKETS_IN_DOUBLING = 256;
    private static final int SHIFT = 52 - 8;
    private static final int BUCKETS = 10 * BUCKETS_IN_DOUBLING;

    private final int[] cellsIn = new int[BUCKETS + 1];
    private final double[] sumIn = new double[BUCKETS + 1];
    private double[] near = new double[0];

    /** What the first bucket would be if they began at 0; the first and last take all that lies beyond them. */
    private int firstBucket;

    private int cells;
    private int reachedByOne;
    private int reachedByTwo;
    private double meanMPerS;
    private double deviationsMPerS;
    private double lowSumMPerS;

    public void measure(Wetting wetting, CellRuns surface) {
        cells = surface.cells();
        // Few cells get more than eight times what one head gives on average; where they fall has no bearing on the
        // answer.
        firstBucket = bucketOf(8 * wetting.heads().mostMeanRateMPerS()) - BUCKETS;
        countReach(wetting, surface);
        fillBuckets(wetting, surface);
        double sum = 0;
        for (double part : sumIn) {
            sum += part;
        }
        meanMPerS = cells == 0 ? 0 : sum / cells;
        lookIntoBuckets(wetting, surface);
    }

    private void countReach(Wetting wetting, CellRuns surface) {
        int notByOne = 0;
        int notByTwo = 0;
        for (int row = 0; row < surface.rows(); row++) {
            int[] step = wetting.steps(row);
            int column = 0;
            int reach = 0;
            for (int run = surface.firstRun(row); run < surface.firstRun(row + 1); run++) {
                for (int from = surface.from(run); column < from; column++) {
                    reach += step[column];
                }
                for (int end = surface.end(run); column < end; column++) {
                    reach += step[column];
                    notByOne += (reach - 1) >>> 31;
                    notByTwo += (reach - 2) >>> 31;
                }
            }
        }
        reachedByOne = cells - notByOne;
        reachedByTwo = cells - notByTwo;
    }

    /** Negative numbers, which rounding leaves where a head was taken out, come before all others. */
    private static int bucketOf(double rateMPerS) {
        return (int) (Double.doubleToRawLongBits(rateMPerS) >> SHIFT);
    }

    private int slotOf(double rateMPerS) {
        return Math.max(0, Math.min(BUCKETS, bucketOf(rateMPerS) - firstBucket));
    }

    private void fillBuckets(Wetting wetting, CellRuns surface) {
        Arrays.fill(cellsIn, 0);
        Arrays.fill(sumIn, 0);
        for (int row = 0; row < surface.rows(); row++) {
            double[] rate = wetting.ratesMPerS(row);
            for (int run = surface.firstRun(row); run < surface.firstRun(row + 1); run++) {
                int end = surface.end(run);
                for (int column = surface.from(run); column < end; column++) {
                    int slot = slotOf(rate[column]);
                    cellsIn[slot]++;
                    sumIn[slot] += rate[column];
                }
            }
        }
    }

    private void lookIntoBuckets(Wetting wetting, CellRuns surface) {
        int meanSlot = slotOf(meanMPerS);
        double below = 0;
        for (int slot = 0; slot < meanSlot; slot++) {
            below += cellsIn[slot] * meanMPerS - sumIn[slot];
        }
        int lowSlot = 0;
        int wanted = Uniformity.quarterOf(cells);
        double lowSum = 0;
        while (lowSlot < BUCKETS && cellsIn[lowSlot] < wanted) {
            wanted -= cellsIn[lowSlot];
            lowSum += sumIn[lowSlot++];
        }
        if (near.length < cellsIn[lowSlot]) {
            near = new double[cellsIn[lowSlot]];
        }
        int found = 0;
        for (int row = 0; row < surface.rows(); row++) {
            double[] rate = wetting.ratesMPerS(row);
            for (int run = surface.firstRun(row); run < surface.firstRun(row + 1); run++) {
                int end = surface.end(run);
                for (int column = surface.from(run); column < end; column++) {
                    int slot = slotOf(rate[column]);
                    if (slot == lowSlot) {
                        near[found++] = rate[column];
                    }
                    if (slot == meanSlot) {
                        below += Math.max(0, meanMPerS - rate[column]);
                    }
                }
            }
        }
        // As much lies above the mean as below it.
        deviationsMPerS = 2 * below;
        lowSumMPerS = lowSum + LowSum.of(near, found, Math.min(wanted, found));
    }

    public int cells() {
        return cells;
    }

    public int cellsReachedByOne() {
        return reachedByOne;
    }

    public int cellsReachedByTwo() {
        return reachedByTwo;
    }

    public double meanRateMPerS() {
        return meanMPerS;
    }

    /** See {@link Uniformity#christiansen}. */
    public double christiansen() {
        return meanMPerS > 0 ? 1 - deviationsMPerS / (cells * meanMPerS) : 0;
    }

    /** See {@link Uniformity#lowQuarter}. */
    public double lowQuarter() {
        return meanMPerS > 0 ? lowSumMPerS / (Uniformity.quarterOf(cells) * meanMPerS) : 0;
    }
}
