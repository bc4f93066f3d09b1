package leat.calc.wiring.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;

/** Currents and drops of random trees against the plain sums over ways to the panel. */
@Tag("law")
class CableTreeLawTest {

    @RepeatedTest(200)
    void currentsAndDropsAreSumsAlongTheWays(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        int nodes = 1 + random.nextInt(30);
        int[] parent = new int[nodes];
        double[] loadA = new double[nodes];
        double[] loopOhm = new double[nodes];
        parent[0] = -1;
        for (int node = 1; node < nodes; node++) {
            parent[node] = random.nextInt(node);
            loadA[node] = random.nextBoolean() ? random.nextDouble(0, 12) : 0;
            loopOhm[node] = random.nextDouble(0.01, 1);
        }
        double[] currentA = new double[nodes];
        double[] dropV = new double[nodes];
        CableTree.currents(parent, loadA, currentA);
        CableTree.drops(parent, loopOhm, currentA, dropV);
        for (int node = 0; node < nodes; node++) {
            double expectedV = 0;
            for (int load = 0; load < nodes; load++) {
                expectedV += loadA[load] * commonOhm(parent, loopOhm, node, load);
            }
            assertEquals(expectedV, dropV[node], 1e-9 * (1 + expectedV));
            if (node > 0) {
                assertTrue(dropV[node] >= dropV[parent[node]]);
            }
        }
    }

    /** A load drops voltage at a node by what their ways from the panel have in common. */
    private static double commonOhm(int[] parent, double[] loopOhm, int node, int load) {
        double ohm = 0;
        for (int a = node; a > 0; a = parent[a]) {
            for (int b = load; b > 0; b = parent[b]) {
                ohm += a == b ? loopOhm[a] : 0;
            }
        }
        return ohm;
    }
}
