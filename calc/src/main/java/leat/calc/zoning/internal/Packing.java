package leat.calc.zoning.internal;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Few zones for heads of one kind, whatever the pipes cost. Zone after zone is filled as full as can be around the largest
 * head that is left; then, as long as it is worth trying, a few zones are emptied and filled anew with some heads held
 * back at random, so that room gathers in one zone until that zone is gone.
 *
 * @see "Fleszar, K. and Hindi, K. S., New heuristics for one-dimensional bin-packing, Computers & Operations Research
 *     29, 2002 (filling around a fixed item, from memory)"
 */
final class Packing {

    /** Partial fillings looked at for one zone; a filling is the fullest one if it took fewer. */
    private static final int MOST_FILLINGS = 20_000;

    private static final int MOST_EMPTIED = 6;
    private static final double MOST_HELD_BACK_SHARE = 0.5;

    /** A zone this full is full: rounding, and the allowance for rounding in the capacity itself. */
    private static final double FULL_SHARE = 1 - 3e-9;

    private final ZoneProblem problem;
    private final int[] heads;
    private final SplittableRandom random;
    private final int[] order;
    private int left;
    private final boolean[] chosen;
    private final boolean[] fullest;
    private double fullestFlow;
    private double heldBackShare;
    private int fillings;
    private long spent;

    /** @param heads of one kind, none of which exceeds the capacity alone */
    Packing(ZoneProblem problem, int[] heads, SplittableRandom random) {
        this.problem = problem;
        this.heads = heads;
        this.random = random;
        this.order = new int[heads.length];
        this.chosen = new boolean[heads.length];
        this.fullest = new boolean[heads.length];
    }

    /** Fills {@code zoneOf} for the heads and returns the number of zones. Stops at the bound or when the effort is spent. */
    int pack(int[] zoneOf, int bound, long effort) {
        System.arraycopy(heads, 0, order, 0, heads.length);
        left = heads.length;
        int zones = fill(zoneOf, 0);
        int[] trial = zoneOf.clone();
        double unevenness = unevenness(zoneOf, zones);
        while (zones > bound && spent < effort) {
            int now = refillSome(trial, zones);
            double nowUneven = unevenness(trial, now);
            if (now < zones || (now == zones && nowUneven >= unevenness)) {
                zones = now;
                unevenness = nowUneven;
                System.arraycopy(trial, 0, zoneOf, 0, trial.length);
            } else {
                System.arraycopy(zoneOf, 0, trial, 0, trial.length);
            }
        }
        return zones;
    }

    /** Empties a few zones, numbers the others anew, and fills what is free again. Returns the number of zones then. */
    private int refillSome(int[] zoneOf, int zones) {
        int emptied = Math.min(zones, 2 + random.nextInt(MOST_EMPTIED - 1));
        boolean[] isEmptied = new boolean[zones];
        for (int i = 0; i < emptied; i++) {
            isEmptied[random.nextInt(zones)] = true;
        }
        int[] number = new int[zones];
        int kept = 0;
        for (int zone = 0; zone < zones; zone++) {
            number[zone] = isEmptied[zone] ? -1 : kept++;
        }
        left = 0;
        for (int head : heads) {
            zoneOf[head] = number[zoneOf[head]];
            if (zoneOf[head] < 0) {
                order[left++] = head;
            }
        }
        heldBackShare = MOST_HELD_BACK_SHARE * random.nextDouble();
        spent += heads.length;
        return fill(zoneOf, kept);
    }

    /** The more the better: room that is gathered in one zone makes this larger than room spread over all. */
    private double unevenness(int[] zoneOf, int zones) {
        double[] flow = new double[zones];
        for (int head : heads) {
            flow[zoneOf[head]] += problem.flowM3PerS[head];
        }
        double sum = 0;
        for (double q : flow) {
            double share = q / problem.capacityM3PerS;
            sum += share * share;
        }
        return sum;
    }

    /** Puts the heads in {@code order} into zones from {@code firstZone} on; returns the number after the last. */
    private int fill(int[] zoneOf, int firstZone) {
        sortLargestFirst();
        int zone = firstZone;
        while (left > 0) {
            fillOne();
            int kept = 0;
            for (int i = 0; i < left; i++) {
                if (fullest[i]) {
                    zoneOf[order[i]] = zone;
                } else {
                    order[kept++] = order[i];
                }
            }
            left = kept;
            zone++;
        }
        return zone;
    }

    private void sortLargestFirst() {
        for (int i = 1; i < left; i++) {
            int head = order[i];
            int at = i;
            while (at > 0 && problem.flowM3PerS[order[at - 1]] < problem.flowM3PerS[head]) {
                order[at] = order[at - 1];
                at--;
            }
            order[at] = head;
        }
    }

    private void fillOne() {
        Arrays.fill(chosen, 0, left, false);
        fullestFlow = -1;
        fillings = 0;
        chosen[0] = true;
        extend(1, problem.flowM3PerS[order[0]], 1);
        spent += fillings;
    }

    private void extend(int from, double flow, int count) {
        if (flow > fullestFlow) {
            fullestFlow = flow;
            System.arraycopy(chosen, 0, fullest, 0, left);
        }
        double previous = -1;
        for (int i = from; i < left && fillings < MOST_FILLINGS; i++) {
            double added = problem.flowM3PerS[order[i]];
            if (fullestFlow >= problem.capacityM3PerS * FULL_SHARE) {
                return;
            }
            if (added == previous || !problem.fits(flow + added, count + 1) || isHeldBack()) {
                continue;
            }
            previous = added;
            fillings++;
            chosen[i] = true;
            extend(i + 1, flow + added, count + 1);
            chosen[i] = false;
        }
    }

    private boolean isHeldBack() {
        return heldBackShare > 0 && random.nextDouble() < heldBackShare;
    }
}
