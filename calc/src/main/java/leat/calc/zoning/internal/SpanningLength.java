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
        int row = problem.manifold() * (problem.heads + 1);
        for (int i = 0; i < count; i++) {
            nearestM[i] = problem.lengthM[row + members[i]] - rebateM;
        }
        int best = firstNearest(count);
        double sum = 0;
        for (int left = count - 1; left >= 0; left--) {
            sum += nearestM[best];
            row = waiting[best] * (problem.heads + 1);
            waiting[best] = waiting[left];
            nearestM[best] = nearestM[left];
            best = approach(row, left);
        }
        return sum;
    }

    private int firstNearest(int count) {
        int best = 0;
        for (int i = 1; i < count; i++) {
            best = nearestM[i] < nearestM[best] ? i : best;
        }
        return best;
    }

    /** One walk over those that wait: brings each as near as the one that joined last, and finds the nearest, the first of equals. */
    private int approach(int row, int left) {
        double[] lengthM = problem.lengthM;
        int best = 0;
        double bestM = Double.POSITIVE_INFINITY;
        for (int i = 0; i < left; i++) {
            double toJoinedM = lengthM[row + waiting[i]];
            double wasM = nearestM[i];
            double isM = toJoinedM < wasM ? toJoinedM : wasM;
            nearestM[i] = isM;
            if (isM < bestM) {
                bestM = isM;
                best = i;
            }
        }
        return best;
    }
}
