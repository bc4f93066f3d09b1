package leat.calc.hydraulics.internal;

import java.util.Arrays;

/**
 * Outlets that are no plain orifice: q = k · p^x with another exponent, and pressure-compensating ones, which give their
 * flow above a least pressure and, by convention, flow · t(2 − t) below it with t the share of the least pressure.
 * Without pressure no outlet gives water.
 */
final class SpecialOutlets {

    /** Below this head a power law is taken as straight, for its tangent at zero would be upright. */
    private static final double STRAIGHT_BELOW_M = 1e-6;

    private static final int NONE = -1;

    private final int[] entryOf;
    private int count;
    private int[] node = new int[0];
    private boolean[] compensating = new boolean[0];
    /** k of the power law, or the flow of a compensating outlet. */
    private double[] size = new double[0];
    /** x of the power law, or the least head of a compensating outlet. */
    private double[] shape = new double[0];
    /** Flow and its rise at the last head, both as the law gives them. */
    private double[] flowM3PerS = new double[0];

    private double[] rise = new double[0];
    private double[] givenM3PerS = new double[0];
    private double[] atM = new double[0];
    /** How far the last tangent moved, and the share of the way that it goes next. */
    private double[] moveM = new double[0];

    private double[] share = new double[0];

    SpecialOutlets(int nodes) {
        entryOf = new int[nodes];
        Arrays.fill(entryOf, NONE);
    }

    void put(int ofNode, boolean isCompensating, double newSize, double newShape) {
        int i = entry(ofNode);
        compensating[i] = isCompensating;
        size[i] = newSize;
        shape[i] = newShape;
    }

    void remove(int ofNode) {
        if (entryOf[ofNode] != NONE) {
            size[entryOf[ofNode]] = 0;
        }
    }

    /** Takes the tangents at a part of the standing pressure. */
    void start(double sourceHeadM, double part, double[] elevationM) {
        for (int i = 0; i < count; i++) {
            share[i] = 1;
            moveM[i] = 0;
            tangent(i, part * (sourceHeadM - elevationM[node[i]]));
        }
    }

    /** Takes flows and tangents as the laws give them at these heads. */
    void restart(double[] headM, double[] elevationM) {
        for (int i = 0; i < count; i++) {
            share[i] = 1;
            moveM[i] = 0;
            tangent(i, headM[node[i]] - elevationM[node[i]]);
            givenM3PerS[i] = flowM3PerS[i];
        }
    }

    /** Adds to the demand of each node what the tangents say: demand ≈ a + g · head. */
    void addTangents(double[] elevationM, double[] a, double[] g) {
        for (int i = 0; i < count; i++) {
            a[node[i]] += flowM3PerS[i] - rise[i] * (atM[i] + elevationM[node[i]]);
            g[node[i]] += rise[i];
        }
    }

    void addFlows(double[] toM3PerS) {
        for (int i = 0; i < count; i++) {
            toM3PerS[node[i]] += flowM3PerS[i];
        }
    }

    /**
     * Takes the flows that the present tangents give at the new heads, then new tangents there. A tangent that goes back
     * and forth (between dry and full flow, where the law is flat) goes half as far each time.
     *
     * @return greatest difference between tangent and law at the new heads, as part of the outlet's k or flow
     */
    double advance(double[] headM, double[] elevationM) {
        double worst = 0;
        for (int i = 0; i < count; i++) {
            double newM = headM[node[i]] - elevationM[node[i]];
            double oldM = atM[i];
            givenM3PerS[i] = flowM3PerS[i] + rise[i] * (newM - oldM);
            tangent(i, newM);
            if (size[i] > 0) {
                worst = Math.max(worst, Math.abs(givenM3PerS[i] - flowM3PerS[i]) / size[i]);
            }
            share[i] = (newM - oldM) * moveM[i] < 0 ? share[i] / 2 : Math.min(1, 1.5 * share[i]);
            moveM[i] = newM - oldM;
            if (share[i] < 1) {
                tangent(i, oldM + share[i] * moveM[i]);
            }
        }
        return worst;
    }

    /** Flow of the outlet at a node after {@link #advance}; 0 if it has none of this kind. */
    double flowAt(int ofNode) {
        return entryOf[ofNode] == NONE ? 0 : givenM3PerS[entryOf[ofNode]];
    }

    private void tangent(int i, double pressureM) {
        atM[i] = pressureM;
        if (pressureM <= 0 || size[i] == 0) {
            flowM3PerS[i] = 0;
            rise[i] = 0;
        } else if (compensating[i]) {
            double part = Math.min(1, pressureM / shape[i]);
            flowM3PerS[i] = size[i] * part * (2 - part);
            rise[i] = 2 * size[i] * (1 - part) / shape[i];
        } else if (pressureM < STRAIGHT_BELOW_M) {
            rise[i] = size[i] * StrictMath.pow(STRAIGHT_BELOW_M, shape[i] - 1);
            flowM3PerS[i] = rise[i] * pressureM;
        } else {
            flowM3PerS[i] = size[i] * StrictMath.pow(pressureM, shape[i]);
            rise[i] = shape[i] * flowM3PerS[i] / pressureM;
        }
    }

    private int entry(int ofNode) {
        if (entryOf[ofNode] != NONE) {
            return entryOf[ofNode];
        }
        if (count == node.length) {
            int newLength = Math.max(4, 2 * count);
            node = Arrays.copyOf(node, newLength);
            compensating = Arrays.copyOf(compensating, newLength);
            size = Arrays.copyOf(size, newLength);
            shape = Arrays.copyOf(shape, newLength);
            flowM3PerS = Arrays.copyOf(flowM3PerS, newLength);
            rise = Arrays.copyOf(rise, newLength);
            givenM3PerS = Arrays.copyOf(givenM3PerS, newLength);
            atM = Arrays.copyOf(atM, newLength);
            share = Arrays.copyOf(share, newLength);
            moveM = Arrays.copyOf(moveM, newLength);
        }
        node[count] = ofNode;
        entryOf[ofNode] = count;
        return count++;
    }
}
