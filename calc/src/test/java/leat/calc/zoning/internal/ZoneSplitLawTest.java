package leat.calc.zoning.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class ZoneSplitLawTest {

    private static final ZoneProblem.Limits LIMITS = new ZoneProblem.Limits(1.0, 4, 15, 10);

    @RepeatedTest(100)
    void sevenHeadsArePartedAsByTryingAllPartitions(RepetitionInfo turn) {
        ZoneProblem problem = random(new Random(turn.getCurrentRepetition()), 7, 2);
        ZonePlan plan = ZoneSplit.solve(problem, 5, 20_000, () -> false);
        double[] best = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        tryAll(problem, new int[problem.heads], 0, 0, best);
        assertEquals(best[0], plan.zones());
        assertEquals(best[1], plan.costM(), 1e-9 * best[1]);
        assertTrue(plan.boundM() <= best[1] * (1 + 1e-9), plan.boundM() + " above " + best[1]);
        assertTrue(plan.fewestZones() <= best[0]);
    }

    @RepeatedTest(20)
    void everyZoneKeepsItsLimits(RepetitionInfo turn) {
        ZoneProblem problem = random(new Random(turn.getCurrentRepetition()), 45, 3);
        ZonePlan plan = ZoneSplit.solve(problem, 5, 50_000, () -> false);
        for (int zone = 0; zone < plan.zones(); zone++) {
            int here = zone;
            int[] heads =
                    IntStream.range(0, 45).filter(h -> plan.zoneOf()[h] == here).toArray();
            assertTrue(heads.length > 0 && heads.length <= 4);
            assertTrue(
                    IntStream.of(heads).mapToDouble(h -> problem.flowM3PerS[h]).sum() <= 1 + 1e-8);
            assertEquals(
                    1, IntStream.of(heads).map(h -> problem.kind[h]).distinct().count());
        }
        assertTrue(plan.boundM() <= plan.costM() * (1 + 1e-9));
    }

    @Test
    void sameSeedAndEffortGiveTheSameZones() {
        ZoneProblem problem = random(new Random(1), 30, 2);
        assertArrayEquals(
                ZoneSplit.solve(problem, 5, 50_000, () -> false).zoneOf(),
                ZoneSplit.solve(problem, 5, 50_000, () -> false).zoneOf());
    }

    @Test
    void headThatAloneDrawsTooMuchGetsItsOwnZone() {
        var problem = ZoneProblem.straight(
                new double[] {0.2, 1.7, 0.2}, new int[3], new double[] {1, 2, 3}, new double[3], 0, 0, LIMITS);
        ZonePlan plan = ZoneSplit.solve(problem, 5, 1000, () -> false);
        assertEquals(2, plan.zones());
        assertEquals(plan.zoneOf()[0], plan.zoneOf()[2]);
    }

    @Test
    void noHeadsNeedNoZones() {
        var problem = ZoneProblem.straight(new double[0], new int[0], new double[0], new double[0], 0, 0, LIMITS);
        assertEquals(0, ZoneSplit.solve(problem, 5, 1000, () -> false).zones());
    }

    private static ZoneProblem random(Random random, int heads, int kinds) {
        return ZoneProblem.straight(
                random.doubles(heads, 0.1, 0.6).toArray(),
                random.ints(heads, 0, kinds).toArray(),
                random.doubles(heads, 0, 40).toArray(),
                random.doubles(heads, 0, 40).toArray(),
                20,
                10,
                LIMITS);
    }

    private static void tryAll(ZoneProblem problem, int[] zoneOf, int head, int zones, double[] best) {
        if (head == problem.heads) {
            double cost = cost(problem, zoneOf, zones);
            if (zones < best[0] || (zones == best[0] && cost < best[1])) {
                best[0] = cost == Double.POSITIVE_INFINITY ? best[0] : zones;
                best[1] = cost == Double.POSITIVE_INFINITY ? best[1] : cost;
            }
            return;
        }
        for (int zone = 0; zone <= zones; zone++) {
            zoneOf[head] = zone;
            tryAll(problem, zoneOf, head + 1, Math.max(zones, zone + 1), best);
        }
    }

    private static double cost(ZoneProblem problem, int[] zoneOf, int zones) {
        double sum = 0;
        for (int zone = 0; zone < zones; zone++) {
            int here = zone;
            int[] heads = IntStream.range(0, problem.heads)
                    .filter(h -> zoneOf[h] == here)
                    .toArray();
            double flow =
                    IntStream.of(heads).mapToDouble(h -> problem.flowM3PerS[h]).sum();
            long kinds =
                    IntStream.of(heads).map(h -> problem.kind[h]).distinct().count();
            if (!problem.fits(flow, heads.length) || kinds > 1) {
                return Double.POSITIVE_INFINITY;
            }
            sum += problem.zoneCostM + 10 * flow * flow + spanning(problem, heads);
        }
        return sum;
    }

    /** Prim's method once more, written as plainly as can be. */
    private static double spanning(ZoneProblem problem, int[] heads) {
        boolean[] joined = new boolean[problem.heads + 1];
        joined[problem.manifold()] = true;
        double sum = 0;
        for (int round = 0; round < heads.length; round++) {
            double best = Double.POSITIVE_INFINITY;
            int next = -1;
            for (int head : heads) {
                for (int from = 0; from <= problem.heads && !joined[head]; from++) {
                    if (joined[from] && problem.lengthM(from, head) < best) {
                        best = problem.lengthM(from, head);
                        next = head;
                    }
                }
            }
            joined[next] = true;
            sum += best;
        }
        return sum;
    }
}
