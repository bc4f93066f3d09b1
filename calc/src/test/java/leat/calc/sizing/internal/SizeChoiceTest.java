package leat.calc.sizing.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import leat.calc.internal.pipes.PipeLaw;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SizeChoiceTest {

    /**
     * Source: instance of our own; its optimum of 600.0215 was proven by three integer-programming solvers of general
     * use (HiGHS, CBC, CP-SAT).
     */
    @Tag("reference")
    @Test
    void findsTheProvenOptimumOfAHundredPipesInFiveSizes() throws Exception {
        JsonNode json;
        try (InputStream in = getClass().getResourceAsStream("/bench/g_diameters_100x5.json")) {
            json = JsonMapper.builder().build().readTree(in);
        }
        int count = json.get("parent").size();
        int[] parent = new int[count];
        double[][] lossM = new double[count][];
        double[][] price = new double[count][];
        double[] neededM = new double[count];
        int sizes = json.get("sizes").size();
        for (int i = 0; i < count; i++) {
            parent[i] = json.get("parent").get(i).intValue();
            double needed = json.get("elevation").get(i).doubleValue()
                    + json.get("p_min").doubleValue();
            neededM[i] = json.get("demand").get(i).doubleValue() > 0 ? needed : Double.NEGATIVE_INFINITY;
            lossM[i] = new double[sizes];
            price[i] = new double[sizes];
            double lengthM = json.get("length").get(i).doubleValue();
            for (int s = 0; s < sizes; s++) {
                double r = PipeLaw.frictionCoefficient(
                        lengthM,
                        json.get("sizes").get(s).doubleValue(),
                        json.get("C").doubleValue());
                lossM[i][s] = PipeLaw.lossM(r, 0, json.get("pipe_flow").get(i).doubleValue());
                price[i][s] = lengthM * json.get("price").get(s).doubleValue();
            }
        }
        int[] free = new int[count];
        Arrays.fill(free, -1);
        SizeChoice.Sizes found = SizeChoice.cheapest(
                        parent, lossM, price, neededM, free, json.get("H0").doubleValue())
                .orElseThrow();
        assertEquals(600.0215, found.price(), 0.00005);
        assertKept(
                new Problem(parent, lossM, price, neededM, free, json.get("H0").doubleValue()), found);
    }

    private record Problem(
            int[] parent, double[][] lossM, double[][] price, double[] neededM, int[] given, double sourceM) {

        static Problem random(long seed) {
            var random = new Random(seed);
            int count = 2 + random.nextInt(6);
            int sizes = 1 + random.nextInt(3);
            int[] parent = new int[count];
            double[][] lossM = new double[count][sizes];
            double[][] price = new double[count][sizes];
            double[] neededM = new double[count];
            int[] given = new int[count];
            neededM[0] = Double.NEGATIVE_INFINITY;
            given[0] = -1;
            for (int i = 1; i < count; i++) {
                parent[i] = random.nextInt(i);
                double length = random.nextDouble(1, 9);
                neededM[i] = random.nextBoolean() ? random.nextDouble(0, 10) : Double.NEGATIVE_INFINITY;
                given[i] = random.nextInt(6) == 0 ? random.nextInt(sizes) : -1;
                for (int s = 0; s < sizes; s++) {
                    lossM[i][s] = length / Math.pow(3, s);
                    price[i][s] = length * (s + 1) * random.nextDouble(0.9, 1.1);
                }
                if (random.nextInt(6) == 0 && given[i] < 0) {
                    price[i][0] = Double.POSITIVE_INFINITY;
                }
            }
            return new Problem(parent, lossM, price, neededM, given, random.nextDouble(5, 25));
        }

        Optional<SizeChoice.Sizes> solve() {
            return SizeChoice.cheapest(parent, lossM, price, neededM, given, sourceM);
        }

        /** Price of a choice, or infinity if it breaks a rule. */
        double price(int[] size) {
            double[] headM = new double[size.length];
            headM[0] = sourceM;
            double sum = 0;
            for (int i = 1; i < size.length; i++) {
                headM[i] = headM[parent[i]] - lossM[i][size[i]];
                boolean grows = parent[i] > 0 && size[i] > size[parent[i]] && given[i] < 0;
                boolean changed = given[i] >= 0 && given[i] != size[i];
                if (grows || changed || headM[i] < neededM[i] - 1e-9) {
                    return Double.POSITIVE_INFINITY;
                }
                sum += price[i][size[i]];
            }
            return sum;
        }

        double cheapestOfAll() {
            int sizes = lossM[1].length;
            int[] size = new int[parent.length];
            double best = Double.POSITIVE_INFINITY;
            while (true) {
                best = Math.min(best, price(size));
                int i = 1;
                while (i < size.length && ++size[i] == sizes) {
                    size[i++] = 0;
                }
                if (i == size.length) {
                    return best;
                }
            }
        }
    }

    private static void assertKept(Problem problem, SizeChoice.Sizes found) {
        assertEquals(problem.price(found.size()), found.price(), 1e-9 * found.price());
    }

    @Tag("law")
    @RepeatedTest(500)
    void noOtherChoiceIsCheaper(RepetitionInfo turn) {
        Problem problem = Problem.random(turn.getCurrentRepetition());
        double best = problem.cheapestOfAll();
        Optional<SizeChoice.Sizes> found = problem.solve();
        assertEquals(best < Double.POSITIVE_INFINITY, found.isPresent());
        found.ifPresent(sizes -> {
            assertEquals(best, sizes.price(), 1e-9 * best);
            assertKept(problem, sizes);
        });
    }

    @Tag("law")
    @RepeatedTest(200)
    void moreHeadAtTheSourceNeverCostsMore(RepetitionInfo turn) {
        Problem problem = Problem.random(turn.getCurrentRepetition());
        Problem higher = new Problem(
                problem.parent, problem.lossM, problem.price, problem.neededM, problem.given, problem.sourceM + 3);
        problem.solve().ifPresent(low -> assertTrue(higher.solve().orElseThrow().price() <= low.price() + 1e-9));
    }
}
