package leat.calc.internal.routes;

/** Improves a tree by node insertion, key-path exchange and junction exchange in turn, until none helps. */
final class LocalSearch {

    /** A gain must exceed this share of the cost; it absorbs rounding in sums, so that the search cannot circle. */
    private static final double LEAST_GAIN_SHARE = 1e-10;

    private final Spanning spanning;
    private final NodeInsertion insertion;
    private final PathExchange exchange;
    private final boolean[] held;

    LocalSearch(Graph graph) {
        this.spanning = new Spanning(graph);
        this.insertion = new NodeInsertion(graph);
        this.exchange = new PathExchange(graph);
        this.held = new boolean[graph.nodes];
    }

    /** Returns the cost reached. */
    double improve(Tree tree, Effort effort) {
        spanning.tidy(tree, held);
        boolean improved = true;
        while (improved && effort.lasts()) {
            double least = LEAST_GAIN_SHARE * tree.cost();
            improved = insertion.improve(tree, least, effort);
            improved |= exchange.improveByPaths(tree, least, effort);
            improved |= exchange.improveByJunctions(tree, least, effort);
        }
        return tree.cost();
    }
}
