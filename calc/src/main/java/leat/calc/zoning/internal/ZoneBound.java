package leat.calc.zoning.internal;

import java.util.Arrays;

/** What no partition of heads of one kind can undercut. */
final class ZoneBound {

    private static final int HALVINGS = 60;

    private ZoneBound() {}

    /**
     * Fewest zones by flow and by number of heads. With the best threshold t, heads above capacity - t stand alone, those
     * above half need a zone each, and those down to t fill what is left of these.
     *
     * @see "Martello, S. and Toth, P., Lower bounds and reduction procedures for the bin packing problem, Discrete
     *     Applied Mathematics 28, 1990 (bound L2, from memory)"
     */
    static int fewestZones(ZoneProblem problem, int[] heads) {
        double[] flow = new double[heads.length];
        for (int i = 0; i < heads.length; i++) {
            flow[i] = problem.flowM3PerS[heads[i]];
        }
        Arrays.sort(flow);
        int bound = (heads.length + problem.mostHeads - 1) / problem.mostHeads;
        bound = Math.max(bound, zonesAtThreshold(flow, problem.capacityM3PerS, 0));
        for (double threshold : flow) {
            if (threshold <= problem.capacityM3PerS / 2) {
                bound = Math.max(bound, zonesAtThreshold(flow, problem.capacityM3PerS, threshold));
            }
        }
        return bound;
    }

    private static int zonesAtThreshold(double[] flow, double capacity, double threshold) {
        int alone = 0;
        int half = 0;
        double halfFlow = 0;
        double smallFlow = 0;
        for (double q : flow) {
            if (q > capacity - threshold) {
                alone++;
            } else if (q > capacity / 2) {
                half++;
                halfFlow += q;
            } else if (q >= threshold) {
                smallFlow += q;
            }
        }
        double rest = smallFlow - (half * capacity - halfFlow);
        return alone + half + (int) Math.ceil(Math.max(0, rest / capacity - 1e-9));
    }

    /**
     * What so many zones cost at least besides their pipe: equal shares of the flow cost least, and more zones cost more, since a
     * zone costs no less than its load.
     */
    static double zonesM(ZoneProblem problem, int[] heads, int fewest) {
        double flow = 0;
        for (int head : heads) {
            flow += problem.flowM3PerS[head];
        }
        double shares = flow / problem.capacityM3PerS;
        return fewest * problem.zoneCostM + problem.loadCostM * shares * shares / fewest;
    }

    /**
     * Shortest tree over the manifold and all the heads in which at least {@code zones} pipes leave the manifold: the
     * zones' trees together are such a tree. Found by a rebate on pipes at the manifold, whose best value closes the gap
     * (spanning trees with a bound on one degree form a matroid intersection that Lagrange's bound describes exactly).
     */
    static double pipeLengthM(ZoneProblem problem, int[] heads, int zones) {
        var spanning = new SpanningLength(problem);
        double best = spanning.of(heads, heads.length);
        double low = 0;
        double high = 0;
        for (int head : heads) {
            high = Math.max(high, problem.lengthM(problem.manifold(), head));
        }
        for (int i = 0; i < HALVINGS; i++) {
            double third = (high - low) / 3;
            double a = lagrange(spanning, heads, zones, low + third);
            double b = lagrange(spanning, heads, zones, high - third);
            best = Math.max(best, Math.max(a, b));
            if (a < b) {
                low += third;
            } else {
                high -= third;
            }
        }
        return best;
    }

    private static double lagrange(SpanningLength spanning, int[] heads, int zones, double rebateM) {
        return spanning.ofReduced(heads, heads.length, rebateM) + zones * rebateM;
    }
}
