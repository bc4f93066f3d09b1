package leat.calc.internal.routes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sources: SteinLib set B, optima published (see resources/checks/routing/README.md); textbook graphs and small cases as
 * said at each test.
 */
@Tag("reference")
class SteinerReferenceTest {

    private static final long EFFORT = 2_000_000;

    private static SteinerTree solve(Graph graph, int... terminals) {
        return SteinerSearch.solve(graph, terminals, 1, new Effort(EFFORT, () -> false));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "b01, 82", "b02, 83", "b03, 138", "b04, 59", "b05, 61", "b06, 122", "b07, 111", "b08, 104", "b09, 220",
        "b10, 86", "b11, 88", "b12, 174", "b13, 165", "b14, 235", "b15, 318", "b16, 127", "b17, 131", "b18, 218"
    })
    void setBIsSolvedToTheOptimumAndProven(String name, double optimum) {
        StpFile file = StpFile.read(name + ".stp");
        SteinerTree tree = solve(file.graph(), file.terminals());
        assertEquals(optimum, tree.cost());
        assertEquals(optimum, tree.bound(), 1e-9 * optimum);
    }

    /** Optimum proven with a general mixed-integer solver; the instance was made for this project. */
    @Test
    void trenchGridIsSolvedToTheOptimum() {
        StpFile file = StpFile.read("grid30.stp");
        SteinerTree tree = solve(file.graph(), file.terminals());
        assertEquals(1638, tree.cost());
        assertTrue(tree.bound() <= 1638 && tree.bound() >= 0.97 * 1638, "bound " + tree.bound());
    }

    /** Source: a widely reproduced seven-node illustration of Kruskal's method (1956); answer 39 from memory. */
    @Test
    void allNodesAsTerminalsGiveTheSpanningTreeOfTheTextbook() {
        int[] from = {0, 0, 1, 1, 1, 2, 3, 3, 4, 4, 5};
        int[] to = {1, 3, 2, 3, 4, 4, 4, 5, 5, 6, 6};
        double[] cost = {7, 5, 8, 9, 7, 5, 15, 6, 8, 9, 11};
        assertEquals(39, solve(Graph.of(7, from, to, cost), 0, 1, 2, 3, 4, 5, 6).cost());
    }

    /** Source: a widely reproduced six-node illustration of Dijkstra's method (1959); answer 20 from memory. */
    @Test
    void twoTerminalsGiveTheShortestPathOfTheTextbook() {
        int[] from = {0, 0, 0, 1, 1, 2, 2, 3, 4};
        int[] to = {1, 2, 5, 2, 3, 3, 5, 4, 5};
        double[] cost = {7, 9, 14, 10, 15, 11, 2, 6, 9};
        SteinerTree tree = solve(Graph.of(6, from, to, cost), 0, 4);
        assertEquals(20, tree.cost());
        assertEquals(20, tree.bound(), 1e-9);
    }

    /** Source: brute force over all trees. */
    @Test
    void fourPointsAreSpannedByFifteenMetres() {
        assertEquals(
                15,
                solve(straight(new double[] {0, 3, 6, 6}, new double[] {0, 4, 0, 8}), 0, 1, 2, 3)
                        .cost(),
                1e-9);
    }

    /** Source: brute force on the grid of Hanan (1966): four points make a plus sign. */
    @Test
    void fourPointsOfAPlusSignNeedEight() {
        assertEquals(8, squareTree(new int[] {0, 2, 4, 2}, new int[] {2, 0, 2, 4}));
    }

    /** Source: enumeration on the grid of Hanan (1966), confirmed by integer programming. */
    @Test
    void fiveValveBoxesNeedTwentyTwo() {
        assertEquals(22, squareTree(new int[] {0, 10, 10, 3, 5}, new int[] {0, 0, 6, 6, 3}));
    }

    /** Source: 1 + sqrt 3 for the unit square; Courant and Robbins, What is Mathematics?, 1941, from memory. */
    @Test
    void squareIsJoinedWithTwoJunctions() {
        double[] xM = {0, 100, 100, 0};
        double[] yM = {0, 0, 100, 100};
        // Junctions within a centimetre of an old place are that place.
        assertEquals(100 * (1 + Math.sqrt(3)), shared(xM, yM), 0.01);
    }

    /** Source: sqrt 3 for side 1 (Fermat's point); Courant and Robbins 1941, from memory. */
    @Test
    void triangleIsJoinedWithOneJunction() {
        assertEquals(
                100 * Math.sqrt(3), shared(new double[] {0, 100, 50}, new double[] {0, 0, 50 * Math.sqrt(3)}), 1e-6);
    }

    private static double shared(double[] xM, double[] yM) {
        var ways = new Ways(new Tolls());
        int[] terminals =
                IntStream.range(0, xM.length).map(i -> ways.add(xM[i], yM[i])).toArray();
        return SharedTrench.find(ways, terminals, 1, EFFORT, Permits.ANYWHERE)
                .tree()
                .cost();
    }

    static Graph straight(double[] x, double[] y) {
        List<int[]> pairs = new ArrayList<>();
        for (int a = 0; a < x.length; a++) {
            for (int b = a + 1; b < x.length; b++) {
                pairs.add(new int[] {a, b});
            }
        }
        DoubleStream lengths = pairs.stream().mapToDouble(p -> Math.hypot(x[p[0]] - x[p[1]], y[p[0]] - y[p[1]]));
        return Graph.of(
                x.length,
                pairs.stream().mapToInt(p -> p[0]).toArray(),
                pairs.stream().mapToInt(p -> p[1]).toArray(),
                lengths.toArray());
    }

    /** The cheapest tree along the lines through the points, east-west and north-south. */
    private static double squareTree(int[] x, int[] y) {
        List<Integer> columns =
                new ArrayList<>(new TreeSet<>(IntStream.of(x).boxed().toList()));
        List<Integer> rows =
                new ArrayList<>(new TreeSet<>(IntStream.of(y).boxed().toList()));
        List<int[]> edges = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            for (int c = 0; c < columns.size(); c++) {
                int at = r * columns.size() + c;
                if (c + 1 < columns.size()) {
                    edges.add(new int[] {at, at + 1, columns.get(c + 1) - columns.get(c)});
                }
                if (r + 1 < rows.size()) {
                    edges.add(new int[] {at, at + columns.size(), rows.get(r + 1) - rows.get(r)});
                }
            }
        }
        Graph graph = Graph.of(
                rows.size() * columns.size(),
                edges.stream().mapToInt(e -> e[0]).toArray(),
                edges.stream().mapToInt(e -> e[1]).toArray(),
                edges.stream().mapToDouble(e -> e[2]).toArray());
        int[] terminals = IntStream.range(0, x.length)
                .map(i -> rows.indexOf(y[i]) * columns.size() + columns.indexOf(x[i]))
                .toArray();
        return solve(graph, terminals).cost();
    }
}
