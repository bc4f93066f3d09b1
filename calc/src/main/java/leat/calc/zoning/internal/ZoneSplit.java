package leat.calc.zoning.internal;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Parts heads into zones: fewest zones first, then least pipe. Kinds never share a zone, so each kind is solved for
 * itself: savings and sweeps for short pipes, a packing where these leave too many zones, then annealing from the best start.
 */
public final class ZoneSplit {

    /** Share of the effort that may go into saving a zone before pipes are shortened. */
    private static final double PACKING_SHARE = 0.5;

    private final ZoneProblem problem;
    private final SplittableRandom random;
    private final BooleanSupplier stopped;
    private final int[] zoneOf;
    private int zones;
    private double costM;
    private int fewestZones;
    private double boundM;

    private ZoneSplit(ZoneProblem problem, long seed, BooleanSupplier stopped) {
        this.problem = problem;
        this.random = new SplittableRandom(seed);
        this.stopped = stopped;
        this.zoneOf = new int[problem.heads];
    }

    /**
     * @param seed   of the annealing; the same seed and effort give the same zones
     * @param effort moves tried over all kinds together, shared out by the number of heads
     */
    public static ZonePlan solve(ZoneProblem problem, long seed, long effort, BooleanSupplier stopped) {
        var split = new ZoneSplit(problem, seed, stopped);
        int[] kinds = IntStream.of(problem.kind).distinct().sorted().toArray();
        for (int kind : kinds) {
            split.solveKind(kind, effort);
        }
        return new ZonePlan(
                split.zoneOf, split.zones, split.costM, split.fewestZones, split.boundM, stopped.getAsBoolean());
    }

    private void solveKind(int kind, long effort) {
        int[] all = IntStream.range(0, problem.heads)
                .filter(head -> problem.kind[head] == kind)
                .toArray();
        int[] fitting = IntStream.of(all)
                .filter(head -> problem.fits(problem.flowM3PerS[head], 1))
                .toArray();
        for (int head : all) {
            if (!problem.fits(problem.flowM3PerS[head], 1)) {
                giveOwnZone(head);
            }
        }
        if (fitting.length > 0) {
            solveFitting(fitting, effort * fitting.length / problem.heads);
        }
    }

    private void giveOwnZone(int head) {
        double share = problem.flowM3PerS[head] / problem.capacityM3PerS;
        double alone =
                problem.zoneCostM + problem.loadCostM * share * share + problem.lengthM(problem.manifold(), head);
        zoneOf[head] = zones++;
        costM += alone;
        boundM += alone;
        fewestZones++;
    }

    private void solveFitting(int[] heads, long effort) {
        int fewest = ZoneBound.fewestZones(problem, heads);
        Zones working = start(heads, fewest, effort);
        new Annealing(problem, heads).improve(working, effort, random, stopped);
        Descent.improve(working, heads);
        take(working, heads);
        fewestZones += fewest;
        boundM += ZoneBound.zonesM(problem, heads, fewest) + ZoneBound.pipeLengthM(problem, heads, fewest);
    }

    /** The best of all starts after a descent: fewest zones first, then least cost, then the earlier one. */
    private Zones start(int[] heads, int fewest, long effort) {
        int[] part = new int[problem.heads];
        Arrays.fill(part, -1);
        Zones best = descended(part, new Savings(problem).part(heads, part), heads);
        var sweep = new SweepStarts(problem, heads);
        for (int i = 0; i < sweep.count() && !stopped.getAsBoolean(); i++) {
            int count = sweep.cut(i, part);
            // A zone too many is no loss yet: the descent may empty it.
            if (count <= best.usedCount() + 1) {
                best = better(best, descended(part, count, heads));
            }
        }
        if (best.usedCount() > fewest) {
            var packing = new Packing(problem, heads, random);
            int count = packing.pack(part, fewest, (long) (PACKING_SHARE * effort));
            best = count < best.usedCount() ? descended(part, count, heads) : best;
        }
        return best;
    }

    private Zones descended(int[] part, int count, int[] heads) {
        var zones = new Zones(problem, part, count);
        Descent.improve(zones, heads);
        return zones;
    }

    private static Zones better(Zones a, Zones b) {
        int fewer = Integer.compare(b.usedCount(), a.usedCount());
        return fewer < 0 || (fewer == 0 && b.costM() < a.costM()) ? b : a;
    }

    private void take(Zones working, int[] heads) {
        int[] number = new int[working.count];
        Arrays.fill(number, -1);
        for (int head : heads) {
            int zone = working.zoneOf[head];
            if (number[zone] < 0) {
                number[zone] = zones++;
            }
            zoneOf[head] = number[zone];
        }
        costM += working.costM();
    }
}
