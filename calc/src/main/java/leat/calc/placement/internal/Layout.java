package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.Evenness;
import leat.calc.internal.cells.HeadArrays;
import leat.calc.internal.cells.Wetting;
import org.jspecify.annotations.Nullable;

/**
 * Heads chosen so far on a plot, with what they reach kept up to date. Given heads take part but are not counted.
 * <p>
 * Two figures judge a layout. First how many reaches are missing, a cell that wants two and has none counting twice. Then the
 * cost: the logarithm of the number of heads, so that a share of the heads saved counts the same on small and large lawns, plus
 * the loss of low-quarter uniformity, the ground thrown on for nothing, the crowding of heads, and the zones more that heads of
 * different pace ask for, each with a weight.
 */
final class Layout {

    /** One head in ten is worth about three points of uniformity: our choice, common practice, no source. */
    private static final double UNIFORMITY_WEIGHT = 3;

    private static final double BARE_WEIGHT = 0.5;

    /** A third of a point of uniformity weighs as much as 0.01 of crowding: our choice, common practice, no source. */
    private static final double CROWDING_WEIGHT = 1;

    /** Heads that cannot run with the others want a zone of their own: worth one head in seven, our choice. */
    private static final double PACE_WEIGHT = 0.15;

    /** No two heads stand closer than this. */
    private static final double LEAST_APART_M = 0.3;

    private final Plot plot;
    private final int givenCount;
    private final HeadArrays heads;
    private final Wetting wetting;
    private final CellRuns surface;
    private final Evenness evenness = new Evenness();
    private final List<Candidate> chosen = new ArrayList<>();
    private final int[] reach;
    private final double paceRatio;
    private final double[] pace;
    private int missing;

    /**
     * @param paceRatio heads that water so many times as fast as others, or more, cannot run with them
     * @param capacity  most heads that may be chosen
     */
    Layout(Plot plot, Given given, double paceRatio, int capacity) {
        this.paceRatio = paceRatio;
        this.plot = plot;
        givenCount = given.count();
        heads = new HeadArrays(givenCount + capacity);
        wetting = new Wetting(given.grid(), heads);
        surface = given.surface();
        reach = new int[plot.targetCells()];
        pace = new double[capacity];
        missing = plot.wanted() * reach.length;
        for (int i = 0; i < givenCount; i++) {
            given.copyTo(heads, i);
            wetting.add(i);
            change(given.bits(i), 1);
        }
    }

    List<Candidate> chosen() {
        return chosen;
    }

    int size() {
        return chosen.size();
    }

    boolean isFull() {
        return givenCount + chosen.size() == heads.size();
    }

    /** Reaches that are missing. */
    int missing() {
        return missing;
    }

    /** Cells that want another reach. */
    long[] wanting() {
        long[] bits = new long[(reach.length + 63) / 64];
        for (int cell = 0; cell < reach.length; cell++) {
            if (reach[cell] < plot.wanted()) {
                bits[cell >>> 6] |= 1L << cell;
            }
        }
        return bits;
    }

    double cost() {
        evenness.measure(wetting, surface);
        long bare = 0;
        for (Candidate one : chosen) {
            bare += one.bare();
        }
        return Math.log(Math.max(1, chosen.size()))
                + UNIFORMITY_WEIGHT * (1 - evenness.lowQuarter())
                + BARE_WEIGHT * bare / reach.length
                + CROWDING_WEIGHT * crowding()
                + PACE_WEIGHT * (paces() - 1);
    }

    /** Into how many groups the chosen heads fall, in each of which none waters more than so many times as fast as another. */
    private int paces() {
        int count = chosen.size();
        for (int i = 0; i < count; i++) {
            Candidate one = chosen.get(i);
            double areaM2 = Math.toRadians(one.sweepDeg()) / 2 * one.radiusM() * one.radiusM();
            pace[i] = one.flowM3PerS() / areaM2;
        }
        Arrays.sort(pace, 0, count);
        int groups = 0;
        double slowest = -1;
        for (int i = 0; i < count; i++) {
            if (slowest < 0 || pace[i] > slowest * paceRatio) {
                slowest = pace[i];
                groups++;
            }
        }
        return Math.max(1, groups);
    }

