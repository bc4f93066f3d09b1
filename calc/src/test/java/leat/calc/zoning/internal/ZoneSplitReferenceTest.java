package leat.calc.zoning.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Scanner;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sources at each test; data in resources/checks/routing with their standing. */
@Tag("reference")
class ZoneSplitReferenceTest {

    private static final long EFFORT = 2_000_000;

    /** Source: exhaustive search, confirmed by integer programming; heads of 3.2 to 0.9 gpm on a supply of 7 gpm. */
    @Test
    void tenHeadsOnSevenGallonsNeedThreeZones() {
        assertEquals(3, fewest(7, 3.2, 3.2, 2.1, 2.1, 2.1, 1.6, 1.6, 1.6, 0.9, 0.9));
    }

    /** Source: exhaustive search, confirmed by integer programming. */
    @Test
    void elevenPiecesOfTwentyNeedFour() {
        assertEquals(4, fewest(20, 12, 9, 7, 7, 5, 5, 4, 4, 3, 3, 2));
    }

    /** Source: exhaustive search; the sum is four times the capacity. */
    @Test
    void tenPiecesThatFillTenToTheBrimNeedFour() {
        assertEquals(4, fewest(10, 6, 6, 5, 5, 4, 4, 3, 3, 2, 2));
    }

    /** Source: by hand, 6 + 2 + 2 and 5 + 3 + 2; taking the largest first into the first that fits needs three. */
    @Test
    void caseThatDefeatsFirstFitDecreasingNeedsTwo() {
        assertEquals(2, fewest(10, 6, 5, 3, 2, 2, 2));
    }

    /** Source: OR-Library binpack1, best known numbers in the file (Falkenauer 1996), published. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("binpack1")
    void openBinPackingSetIsPackedAsWellAsIsKnown(Packed packed) {
        ZonePlan plan = solve(packed.capacity, packed.sizes);
        assertEquals(packed.bestKnown, plan.zones());
        assertTrue(plan.fewestZones() <= packed.bestKnown);
    }

    /** Source: best partition that a general mixed-integer solver found in a minute (494.028 m), not proven. */
    @Test
    void fortyHeadsAreZonedAsWellAsAGeneralSolverDoesInAMinute() {
        List<double[]> rows = new ArrayList<>();
        for (String line : text("zoning40.csv").lines().skip(1).toList()) {
            rows.add(Stream.of(line.split(",")).mapToDouble(Double::parseDouble).toArray());
        }
        ZoneProblem problem = ZoneProblem.straight(
                rows.stream().mapToDouble(r -> r[2] / 1000).toArray(),
                new int[rows.size()],
                rows.stream().mapToDouble(r -> r[0]).toArray(),
                rows.stream().mapToDouble(r -> r[1]).toArray(),
                30,
                12,
                new ZoneProblem.Limits(0.8e-3, 99, 20, 0));
        ZonePlan plan = ZoneSplit.solve(problem, 1, 300_000, () -> false);
        assertEquals(8, plan.zones());
        assertEquals(8, plan.fewestZones());
        assertTrue(plan.costM() <= 494.0285, "cost " + plan.costM());
        // A plain bound is 8 zones at 20 m and the spanning tree over all places, 265.776 m.
        assertTrue(plan.boundM() >= 160 + 265.776 && plan.boundM() <= plan.costM(), "bound " + plan.boundM());
    }

    record Packed(String name, double capacity, double[] sizes, int bestKnown) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Packed> binpack1() {
        List<Packed> all = new ArrayList<>();
        try (var in = new Scanner(text("binpack1.txt"))) {
            int count = in.nextInt();
            for (int i = 0; i < count; i++) {
                String name = in.next();
                double capacity = in.nextInt();
                double[] sizes = new double[in.nextInt()];
                int bestKnown = in.nextInt();
                for (int j = 0; j < sizes.length; j++) {
                    sizes[j] = in.nextInt();
                }
                all.add(new Packed(name, capacity, sizes, bestKnown));
            }
        }
        return all.stream();
    }

    private static int fewest(double capacity, double... sizes) {
        return solve(capacity, sizes).zones();
    }

    private static ZonePlan solve(double capacity, double... sizes) {
        int places = sizes.length + 1;
        var problem = ZoneProblem.of(
                sizes,
                new int[sizes.length],
                new double[places * places],
                new double[sizes.length],
                new ZoneProblem.Limits(capacity, sizes.length, 1, 0));
        return ZoneSplit.solve(problem, 1, EFFORT, () -> false);
    }

    private static String text(String name) {
        try (InputStream in = ZoneSplitReferenceTest.class.getResourceAsStream("/checks/routing/" + name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
