package leat.calc.internal.routes;

/**
 * Tries each node outside a tree: if the cheapest spanning tree over the old nodes and the new one, without useless ends,
 * costs less, the node stays.
 */
final class NodeInsertion {

    private final Graph graph;
    private final int[] group;
    private final int[] degree;
    private final int[] treeEdges;
    private int treeCount;
    private final int[] spokes;
    private int spokeCount;
    private final int[] chosen;
    private int chosenCount;

    NodeInsertion(Graph graph) {
        this.graph = graph;
        this.group = new int[graph.nodes];
        this.degree = new int[graph.nodes];
        this.treeEdges = new int[graph.nodes];
        this.spokes = new int[graph.mostEdgesAtANode()];
        this.chosen = new int[graph.nodes];
    }

    /** One look at every node; returns whether the tree became cheaper by more than {@code least}. */
    boolean improve(Tree tree, double least, Effort effort) {
        boolean improved = false;
        gather(tree);
        for (int node = 0; node < graph.nodes && effort.lasts(); node++) {
            if (tree.holds(node) || !findSpokes(tree, node)) {
                continue;
            }
            double before = cost(treeEdges, treeCount);
            merge();
            cutUselessEnds(tree);
            effort.spend(2L * treeCount + spokeCount);
            if (cost(chosen, chosenCount) < before - least) {
                tree.clear();
                for (int i = 0; i < chosenCount; i++) {
                    tree.add(chosen[i]);
                }
                gather(tree);
                improved = true;
            }
        }
        return improved;
    }

    private void gather(Tree tree) {
        treeCount = 0;
        for (int e = 0; e < graph.edges; e++) {
            if (tree.hasEdge[e]) {
                treeEdges[treeCount++] = e;
            }
        }
        sortByCost(treeEdges, treeCount);
    }

    /** The edges from the node into the tree, cheapest first; fewer than two cannot help. */
    private boolean findSpokes(Tree tree, int node) {
        spokeCount = 0;
        for (int i = graph.first[node]; i < graph.first[node + 1]; i++) {
            if (tree.holds(graph.farNode[i])) {
                spokes[spokeCount++] = graph.viaEdge[i];
            }
        }
        if (spokeCount < 2) {
            return false;
        }
        sortByCost(spokes, spokeCount);
        return true;
    }

    /** Kruskal's method over two lists that are each in order. */
    private void merge() {
        for (int i = 0; i < treeCount; i++) {
            loosen(treeEdges[i]);
        }
        for (int i = 0; i < spokeCount; i++) {
            loosen(spokes[i]);
        }
        chosenCount = 0;
        int a = 0;
        int b = 0;
        while (a < treeCount || b < spokeCount) {
            boolean spokeFirst = a == treeCount || (b < spokeCount && before(spokes[b], treeEdges[a]));
            take(spokeFirst ? spokes[b++] : treeEdges[a++]);
        }
    }

    private void loosen(int edge) {
        group[graph.from[edge]] = graph.from[edge];
        group[graph.to[edge]] = graph.to[edge];
        degree[graph.from[edge]] = 0;
        degree[graph.to[edge]] = 0;
    }

    private void take(int edge) {
        int rootA = Spanning.root(group, graph.from[edge]);
        int rootB = Spanning.root(group, graph.to[edge]);
        if (rootA != rootB) {
            group[rootB] = rootA;
            chosen[chosenCount++] = edge;
            degree[graph.from[edge]]++;
            degree[graph.to[edge]]++;
        }
    }

    private void cutUselessEnds(Tree tree) {
        boolean cut = true;
        while (cut) {
            cut = false;
            int kept = 0;
            for (int i = 0; i < chosenCount; i++) {
                int edge = chosen[i];
                if (isUselessEnd(tree, graph.from[edge]) || isUselessEnd(tree, graph.to[edge])) {
                    degree[graph.from[edge]]--;
                    degree[graph.to[edge]]--;
                    cut = true;
                } else {
                    chosen[kept++] = edge;
                }
            }
            chosenCount = kept;
        }
    }

    private boolean isUselessEnd(Tree tree, int node) {
        return degree[node] == 1 && !tree.isTerminal[node];
    }

    private double cost(int[] edges, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += graph.cost[edges[i]];
        }
        return sum;
    }

    private boolean before(int a, int b) {
        return graph.cost[a] < graph.cost[b] || (graph.cost[a] == graph.cost[b] && a < b);
    }

    /** Shell sort: the lists are short or nearly in order, and nothing is boxed. */
    private void sortByCost(int[] edges, int count) {
        for (int gap = count / 2; gap > 0; gap /= 2) {
            for (int i = gap; i < count; i++) {
                int edge = edges[i];
                int at = i;
                while (at >= gap && before(edge, edges[at - gap])) {
                    edges[at] = edges[at - gap];
                    at -= gap;
                }
                edges[at] = edge;
            }
        }
    }
}
