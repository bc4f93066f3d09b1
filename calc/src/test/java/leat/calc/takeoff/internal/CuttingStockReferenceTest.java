package leat.calc.takeoff.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sources beside the cases. */
@Tag("reference")
class CuttingStockReferenceTest {

    private static final int STEPS = 200_000;

    /** Source: enumeration of small cases, confirmed a second time by integer programming (records op-cut, op-ffd). */
    @Test
    void smallCasesTakeAsFewSticksAsEnumerationFinds() {
        assertEquals(4, sticks(20, 12, 9, 7, 7, 5, 5, 4, 4, 3, 3, 2));
        assertEquals(4, sticks(10, 6, 6, 5, 5, 4, 4, 3, 3, 2, 2));
        assertEquals(2, sticks(10, 6, 5, 3, 2, 2, 2));
        assertEquals(3, sticks(7, 3.2, 3.2, 2.1, 2.1, 2.1, 1.6, 1.6, 1.6, 0.9, 0.9));
    }

    /** Source: worked by hand: 6 + 3, 5 + 2 + 2, 2 (record op-ffd-gap-heuristic). */
    @Test
    void firstFitDecreasingAloneWouldTakeOneMore() {
        int[] stickOf = CuttingStock.firstFit(new double[] {6, 5, 3, 2, 2, 2}, 10);
        assertEquals(3, CuttingStock.sticks(stickOf));
    }

    private static int sticks(double stock, double... pieces) {
        CuttingStock.Cut cut = CuttingStock.cut(pieces, stock, STEPS);
        assertTrue(cut.boundCount() <= cut.stickCount());
        return cut.stickCount();
    }

    record Instance(String name, double capacity, int fewest, double[] items) {

        @Override
        public String toString() {
            return name;
        }
    }

    /** Source: Falkenauer 1996, OR-Library file binpack1, fewest bins known; see the README beside the file. */
    @ParameterizedTest
    @MethodSource("instances")
    void publishedInstancesTakeAsFewBinsAsIsKnown(Instance instance) {
        CuttingStock.Cut cut = CuttingStock.cut(instance.items(), instance.capacity(), STEPS);
        assertTrue(cut.boundCount() <= instance.fewest(), "a bound above a known packing is wrong");
        assertEquals(instance.fewest(), cut.stickCount());
    }

    static Stream<Instance> instances() throws IOException {
        try (InputStream stream = CuttingStockReferenceTest.class.getResourceAsStream("/checks/routing/binpack1.txt");
                Scanner in = new Scanner(stream, StandardCharsets.UTF_8)) {
            List<Instance> instances = new ArrayList<>();
            int count = in.nextInt();
            for (int i = 0; i < count; i++) {
                String name = in.next();
                double capacity = in.nextInt();
                double[] items = new double[in.nextInt()];
                int fewest = in.nextInt();
                for (int j = 0; j < items.length; j++) {
                    items[j] = in.nextInt();
                }
                instances.add(new Instance(name, capacity, fewest, items));
            }
            return instances.stream();
        }
    }
}
