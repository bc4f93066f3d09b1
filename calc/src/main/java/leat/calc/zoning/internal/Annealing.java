package leat.calc.zoning.internal;

import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Shortens the pipes of a partition without adding zones: moves a head to the zone of a near one, or swaps two, and takes
 * worse partitions less and less as it cools. The best one met comes back.
 */
final class Annealing {

    /** Shares of the mean pipe length per head: warm enough to undo a zone, cold enough to be a descent. */
    private static final double WARM_SHARE = 0.5;

    private static final double COLD_SHARE = 0.002;
    private static final int NEAR_HEADS = 10;
    private static final int MOVES_BETWEEN_ASKING = 1024;

    private final int[] heads;
    private final int[] near;
    private final int nearCount;

    Annealing(ZoneProblem problem, int[] heads) {
        this.heads = heads;
        this.nearCount = Math.min(NEAR_HEADS, heads.length - 1);
        this.near = new int[heads.length * nearCount];
        for (int i = 0; i < heads.length; i++) {
            int head = heads[i];
            int[] others = IntStream.of(heads)
                    .filter(other -> other != head)
                    .boxed()
                    .sorted(Comparator.comparingDouble((Integer other) -> problem.lengthM(head, other))
                            .thenComparing(Comparator.naturalOrder()))
                    .limit(nearCount)
                    .mapToInt(Integer::intValue)
                    .toArray();
            System.arraycopy(others, 0, near, i * nearCount, nearCount);
        }
    }

    /** Works on {@code zones} and leaves the best partition met in it. */
    void improve(Zones zones, long moves, SplittableRandom random, BooleanSupplier stopped) {
        // Where no pipe has a length there is none to shorten.
        if (nearCount == 0 || zones.count < 2 || zones.pipeM() == 0) {
            return;
        }
        int[] best = zones.zoneOf.clone();
        double bestCost = zones.costM();
        double scale = bestCost / heads.length;
        double cooling = StrictMath.pow(COLD_SHARE / WARM_SHARE, 1.0 / Math.max(1, moves));
        double heat = WARM_SHARE * scale;
        double cost = bestCost;
        for (long move = 0; move < moves; move++, heat *= cooling) {
            if (move % MOVES_BETWEEN_ASKING == 0 && stopped.getAsBoolean()) {
                break;
            }
            if (tryOne(zones, cost, heat, random)) {
                cost = zones.costM();
                if (cost < bestCost - 1e-12 * bestCost) {
                    bestCost = cost;
                    System.arraycopy(zones.zoneOf, 0, best, 0, best.length);
                }
            }
        }
        zones.assign(best);
    }

    /** One move or swap; the warmer, the likelier it is kept though the cost rises. */
    private boolean tryOne(Zones zones, double cost, double heat, SplittableRandom random) {
        double chance = 1 - random.nextDouble();
        int i = random.nextInt(heads.length);
        int head = heads[i];
        int other = near[i * nearCount + random.nextInt(nearCount)];
        int from = zones.zoneOf[head];
        int to = zones.zoneOf[other];
        if (from == to) {
            return false;
        }
        if (random.nextBoolean() && zones.canMove(head, to)) {
            zones.move(head, to);
            if (isBearable(zones.costM() - cost, heat, chance)) {
                return true;
            }
            zones.undoMove(head);
            return false;
        }
        int partner = zones.members[to][random.nextInt(zones.size[to])];
        if (!zones.canSwap(head, partner)) {
            return false;
        }
        zones.swap(head, partner);
        if (isBearable(zones.costM() - cost, heat, chance)) {
            return true;
        }
        zones.undoSwap(head, partner);
        return false;
    }

    /** A logarithm costs as much as a small tree: none is taken where the cost falls. */
    private static boolean isBearable(double riseM, double heat, double chance) {
        return riseM <= 0 || riseM <= -heat * StrictMath.log(chance);
    }
}
