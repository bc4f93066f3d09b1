package leat.calc.wiring.internal;

import java.util.Arrays;

/**
 * Currents and voltage drops along a tree of cables, by the sum of the loads behind each: loads are taken at unity power
 * factor and draw their current at whatever voltage they get, so drops add up.
 * <p>
 * Node 0 is the panel; node i hangs by cable i on {@code parent[i]}, which is less than i. Arrays are parallel, one entry
 * a node; entry 0 of {@code loopOhm} is not read. Nothing is allocated.
 */
public final class CableTree {

    private CableTree() {}

    /** Writes the current in the cable that ends at each node; at the panel, the sum of all. */
    public static void currents(int[] parent, double[] loadA, double[] outCurrentA) {
        System.arraycopy(loadA, 0, outCurrentA, 0, loadA.length);
        for (int node = parent.length - 1; node > 0; node--) {
            outCurrentA[parent[node]] += outCurrentA[node];
        }
    }

    /**
     * Writes the voltage that is lost from the panel to each node.
     *
     * @param loopOhm  voltage lost in each cable for each ampere
     * @param currentA as {@link #currents} gives it
     */
    public static void drops(int[] parent, double[] loopOhm, double[] currentA, double[] outDropV) {
        Arrays.fill(outDropV, 0, Math.min(1, outDropV.length), 0);
        for (int node = 1; node < parent.length; node++) {
            outDropV[node] = outDropV[parent[node]] + currentA[node] * loopOhm[node];
        }
    }
}
