package leat.calc.wiring.internal;

import java.util.Arrays;

/**
 * Currents and voltage drops along a tree of cables to lamps that draw the same power at whatever voltage they get, as
 * those with a ballast or a driver do: the less voltage, the more current. Solved by sweeps up and down the tree until
 * nothing changes; drops only grow from sweep to sweep, so they settle. A lamp that gets less than half the voltage of the
 * tap is dark and counts as if it got half: beyond that no current would carry its power (most of it comes through at
 * half the voltage).
 */
public final class LampTree {

    private static final int MOST_SWEEPS = 500;

    /** Of the voltage of the tap; far below what anyone can measure. */
    private static final double SETTLED_SHARE = 1e-13;

    private static final double DARK_SHARE = 0.5;

    private LampTree() {}

    /**
     * Writes the current of each lamp, that in the cable to each node, and the voltage lost on the way there. Arrays as
     * for {@link CableTree}; a drop is not a number from the first cable on whose resistance is not known, and a lamp
     * behind it draws as if it got the voltage of the tap.
     *
     * @param loadW power of the lamp at each node, 0 where there is none
     * @param tapV  voltage at node 0; more than 0
     */
    public static void settle(
            int[] parent,
            double[] loopOhm,
            double[] loadW,
            double tapV,
            double[] outLoadA,
            double[] outCurrentA,
            double[] outDropV) {
        Arrays.fill(outDropV, 0);
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            boolean settled = sweep > 0;
            for (int node = 0; node < parent.length; node++) {
                double loadA = loadW[node] / lampV(tapV, outDropV[node]);
                settled &= Math.abs(loadA - outLoadA[node]) <= SETTLED_SHARE * loadA;
                outLoadA[node] = loadA;
            }
            CableTree.currents(parent, outLoadA, outCurrentA);
            CableTree.drops(parent, loopOhm, outCurrentA, outDropV);
            if (settled) {
                return;
            }
        }
    }

    private static double lampV(double tapV, double dropV) {
        return Double.isNaN(dropV) ? tapV : Math.max(tapV - dropV, DARK_SHARE * tapV);
    }
}
