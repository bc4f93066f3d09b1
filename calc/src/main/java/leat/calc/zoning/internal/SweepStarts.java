package leat.calc.zoning.internal;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Partitions by a hand that sweeps around the manifold and closes a zone when the next head no longer fits. Each head may
 * be the first.
 *
 * @see "Gillett, B. and Miller, L., A heuristic algorithm for the vehicle-dispatch problem, Operations Research 22, 1974
 *     (method from memory)"
 */
final class SweepStarts {

    private final ZoneProblem problem;
    private final int[] walk;

    SweepStarts(ZoneProblem problem, int[] heads) {
        this.problem = problem;
        this.walk = IntStream.of(heads)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer head) -> problem.bearingRad[head])
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    int count() {
        return walk.length;
    }

    /** Fills {@code zoneOf}, beginning with the {@code start}-th head of the sweep; returns the number of zones. */
    int cut(int start, int[] zoneOf) {
        int zone = -1;
        double flow = Double.POSITIVE_INFINITY;
        int size = 0;
        for (int i = 0; i < walk.length; i++) {
            int head = walk[(start + i) % walk.length];
            if (!problem.fits(flow + problem.flowM3PerS[head], size + 1)) {
                zone++;
                flow = 0;
                size = 0;
            }
            flow += problem.flowM3PerS[head];
            size++;
            zoneOf[head] = zone;
        }
        return zone + 1;
    }
}