    /**
     * Whether a head may stand there beside the given and the chosen ones.
     *
     * @param except index of a chosen head that is left out of account, or -1 for none
     */
    boolean isFree(Spot spot, int except) {
        return nearestM(spot, except) >= LEAST_APART_M;
    }

    /** How far the nearest head is, given or chosen; infinite if there is none. */
    double nearestM(Spot spot, int except) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < givenCount + chosen.size(); i++) {
            if (except < 0 || i != givenCount + except) {
                double eastM = heads.xM(i) - spot.xM();
                double northM = heads.yM(i) - spot.yM();
                nearest = Math.min(nearest, Math.hypot(eastM, northM));
            }
        }
        return nearest;
    }

    /** How much chosen heads crowd each other: 0 when all stand a throw apart, rising with the square of what is missing. */
    double crowding() {
        double sum = 0;
        for (int i = 0; i < chosen.size(); i++) {
            Candidate one = chosen.get(i);
            for (int j = 0; j < i; j++) {
                double throwM = Math.max(one.radiusM(), chosen.get(j).radiusM());
                double close = Math.max(0, 1 - one.awayM(chosen.get(j)) / throwM);
                sum += 2 * close * close;
            }
        }
        return sum / Math.max(1, chosen.size());
    }

    void add(Candidate candidate) {
        chosen.add(candidate);
        put(chosen.size() - 1, candidate);
    }

    /** Takes out a head; the last one takes its place in the list. */
    void remove(int index) {
        int last = chosen.size() - 1;
        take(index);
        Candidate moved = chosen.get(last);
        if (index != last) {
            take(last);
        }
        chosen.remove(last);
        if (index != last) {
            chosen.set(index, moved);
            put(index, moved);
        }
    }

    void replace(int index, Candidate candidate) {
        take(index);
        chosen.set(index, candidate);
        put(index, candidate);
    }

    /** How many reaches would be missing with that change; a null takes the head out. */
    int missingWith(int index, @Nullable Candidate instead) {
        long[] before = chosen.get(index).bits();
        int then = missing;
        for (int word = 0; word < before.length; word++) {
            long after = instead == null ? 0 : instead.bits()[word];
            for (long lost = before[word] & ~after; lost != 0; lost &= lost - 1) {
                then += reach[(word << 6) + Long.numberOfTrailingZeros(lost)] <= plot.wanted() ? 1 : 0;
            }
            for (long gained = after & ~before[word]; gained != 0; gained &= gained - 1) {
                then -= reach[(word << 6) + Long.numberOfTrailingZeros(gained)] < plot.wanted() ? 1 : 0;
            }
        }
        return then;
    }

    private void take(int index) {
        wetting.remove(givenCount + index);
        change(chosen.get(index).bits(), -1);
    }

    private void put(int index, Candidate candidate) {
        int head = givenCount + index;
        heads.place(head, candidate.spot().xM(), candidate.spot().yM());
        heads.radius(head, candidate.radiusM());
        heads.arcByBearing(head, candidate.startDeg(), candidate.sweepDeg());
        heads.flow(head, candidate.flowM3PerS());
        heads.profile(head, candidate.offer().curve());
        wetting.add(head);
        change(candidate.bits(), 1);
    }

    private void change(long[] bits, int by) {
        for (int word = 0; word < bits.length; word++) {
            for (long left = bits[word]; left != 0; left &= left - 1) {
                int cell = (word << 6) + Long.numberOfTrailingZeros(left);
                missing += Math.max(0, plot.wanted() - reach[cell] - by) - Math.max(0, plot.wanted() - reach[cell]);
                reach[cell] += by;
            }
        }
    }
}
