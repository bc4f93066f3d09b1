package leat.calc.internal.routes;

import java.util.Arrays;

/**
 * A lower bound for every tree that joins the terminals. Each terminal that the root does not reach yet over saturated
 * arcs raises the price of the cut around it, until all are reached; what was raised in all is a solution of the dual of
 * the directed-cut relaxation. The cut with the fewest arcs is raised first. Arc {@code 2e} runs along edge {@code e},
 * arc {@code 2e + 1} against it.
 *
 * @see "Wong, R. T., A dual ascent approach for Steiner tree problems on a directed graph, Mathematical Programming 28,
 *     1984 (method from memory)"
 */
final class DualAscent {

    /** Slack that a chain of subtractions leaves on an arc that is saturated, as a share of its cost. */
    private static final double SATURATED_SHARE = 1e-12;

    private final Graph graph;
    private final boolean[] isTerminal;
    final double[] slack;
    private final NodeHeap waiting;
    private final boolean[] isWaiting;
    private final int[] insideStamp;
    private int stamp;
    private final int[] inside;
    private int insideCount;
    private final int[] cutArcs;
    private int cutCount;
    private long looked;

    DualAscent(Graph graph, boolean[] isTerminal) {
        this.graph = graph;
        this.isTerminal = isTerminal;
        this.slack = new double[2 * graph.edges];
        this.waiting = new NodeHeap(graph.nodes);
        this.isWaiting = new boolean[graph.nodes];
        this.insideStamp = new int[graph.nodes];
        this.inside = new int[graph.nodes];
        this.cutArcs = new int[2 * graph.edges];
    }

    /** The bound from this root; {@link #slack} then holds what is left of each arc's cost. Valid when effort ran out, too. */
    double ascend(int root, Effort effort) {
        start(root);
        double bound = 0;
        while (!waiting.isEmpty() && effort.lasts()) {
            int terminal = waiting.poll();
            looked = 0;
            if (surround(terminal, root)) {
                while (isBestNext()) {
                    bound += raise();
                    if (!widen(terminal, root)) {
                        break;
                    }
                }
            }
            if (cutCount > 0) {
                waiting.offer(terminal, cutCount);
            } else {
                isWaiting[terminal] = false;
            }
            effort.spend(looked);
        }
        return bound;
    }

    private void start(int root) {
        waiting.clear();
        for (int e = 0; e < graph.edges; e++) {
            slack[2 * e] = graph.cost[e];
            slack[2 * e + 1] = graph.cost[e];
        }
        for (int v = 0; v < graph.nodes; v++) {
            isWaiting[v] = isTerminal[v] && v != root;
            if (isWaiting[v]) {
                waiting.offer(v, graph.first[v + 1] - graph.first[v]);
            }
        }
    }

    /** Gathers all that reaches the terminal over saturated arcs; false, with an empty cut, if another one answers for it. */
    private boolean surround(int terminal, int root) {
        stamp++;
        insideCount = 0;
        cutCount = 0;
        include(terminal);
        return spread(0, terminal, root);
    }

    private void include(int node) {
        insideStamp[node] = stamp;
        inside[insideCount++] = node;
    }

    private boolean spread(int fromIndex, int terminal, int root) {
        for (int at = fromIndex; at < insideCount; at++) {
            int node = inside[at];
            if (node == root || (isWaiting[node] && node != terminal)) {
                cutCount = 0;
                return false;
            }
            for (int i = graph.first[node]; i < graph.first[node + 1]; i++) {
                int far = graph.farNode[i];
                if (insideStamp[far] == stamp) {
                    continue;
                }
                int arc = 2 * graph.viaEdge[i] + (graph.from[graph.viaEdge[i]] == far ? 0 : 1);
                if (slack[arc] == 0) {
                    include(far);
                } else {
                    cutArcs[cutCount++] = arc;
                }
            }
            looked += graph.first[node + 1] - graph.first[node];
        }
        dropInnerArcs();
        return cutCount > 0;
    }

    private void dropInnerArcs() {
        int kept = 0;
        for (int i = 0; i < cutCount; i++) {
            if (insideStamp[tail(cutArcs[i])] != stamp) {
                cutArcs[kept++] = cutArcs[i];
            }
        }
        looked += cutCount;
        cutCount = kept;
    }

    private int tail(int arc) {
        return (arc & 1) == 0 ? graph.from[arc >> 1] : graph.to[arc >> 1];
    }

    private boolean isBestNext() {
        return waiting.isEmpty() || cutCount <= waiting.leastKey();
    }

    private double raise() {
        double step = Double.POSITIVE_INFINITY;
        for (int i = 0; i < cutCount; i++) {
            step = Math.min(step, slack[cutArcs[i]]);
        }
        for (int i = 0; i < cutCount; i++) {
            int arc = cutArcs[i];
            double rest = slack[arc] - step;
            slack[arc] = rest <= SATURATED_SHARE * graph.cost[arc >> 1] ? 0 : rest;
        }
        looked += 2L * cutCount;
        return step;
    }

    /** Takes in the tails of the arcs that the last raise saturated. */
    private boolean widen(int terminal, int root) {
        int before = insideCount;
        for (int i = 0; i < cutCount; i++) {
            int tail = tail(cutArcs[i]);
            if (slack[cutArcs[i]] == 0 && insideStamp[tail] != stamp) {
                include(tail);
            }
        }
        return spread(before, terminal, root);
    }

    /** The costs with all edges shut that are saturated in neither direction: where good trees are to be looked for. */
    void costOfSaturated(double[] out) {
        Arrays.fill(out, Double.POSITIVE_INFINITY);
        for (int e = 0; e < graph.edges; e++) {
            if (slack[2 * e] == 0 || slack[2 * e + 1] == 0) {
                out[e] = graph.cost[e];
            }
        }
    }
}
