package leat.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;
import leat.calc.internal.routes.Effort;
import leat.calc.internal.routes.Graph;
import leat.calc.internal.routes.SteinerSearch;
import leat.calc.internal.routes.SteinerTree;
import tools.jackson.databind.JsonNode;

/** The cheapest tree of trenches over some places of a grid. The rival is a rule of thumb: it may cost a tenth more. */
final class TrenchBench implements Bench {

    private static final long EFFORT = 2_000_000;

    @Override
    public String name() {
        return "trench";
    }

    @Override
    public String defaultInstance() {
        return "t_trench_grid_900.json";
    }

    @Override
    public Contest contest(JsonNode json) {
        int[] from = TreeInstance.ints(json.get("from"));
        int[] to = TreeInstance.ints(json.get("to"));
        double[] cost = TreeInstance.doubles(json.get("cost"));
        int[] terminals = TreeInstance.ints(json.get("terminals"));
        int nodes = json.get("nodes").intValue();
        return new Contest(
                new Ours(Graph.of(nodes, from, to, cost), terminals),
                List.of(new PathRival(nodes, from, to, cost, terminals)));
    }

    private static final class Ours implements Entrant {
        private final Graph graph;
        private final int[] terminals;
        private double cost;
        private double bound;

        Ours(Graph graph, int[] terminals) {
            this.graph = graph;
            this.terminals = terminals;
        }

        @Override
        public String name() {
            return "leat";
        }

        @Override
        public double solve() {
            SteinerTree tree = SteinerSearch.solve(graph, terminals, 1, new Effort(EFFORT, () -> false));
            cost = tree.cost();
            bound = tree.bound();
            return cost;
        }

        @Override
        public Answer answer() {
            return new Answer()
                    .figure("cost", cost, 0.1, 0)
                    .require("no more than 3 % above the bound " + bound, cost <= 1.03 * bound);
        }
    }

    /** Each place in turn is joined to the tree by the shortest way to the nearest that is not joined yet. */
    private static final class PathRival implements Entrant {

        private record Edge(int to, double cost) {}

        private record Reached(int node, double distance) {}

        private final List<List<Edge>> edges = new ArrayList<>();
        private final int[] terminals;
        private double cost;

        PathRival(int nodes, int[] from, int[] to, double[] cost, int[] terminals) {
            this.terminals = terminals;
            for (int i = 0; i < nodes; i++) {
                edges.add(new ArrayList<>());
            }
            for (int e = 0; e < from.length; e++) {
                edges.get(from[e]).add(new Edge(to[e], cost[e]));
                edges.get(to[e]).add(new Edge(from[e], cost[e]));
            }
        }

        /** The cost is part of the name, for it is not ours. */
        @Override
        public String name() {
            return "nearest-place-next, cost " + cost;
        }

        @Override
        public double solve() {
            Set<Integer> open = new TreeSet<>();
            Arrays.stream(terminals).forEach(open::add);
            boolean[] inTree = new boolean[edges.size()];
            inTree[terminals[0]] = true;
            open.remove(terminals[0]);
            cost = 0;
            while (!open.isEmpty()) {
                join(open, inTree);
            }
            return cost;
        }

        private void join(Set<Integer> open, boolean[] inTree) {
            double[] distance = new double[edges.size()];
            int[] before = new int[edges.size()];
            Arrays.fill(distance, Double.POSITIVE_INFINITY);
            var queue = new PriorityQueue<Reached>(Comparator.comparingDouble(Reached::distance));
            for (int node = 0; node < inTree.length; node++) {
                if (inTree[node]) {
                    distance[node] = 0;
                    queue.add(new Reached(node, 0));
                }
            }
            while (true) {
                Reached next = queue.remove();
                if (open.remove(next.node)) {
                    cost += next.distance;
                    for (int node = next.node; !inTree[node]; node = before[node]) {
                        inTree[node] = true;
                    }
                    return;
                }
                for (Edge edge : edges.get(next.node)) {
                    double there = next.distance + edge.cost;
                    if (next.distance == distance[next.node] && there < distance[edge.to]) {
                        distance[edge.to] = there;
                        before[edge.to] = next.node;
                        queue.add(new Reached(edge.to, there));
                    }
                }
            }
        }

        @Override
        public Answer answer() {
            return new Answer().figure("cost", cost, 0.1, 0);
        }
    }
}
