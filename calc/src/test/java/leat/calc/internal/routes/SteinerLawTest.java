package leat.calc.internal.routes;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class SteinerLawTest {

    @RepeatedTest(150)
    void smallGraphsAreSolvedAsByTryingAllSetsOfNodes(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        Graph graph = randomGraph(random, 5 + random.nextInt(5));
        int[] terminals = IntStream.range(0, 2 + random.nextInt(3)).toArray();
        double optimum = byTryingAll(graph, terminals);
        SteinerTree tree = SteinerSearch.solve(graph, terminals, 7, new Effort(200_000, () -> false));
        assertEquals(optimum, tree.cost(), 1e-9 * optimum);
        assertTrue(tree.bound() <= optimum * (1 + 1e-9), tree.bound() + " above " + optimum);
        assertJoins(graph, tree.edges(), terminals);
    }

    @RepeatedTest(30)
    void moreEffortNeverGivesADearerTreeAndTheBoundStaysBelow(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        Graph graph = randomGraph(random, 60);
        int[] terminals = IntStream.range(0, 15).toArray();
        double before = Double.POSITIVE_INFINITY;
        for (long effort : new long[] {1, 1_000, 100_000, 1_000_000}) {
            SteinerTree tree = SteinerSearch.solve(graph, terminals, 7, new Effort(effort, () -> false));
            assertJoins(graph, tree.edges(), terminals);
            assertTrue(tree.cost() <= before && tree.bound() <= tree.cost());
            before = tree.cost();
        }
    }

    @Test
    void sameSeedAndEffortGiveTheSameTree() {
        StpFile file = StpFile.read("grid30.stp");
        int[] first = SteinerSearch.solve(file.graph(), file.terminals(), 3, new Effort(500_000, () -> false))
                .edges();
        int[] second = SteinerSearch.solve(file.graph(), file.terminals(), 3, new Effort(500_000, () -> false))
                .edges();
        assertArrayEquals(first, second);
    }

    @Test
    void stopGivesTheFirstTreeAndSaysSo() {
        StpFile file = StpFile.read("grid30.stp");
        SteinerTree tree =
                SteinerSearch.solve(file.graph(), file.terminals(), 3, new Effort(Long.MAX_VALUE, () -> true));
        assertTrue(tree.interrupted());
        assertJoins(file.graph(), tree.edges(), file.terminals());
    }

    @Test
    void edgesThatCostNothingAreTaken() {
        Graph graph = Graph.of(4, new int[] {0, 1, 2, 0}, new int[] {1, 2, 3, 3}, new double[] {0, 0, 0, 1});
        assertEquals(
                0,
                SteinerSearch.solve(graph, new int[] {0, 2, 3}, 1, new Effort(1000, () -> false))
                        .cost());
    }

    @Test
    void terminalsThatNothingJoinsAreRefused() {
        Graph graph = Graph.of(3, new int[] {0}, new int[] {1}, new double[] {1});
        assertThrows(
                IllegalArgumentException.class,
                () -> SteinerSearch.solve(graph, new int[] {0, 2}, 1, new Effort(1000, () -> false)));
    }

    private static Graph randomGraph(Random random, int nodes) {
        int chain = nodes - 1;
        int extra = 2 * nodes;
        int[] from = new int[chain + extra];
        int[] to = new int[chain + extra];
        double[] cost = new double[chain + extra];
        for (int e = 0; e < from.length; e++) {
            from[e] = e < chain ? e + 1 : random.nextInt(nodes);
            to[e] = e < chain ? random.nextInt(e + 1) : (from[e] + 1 + random.nextInt(nodes - 1)) % nodes;
            cost[e] = random.nextBoolean() ? 1 + random.nextInt(9) : 10 * random.nextDouble();
        }
        return Graph.of(nodes, from, to, cost);
    }

    /** The cheapest spanning tree over each set of nodes that holds the terminals; the cheapest of these is the optimum. */
    private static double byTryingAll(Graph graph, int[] terminals) {
        double best = Double.POSITIVE_INFINITY;
        for (int set = 0; set < 1 << graph.nodeCount(); set++) {
            int chosen = set;
            if (IntStream.of(terminals).allMatch(t -> (chosen >> t & 1) == 1)) {
                best = Math.min(best, spanningCost(graph, set, terminals[0]));
            }
        }
        return best;
    }

    private static double spanningCost(Graph graph, int set, int start) {
        int joined = 1 << start;
        double sum = 0;
        while (joined != set) {
            int best = -1;
            for (int e = 0; e < graph.edgeCount(); e++) {
                int ends = 1 << graph.from(e) | 1 << graph.to(e);
                boolean leaves = (set & ends) == ends && Integer.bitCount(joined & ends) == 1;
                best = leaves && (best < 0 || graph.cost(e) < graph.cost(best)) ? e : best;
            }
            if (best < 0) {
                return Double.POSITIVE_INFINITY;
            }
            joined |= 1 << graph.from(best) | 1 << graph.to(best);
            sum += graph.cost(best);
        }
        return sum;
    }

    private static void assertJoins(Graph graph, int[] edges, int[] terminals) {
        int[] group = IntStream.range(0, graph.nodeCount()).toArray();
        for (int e : edges) {
            int a = Spanning.root(group, graph.from(e));
            int b = Spanning.root(group, graph.to(e));
            assertTrue(a != b, "edge " + e + " closes a ring");
            group[b] = a;
        }
        for (int t : terminals) {
            assertEquals(Spanning.root(group, terminals[0]), Spanning.root(group, t), "terminal " + t);
        }
    }
}
