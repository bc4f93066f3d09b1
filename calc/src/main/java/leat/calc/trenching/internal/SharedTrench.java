package leat.calc.trenching.internal;

import java.util.Arrays;

/**
 * One tree of trenches over all terminals: found over the places given, then a few times again with junctions added where
 * its trenches meet at a sharp angle.
 */
public final class SharedTrench {

    /** Each round moves junctions about half the rest of the way; what a fifth could gain is under a hand's breadth. */
    private static final int ROUNDS = 4;

    /** A junction nearer to a place than this is that place. */
    private static final double LEAST_STEP_M = 0.05;

    private SharedTrench() {}

    /**
     * Finds the tree; {@code ways} gains places at junctions. The bound holds for the places of the last round.
     *
     * @param graphEffort edges looked at in each round
     * @param permit      where junctions may lie, and whether to go on
     */
    public static Found find(Ways ways, int[] terminals, long seed, long graphEffort, Permit permit) {
        Graph graph = ways.graphFor(terminals);
        SteinerTree tree = SteinerSearch.solve(graph, terminals, seed, new Effort(graphEffort, permit::stopped));
        for (int round = 0; round < ROUNDS && !tree.interrupted(); round++) {
            int before = ways.places();
            addJunctions(ways, graph, tree, permit);
            if (ways.places() == before) {
                break;
            }
            graph = ways.graphFor(terminals);
            tree = SteinerSearch.solve(graph, terminals, seed, new Effort(graphEffort, permit::stopped));
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

    private static void addJunctions(Ways ways, Graph graph, SteinerTree tree, Permit permit) {
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
