package leat.calc.internal.routes;

import java.util.Arrays;

/**
 * One tree of trenches over all terminals: found over the places given, then a few times again with junctions added where
 * its trenches meet at a sharp angle.
 */
public final class SharedTrench {

    /** New junctions call for others beside them; later rounds gained less than a thousandth on yards of 50 places. */
    private static final int ROUNDS = 3;

    /** Each sweep takes about half of the way that is left. */
    private static final int SETTLING_SWEEPS = 20;

    /** A junction nearer to a place than this is that place. */
    private static final double LEAST_STEP_M = 0.05;

    private SharedTrench() {}

    /**
     * Finds the tree; {@code ways} gains places at junctions. The bound holds for the places of the last round.
     *
     * @param effort edges looked at in all; each round takes its part
     * @param permit      where junctions may lie, and whether to go on
     */
    public static Found find(Ways ways, int[] terminals, long seed, long effort, Permit permit) {
        long roundEffort = effort / (ROUNDS + 1);
        Graph graph = ways.graphFor(terminals);
        SteinerTree tree = SteinerSearch.solve(graph, terminals, seed, new Effort(roundEffort, permit::stopped));
        for (int round = 0; round < ROUNDS && !tree.interrupted(); round++) {
            int before = ways.places();
            addJunctions(ways, graph, tree, terminals, permit);
            if (ways.places() == before) {
                break;
            }
            graph = ways.graphFor(terminals);
            tree = SteinerSearch.solve(graph, terminals, seed, new Effort(roundEffort, permit::stopped));
        }
        return new Found(graph, tree);
    }

    /** What the search asks of its surroundings. */
    public interface Permit {
        boolean allows(double xM, double yM);

        boolean stopped();
    }

    /** A tree and the graph whose edges it names. */
    public record Found(Graph graph, SteinerTree tree) {}

    private static void addJunctions(Ways ways, Graph graph, SteinerTree tree, int[] terminals, Permit permit) {
        int[] first = new int[graph.nodeCount() + 1];
        int[] neighbours = neighbours(graph, tree.edges(), first);
        double[] out = new double[2];
        for (int v = 0; v < graph.nodeCount(); v++) {
            for (int i = first[v]; i < first[v + 1]; i++) {
                for (int j = i + 1; j < first[v + 1]; j++) {
                    int a = neighbours[i];
                    int b = neighbours[j];
                    boolean sharp = Junctions.least(
                            ways.xM(v), ways.yM(v), ways.xM(a), ways.yM(a), ways.xM(b), ways.yM(b), out);
                    if (sharp && isApart(ways, v, out) && permit.allows(out[0], out[1])) {
                        ways.add(out[0], out[1]);
                    }
                }
            }
        }
        settle(ways, first, neighbours, terminals, permit);
    }

    /** Junctions of three trenches pull each other: lets all move to where they come to rest, and adds those places. */
    private static void settle(Ways ways, int[] first, int[] neighbours, int[] terminals, Permit permit) {
        int places = first.length - 1;
        double[] x = new double[places];
        double[] y = new double[places];
        boolean[] moves = new boolean[places];
        for (int v = 0; v < places; v++) {
            x[v] = ways.xM(v);
            y[v] = ways.yM(v);
            moves[v] = first[v + 1] - first[v] == 3;
        }
        for (int terminal : terminals) {
            moves[terminal] = false;
        }
        double[] out = new double[2];
        for (int sweep = 0; sweep < SETTLING_SWEEPS; sweep++) {
            for (int v = 0; v < places; v++) {
                int a = moves[v] ? neighbours[first[v]] : v;
                int b = moves[v] ? neighbours[first[v] + 1] : v;
                int c = moves[v] ? neighbours[first[v] + 2] : v;
                if (moves[v] && Junctions.least(x[a], y[a], x[b], y[b], x[c], y[c], out)) {
                    x[v] = out[0];
                    y[v] = out[1];
                }
            }
        }
        for (int v = 0; v < places; v++) {
            if (moves[v] && permit.allows(x[v], y[v])) {
                ways.add(x[v], y[v]);
            }
        }
    }

    private static boolean isApart(Ways ways, int place, double[] point) {
        return Math.hypot(ways.xM(place) - point[0], ways.yM(place) - point[1]) >= LEAST_STEP_M;
    }

    private static int[] neighbours(Graph graph, int[] edges, int[] first) {
        for (int edge : edges) {
            first[graph.from(edge) + 1]++;
            first[graph.to(edge) + 1]++;
        }
        for (int v = 0; v + 1 < first.length; v++) {
            first[v + 1] += first[v];
        }
        int[] next = Arrays.copyOf(first, first.length);
        int[] neighbours = new int[2 * edges.length];
        for (int edge : edges) {
            neighbours[next[graph.from(edge)]++] = graph.to(edge);
            neighbours[next[graph.to(edge)]++] = graph.from(edge);
        }
        return neighbours;
    }
}
