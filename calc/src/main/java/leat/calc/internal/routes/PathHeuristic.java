package leat.calc.internal.routes;

import java.util.Arrays;

/**
 * Grows a tree from one terminal, each time along the shortest path to the nearest terminal that is not yet in it. The
 * tree costs less than twice the optimum.
 *
 * @see "Takahashi, H. and Matsuyama, A., An approximate solution for the Steiner problem in graphs, Math. Japonica 24,
 *     1980 (method from memory)"
 */
final class PathHeuristic {

    private final Graph graph;
    private final NodeHeap heap;
    private final double[] distance;
    private final int[] parentEdge;

    PathHeuristic(Graph graph) {
        this.graph = graph;
        this.heap = new NodeHeap(graph.nodes);
        this.distance = new double[graph.nodes];
        this.parentEdge = new int[graph.nodes];
    }

    /**
     * Replaces {@code tree} by one that reaches all terminals.
     *
     * @param cost cost of each edge as this search shall see it; infinite shuts an edge
     * @return whether all terminals could be reached
     */
    boolean grow(Tree tree, double[] cost, int start, int terminals, Effort effort) {
        tree.clear();
        heap.clear();
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        enter(start);
        int missing = terminals - 1;
        long looked = 0;
        while (missing > 0 && !heap.isEmpty()) {
            int node = heap.poll();
            if (tree.isTerminal[node] && parentEdge[node] >= 0) {
                takePath(tree, node);
                missing--;
            }
            looked += spread(node, cost);
        }
        effort.spend(looked);
        return missing == 0;
    }

    private void enter(int node) {
        distance[node] = 0;
        parentEdge[node] = -1;
        heap.offer(node, 0);
    }

    /** The path joins the tree; its nodes become starting points, and what was found before from farther away still holds. */
    private void takePath(Tree tree, int terminal) {
        int at = terminal;
        while (parentEdge[at] >= 0) {
            int edge = parentEdge[at];
            tree.add(edge);
            enter(at);
            at = graph.across(edge, at);
        }
    }

    private int spread(int node, double[] cost) {
        double here = distance[node];
        for (int i = graph.first[node]; i < graph.first[node + 1]; i++) {
            int far = graph.farNode[i];
            double there = here + cost[graph.viaEdge[i]];
            if (there < distance[far]) {
                distance[far] = there;
                parentEdge[far] = graph.viaEdge[i];
                heap.offer(far, there);
            }
        }
        return graph.first[node + 1] - graph.first[node];
    }
}
