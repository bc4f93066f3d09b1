package leat.calc.zoning.internal;

/** Length of the shortest tree of straight pieces over the manifold and some heads, by Prim's method. */
final class SpanningLength {

    private final ZoneProblem problem;
    private final double[] nearestM;
    private final int[] waiting;

    SpanningLength(ZoneProblem problem) {
        this.problem = problem;
        this.nearestM = new double[problem.heads];
        this.waiting = new int[problem.heads];
    }

    /** No heads: 0. The order of the members does not matter but for rounding. */
    double of(int[] members, int count) {
        return ofReduced(members, count, 0);
    }

    /** The same with every pipe that ends at the manifold shortened by {@code rebateM}, which may make it negative. */
    double ofReduced(int[] members, int count, double rebateM) {
        System.arraycopy(members, 0, waiting, 0, count);
        for (int i = 0; i < count; i++) {
            nearestM[i] = problem.lengthM(problem.manifold(), members[i]) - rebateM;
        }
        double sum = 0;
        for (int left = count; left > 0; left--) {
            int best = 0;
            for (int i = 1; i < left; i++) {
                best = nearestM[i] < nearestM[best] ? i : best;
            }
            sum += nearestM[best];
            int joined = waiting[best];
            waiting[best] = waiting[left - 1];
            nearestM[best] = nearestM[left - 1];
            int row = joined * (problem.heads + 1);
            for (int i = 0; i < left - 1; i++) {
                nearestM[i] = Math.min(nearestM[i], problem.lengthM[row + waiting[i]]);
            }
        }
        return sum;
    }
}
