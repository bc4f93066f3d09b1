package leat.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import leat.calc.internal.pipes.PipeLaw;
import leat.calc.sizing.internal.SizeChoice;
import tools.jackson.databind.JsonNode;

/** The cheapest size of each pipe of a tree so that each outlet has its pressure and no pipe grows downstream. */
final class SizingBench implements Bench {

    @Override
    public String name() {
        return "sizing";
    }

    @Override
    public String defaultInstance() {
        return "g_diameters_100x5.json";
    }

    /** Arrays as {@link SizeChoice} wants them. */
    private record Instance(
            int[] parent, double[][] lossM, double[][] price, double[] neededM, double sourceHeadM, int sizes) {

        static Instance read(JsonNode json) {
            int[] parent = TreeInstance.ints(json.get("parent"));
            double[] lengthM = TreeInstance.doubles(json.get("length"));
            double[] flow = TreeInstance.doubles(json.get("pipe_flow"));
            double[] boreM = TreeInstance.doubles(json.get("sizes"));
            double[] pricePerM = TreeInstance.doubles(json.get("price"));
            double[][] lossM = new double[parent.length][boreM.length];
            double[][] price = new double[parent.length][boreM.length];
            double[] neededM = new double[parent.length];
            for (int i = 0; i < parent.length; i++) {
                boolean outlet = json.get("demand").get(i).doubleValue() > 0;
                double wantedM = json.get("elevation").get(i).doubleValue()
                        + json.get("p_min").doubleValue();
                neededM[i] = outlet ? wantedM : Double.NEGATIVE_INFINITY;
                for (int s = 0; s < boreM.length; s++) {
                    double r = PipeLaw.frictionCoefficient(
                            lengthM[i], boreM[s], json.get("C").doubleValue());
                    lossM[i][s] = PipeLaw.lossM(r, 0, flow[i]);
                    price[i][s] = lengthM[i] * pricePerM[s];
                }
            }
            return new Instance(parent, lossM, price, neededM, json.get("H0").doubleValue(), boreM.length);
        }
    }

    @Override
    public Contest contest(JsonNode json) {
        Instance instance = Instance.read(json);
        return new Contest(new Ours(instance), List.of(new ListRival(instance)));
    }

    private static Answer answer(double price) {
        return new Answer().figure("price", price, 1e-9, 0);
    }

    private static final class Ours implements Entrant {
        private final Instance instance;
        private final int[] free;
        private double price;

        Ours(Instance instance) {
            this.instance = instance;
            free = new int[instance.parent.length];
            Arrays.fill(free, -1);
        }

        @Override
        public String name() {
            return "leat";
        }

        @Override
        public double solve() {
            price = SizeChoice.cheapest(
                            instance.parent,
                            instance.lossM,
                            instance.price,
                            instance.neededM,
                            free,
                            instance.sourceHeadM)
                    .orElseThrow()
                    .price();
            return price;
        }

        @Override
        public Answer answer() {
            return SizingBench.answer(price);
        }
    }

    /** The same recursion as one writes it first: lists of ways, sorted and thinned out; finds the price, not the sizes. */
    private static final class ListRival implements Entrant {

        private record Way(double headM, double price) {}

        private final Instance instance;
        private final List<List<Integer>> children = new ArrayList<>();

        /** Ways below each node for each size of its pipe. */
        private final List<List<Way>> kept = new ArrayList<>();

        private double price;

        ListRival(Instance instance) {
            this.instance = instance;
            for (int i = 0; i < instance.parent.length; i++) {
                children.add(new ArrayList<>());
                kept.addAll(Collections.nCopies(instance.sizes, List.of()));
                if (i > 0) {
                    children.get(instance.parent[i]).add(i);
                }
            }
        }

        @Override
        public String name() {
            return "lists-of-ways";
        }

        @Override
        public double solve() {
            for (int node = instance.parent.length - 1; node > 0; node--) {
                for (int s = 0; s < instance.sizes; s++) {
                    kept.set(node * instance.sizes + s, below(node, s));
                }
            }
            price = below(0, instance.sizes - 1).stream()
                    .filter(way -> way.headM <= instance.sourceHeadM)
                    .mapToDouble(Way::price)
                    .min()
                    .orElseThrow();
            return price;
        }

        /** Ways below a node whose own pipe has a size. */
        private List<Way> below(int node, int size) {
            List<Way> ways = List.of(new Way(instance.neededM[node], 0));
            for (int child : children.get(node)) {
                List<Way> joined = new ArrayList<>();
                List<Way> childWays = behind(child, size);
                for (Way a : ways) {
                    for (Way b : childWays) {
                        joined.add(new Way(Math.max(a.headM, b.headM), a.price + b.price));
                    }
                }
                ways = thinned(joined);
            }
            return ways;
        }

        private List<Way> behind(int pipe, int mostSize) {
            List<Way> ways = new ArrayList<>();
            for (int s = 0; s <= mostSize; s++) {
                for (Way way : kept.get(pipe * instance.sizes + s)) {
                    ways.add(new Way(way.headM + instance.lossM[pipe][s], way.price + instance.price[pipe][s]));
                }
            }
            return thinned(ways);
        }

        private static List<Way> thinned(List<Way> ways) {
            ways.sort(Comparator.comparingDouble(Way::headM).thenComparingDouble(Way::price));
            List<Way> thin = new ArrayList<>();
            for (Way way : ways) {
                if (thin.isEmpty() || way.price < thin.get(thin.size() - 1).price) {
                    thin.add(way);
                }
            }
            return thin;
        }

        @Override
        public Answer answer() {
            return SizingBench.answer(price);
        }
    }
}
