package leat.calc.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import leat.calc.wiring.internal.LampTree;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;

/** Laws of lamps on a tree of cables, over random trees. */
@Tag("law")
class LampLawTest {

    private static final double TAP_V = 12;

    private record Tree(int[] parent, double[] loopOhm, double[] loadW) {

        static Tree random(long seed) {
            var random = new Random(seed);
            int count = random.nextInt(2, 14);
            int[] parent = new int[count];
            double[] loopOhm = new double[count];
            double[] loadW = new double[count];
            for (int i = 1; i < count; i++) {
                parent[i] = random.nextInt(i);
                loopOhm[i] = random.nextDouble(0.001, 0.2);
                loadW[i] = random.nextInt(4) == 0 ? 0 : random.nextDouble(1, 20);
            }
            return new Tree(parent, loopOhm, loadW);
        }

        /** Voltages at all nodes; the currents are written to the array. */
        double[] volts(double[] outLoadA, double[] outCurrentA) {
            double[] dropV = new double[parent.length];
            LampTree.settle(parent, loopOhm, loadW, TAP_V, outLoadA, outCurrentA, dropV);
            return Arrays.stream(dropV).map(drop -> TAP_V - drop).toArray();
        }

        double[] volts() {
            return volts(new double[parent.length], new double[parent.length]);
        }
    }

    @RepeatedTest(200)
    void voltageFallsAlongTheRun(RepetitionInfo turn) {
        Tree tree = Tree.random(turn.getCurrentRepetition());
        double[] volts = tree.volts();
        for (int i = 1; i < volts.length; i++) {
            assertTrue(volts[i] <= volts[tree.parent[i]]);
        }
    }

    @RepeatedTest(200)
    void oneMoreLampNeverRaisesAVoltage(RepetitionInfo turn) {
        Tree tree = Tree.random(turn.getCurrentRepetition());
        double[] before = tree.volts();
        tree.loadW[1 + turn.getCurrentRepetition() % (before.length - 1)] += 5;
        double[] after = tree.volts();
        for (int i = 0; i < before.length; i++) {
            assertTrue(after[i] <= before[i] + 1e-9);
        }
    }

    @RepeatedTest(200)
    void aThickerCableNeverLowersAVoltage(RepetitionInfo turn) {
        Tree tree = Tree.random(turn.getCurrentRepetition());
        double[] before = tree.volts();
        tree.loopOhm[1 + turn.getCurrentRepetition() % (before.length - 1)] /= 2;
        double[] after = tree.volts();
        for (int i = 0; i < before.length; i++) {
            assertTrue(after[i] >= before[i] - 1e-9);
        }
    }

    /** What the tap gives is what the lamps draw and the cables turn into heat, as long as no lamp is dark. */
    @RepeatedTest(200)
    void powerIsKept(RepetitionInfo turn) {
        Tree tree = Tree.random(turn.getCurrentRepetition());
        double[] loadA = new double[tree.parent.length];
        double[] currentA = new double[tree.parent.length];
        double[] volts = tree.volts(loadA, currentA);
        if (Arrays.stream(volts).min().orElseThrow() < 0.55 * TAP_V) {
            return;
        }
        double usedW = 0;
        for (int i = 1; i < volts.length; i++) {
            usedW += tree.loadW[i] + currentA[i] * currentA[i] * tree.loopOhm[i];
            assertEquals(tree.loadW[i], loadA[i] * volts[i], 1e-6);
        }
        assertEquals(TAP_V * currentA[0], usedW, 1e-6);
    }
}
