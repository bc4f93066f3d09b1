package leat.calc.internal.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * Cheap Steiner trees in graphs with a lower bound. First dual ascents from several roots, each with a tree grown over
 * its saturated edges, again and again over the edges that the bounds leave; then trees grown from each terminal; then, as long as effort lasts and the bound is not met, trees
 * grown under blurred costs or within the union of two good ones. Every tree goes through {@link LocalSearch}.
 */
public final class SteinerSearch {

    /** Costs are blurred upward by at most this share; wide enough to leave the valley, narrow enough to stay near. */
    private static final double BLUR_SHARE = 0.25;

    private static final int MOST_ROOTS = 25;
    private static final int POOL = 10;

    /** Starting afresh with fewer edges pays when at least a tenth of them is gone. */
    private static final double WORTHWHILE_SHARE = 0.9;

    /** Two sums of the same edges in another order agree to this share. */
    private static final double SAME_SHARE = 1e-9;

    private final Graph graph;
    private final int[] terminals;
    private final Effort effort;
    private final SplittableRandom random;
    private final PathHeuristic paths;
    private final LocalSearch local;
    private final DualAscent dual;
    private final double[] seenCost;
    private final List<Tree> pool = new ArrayList<>();
    private final List<Double> poolCost = new ArrayList<>();
    private final double[] bestSlack;
    private int bestRoot;
    private Tree work;
    private double bound;
    private double rootBound;

    private SteinerSearch(Graph graph, int[] terminals, long seed, Effort effort) {
        this.graph = graph;
        this.terminals = terminals;
        this.effort = effort;
        this.random = new SplittableRandom(seed);
        boolean[] isTerminal = new boolean[graph.nodes];
        for (int terminal : terminals) {
            isTerminal[terminal] = true;
        }
        this.work = new Tree(graph, isTerminal);
        this.paths = new PathHeuristic(graph);
        this.local = new LocalSearch(graph);
        this.dual = new DualAscent(graph, isTerminal);
        this.seenCost = new double[graph.edges];
        this.bestSlack = new double[2 * graph.edges];
    }

    /**
     * Searches until the tree is proven or the effort is spent. A first tree is always grown, whatever the effort.
     *
     * @param terminals distinct nodes
     * @param seed      of the blurred costs; the same seed and effort give the same tree
     * @throws IllegalArgumentException if the graph does not join the terminals
     */
    public static SteinerTree solve(Graph graph, int[] terminals, long seed, Effort effort) {
        if (terminals.length < 2) {
            return new SteinerTree(new int[0], 0, 0, false);
        }
        var search = new SteinerSearch(graph, terminals, seed, effort);
        search.growFirst();
        search.ascend();
        int[] original = IntStream.range(0, graph.edges).toArray();
        for (int[] kept = search.survivors();
                kept.length < WORTHWHILE_SHARE * search.graph.edges && search.isOpen(); ) {
            search = search.within(kept, seed);
            original = IntStream.of(kept).map(at(original)).toArray();
            search.ascend();
            kept = search.survivors();
        }
        search.growFromTerminals();
        search.growBlurred();
        Tree best = search.pool.get(0);
        double cost = best.cost();
        int[] edges = IntStream.of(best.edges()).map(at(original)).toArray();
        return new SteinerTree(edges, cost, Math.min(search.bound, cost), effort.wasInterrupted());
    }

    private static IntUnaryOperator at(int[] values) {
        return i -> values[i];
    }

    private void growFirst() {
        // The bound comes first: little effort shall still buy a proof of some worth.
        ascendFrom(terminals[0]);
        if (!paths.grow(work, graph.cost, terminals[0], terminals.length, effort)) {
            throw new IllegalArgumentException("the graph does not join all terminals");
        }
        keep();
    }

    private void ascendFrom(int root) {
        double found = dual.ascend(root, effort);
        if (found > rootBound) {
            rootBound = found;
            bestRoot = root;
            System.arraycopy(dual.slack, 0, bestSlack, 0, bestSlack.length);
        }
        // Over fewer edges the ascent bounds only trees that are cheaper than the best one known when they were chosen.
        bound = Math.max(bound, pool.isEmpty() ? rootBound : Math.min(rootBound, poolCost.get(0)));
    }

    /** Edges that a cheaper tree than the best one may use; those of the best one are among them. */
    private int[] survivors() {
        boolean[] open = CostFixing.open(graph, bestSlack, bestRoot, work.isTerminal, rootBound, poolCost.get(0));
        return IntStream.range(0, graph.edges).filter(e -> open[e]).toArray();
    }

    /** The same search over these edges only. The best tree comes along; all cheaper ones are in what is left. */
    private SteinerSearch within(int[] kept, long seed) {
        var search = new SteinerSearch(graph.only(kept), terminals, seed, effort);
        for (int i = 0; i < kept.length; i++) {
            if (pool.get(0).hasEdge[kept[i]]) {
                search.work.add(i);
            }
        }
        search.keep();
        search.bound = bound;
        return search;
    }

    private void ascend() {
        int roots = Math.min(MOST_ROOTS, terminals.length);
        for (int i = 0; i < roots && isOpen(); i++) {
            int root = terminals[(int) ((long) i * terminals.length / roots)];
            ascendFrom(root);
            dual.costOfSaturated(seenCost);
            if (paths.grow(work, seenCost, root, terminals.length, effort)) {
                keep();
            }
        }
    }

    private void growFromTerminals() {
        for (int i = 1; i < terminals.length && isOpen(); i++) {
            paths.grow(work, graph.cost, terminals[i], terminals.length, effort);
            keep();
        }
    }

    private void growBlurred() {
        for (int turn = 0; isOpen(); turn++) {
            boolean merge = turn % 2 == 1 && pool.size() > 1;
            if (merge) {
                int a = random.nextInt(pool.size());
                int b = random.nextInt(pool.size() - 1);
                blurUnion(pool.get(a), pool.get(b < a ? b : b + 1));
            } else {
                blurAll();
            }
            paths.grow(work, seenCost, terminals[random.nextInt(terminals.length)], terminals.length, effort);
            keep();
        }
    }

    private void blurAll() {
        for (int e = 0; e < graph.edges; e++) {
            seenCost[e] = graph.cost[e] * (1 + BLUR_SHARE * random.nextDouble());
        }
        effort.spend(graph.edges);
    }

    private void blurUnion(Tree a, Tree b) {
        for (int e = 0; e < graph.edges; e++) {
            boolean isOpen = a.hasEdge[e] || b.hasEdge[e];
            seenCost[e] = isOpen ? graph.cost[e] * (1 + BLUR_SHARE * random.nextDouble()) : Double.POSITIVE_INFINITY;
        }
        effort.spend(graph.edges);
    }

    private boolean isOpen() {
        return effort.lasts() && poolCost.get(0) > bound * (1 + SAME_SHARE);
    }

    /** Improves the tree just grown and keeps it if it is new and among the best; the earlier of two equals goes first. */
    private void keep() {
        double cost = local.improve(work, effort);
        int at = pool.size();
        while (at > 0 && cost < poolCost.get(at - 1)) {
            at--;
        }
        boolean isNew = at == 0 || cost > poolCost.get(at - 1) * (1 + SAME_SHARE);
        if (at >= POOL || !isNew) {
            return;
        }
        Tree kept = work;
        pool.add(at, kept);
        poolCost.add(at, cost);
        if (pool.size() > POOL) {
            work = pool.remove(POOL);
            poolCost.remove(POOL);
        } else {
            work = new Tree(graph, kept.isTerminal);
        }
    }
}
