package leat.calc.internal.routes;

import java.util.Arrays;

/**
 * Which edges a tree cheaper than the best one known could still use. A tree through an arc costs at least the bound, the
 * slack on the way from the root to the arc, the arc's own slack and the slack from there to the nearest terminal.
 *
 * @see "Polzin, T. and Vahdati Daneshmand, S., Improved algorithms for the Steiner problem in networks, Discrete Applied
 *     Mathematics 112, 2001 (bound-based reduction, from memory)"
 */
final class CostFixing {

    /** Trees that cost the same but for rounding keep their edges. */
    private static final double SAME_SHARE = 1e-9;

    private final Graph graph;
    private final double[] slack;
    private final NodeHeap heap;

    private CostFixing(Graph graph, double[] slack) {
        this.graph = graph;
        this.slack = slack;
        this.heap = new NodeHeap(graph.nodes);
    }

    /** Edge by edge, whether it stays; {@code slack} as {@link DualAscent} leaves it for that root and bound. */
    static boolean[] open(Graph graph, double[] slack, int root, boolean[] isTerminal, double bound, double upper) {
        var fixing = new CostFixing(graph, slack);
        boolean[] isRoot = new boolean[graph.nodes];
        isRoot[root] = true;
        boolean[] isGoal = isTerminal.clone();
        isGoal[root] = false;
        double[] fromRoot = fixing.distances(isRoot, 0);
        double[] toGoal = fixing.distances(isGoal, 1);
        boolean[] open = new boolean[graph.edges];
        double room = upper * (1 + SAME_SHARE) - bound;
        for (int e = 0; e < graph.edges; e++) {
            double along = fromRoot[graph.from[e]] + slack[2 * e] + toGoal[graph.to[e]];
            double against = fromRoot[graph.to[e]] + slack[2 * e + 1] + toGoal[graph.from[e]];
            open[e] = Math.min(along, against) <= room;
        }
        return open;
    }

    /** Distances by slack: from the starts along the arcs (0), or to them (1). */
    private double[] distances(boolean[] isStart, int backwards) {
        double[] distance = new double[graph.nodes];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        for (int v = 0; v < graph.nodes; v++) {
            if (isStart[v]) {
                distance[v] = 0;
                heap.offer(v, 0);
            }
        }
        while (!heap.isEmpty()) {
            int node = heap.poll();
            for (int i = graph.first[node]; i < graph.first[node + 1]; i++) {
                int edge = graph.viaEdge[i];
                int outward = graph.from[edge] == node ? 0 : 1;
                double there = distance[node] + slack[2 * edge + (outward ^ backwards)];
                if (there < distance[graph.farNode[i]]) {
                    distance[graph.farNode[i]] = there;
                    heap.offer(graph.farNode[i], there);
                }
            }
        }
        return distance;
    }
}
