package leat.calc.internal.routes;

import java.util.Comparator;
import java.util.stream.IntStream;

/** Cheapest spanning forests by Kruskal's method, edges in one order found beforehand. */
final class Spanning {

    private final Graph graph;
    private final int[] cheapestFirst;
    private final int[] group;

    Spanning(Graph graph) {
        this.graph = graph;
        this.cheapestFirst = IntStream.range(0, graph.edges)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer e) -> graph.cost[e])
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(Integer::intValue)
                .toArray();
        this.group = new int[graph.nodes];
    }

    /** Turns the tree into the cheapest one over the nodes that it holds, then cuts off what ends at no terminal. */
    void tidy(Tree tree, boolean[] heldScratch) {
        for (int v = 0; v < heldScratch.length; v++) {
            heldScratch[v] = tree.holds(v);
            group[v] = v;
        }
        tree.clear();
        for (int e : cheapestFirst) {
            if (heldScratch[graph.from[e]] && heldScratch[graph.to[e]] && join(graph.from[e], graph.to[e])) {
                tree.add(e);
            }
        }
        tree.prune();
    }

    /** The edges of the whole graph's cheapest spanning forest. */
    int[] forest() {
        for (int v = 0; v < group.length; v++) {
            group[v] = v;
        }
        return IntStream.of(cheapestFirst)
                .filter(e -> join(graph.from[e], graph.to[e]))
                .sorted()
                .toArray();
    }

    private boolean join(int a, int b) {
        int rootA = root(group, a);
        int rootB = root(group, b);
        if (rootA == rootB) {
            return false;
        }
        group[rootB] = rootA;
        return true;
    }

    static int root(int[] group, int node) {
        int at = node;
        while (group[at] != at) {
            group[at] = group[group[at]];
            at = group[at];
        }
        return at;
    }
}
