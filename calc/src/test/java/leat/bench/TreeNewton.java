package leat.bench;

import java.util.Arrays;

/**
 * The Newton step on flows and heads that the rivals with a linear-algebra library share (Todini and Pilati 1988): one
 * symmetric positive definite system in the heads of nodes 1 to n - 1; row i - 1 belongs to node i.
 */
abstract class TreeNewton implements Entrant {

    private static final double N = 1.852;
    /** Bounds a slope from below, or a link without flow would divide by zero. */
    private static final double LEAST_SLOPE = 1e-3;

    final TreeInstance instance;
    final double[] diagonal;
    final double[] link;
    final double[] right;
    final double[] headM;
    private final double[] flow;
    private final double[] outlet;
    private final double[] fixed;
    private final double[] outletInverse;
    private final double[] outletFixed;

    TreeNewton(TreeInstance instance) {
        this.instance = instance;
        int n = instance.nodeCount();
        diagonal = new double[n];
        link = new double[n];
        right = new double[n];
        headM = new double[n];
        flow = new double[n];
        outlet = new double[n];
        fixed = new double[n];
        outletInverse = new double[n];
        outletFixed = new double[n];
    }

    /** Solves the system: diagonal[i] · H_i − Σ link · H_neighbour = right[i]; writes headM[1 …]. */
    abstract void solveSystem();

    @Override
    public final double solve() {
        headM[0] = instance.sourceHeadM();
        for (int i = 1; i < instance.nodeCount(); i++) {
            flow[i] = 1e-3;
            outlet[i] = instance.k()[i] * Math.sqrt(20);
        }
        double residualM = 1;
        for (int step = 0; step < 60 && residualM > 1e-6; step++) {
            linearise();
            solveSystem();
            residualM = update();
        }
        return headM[headM.length - 1] + flow[1];
    }

    private void linearise() {
        double[] k = instance.k();
        Arrays.fill(diagonal, 0);
        Arrays.fill(right, 0);
        for (int i = 1; i < diagonal.length; i++) {
            int parent = instance.parent()[i];
            double resistance = instance.friction()[i] * Math.pow(Math.abs(flow[i]), N - 1);
            link[i] = 1 / Math.max(N * resistance, LEAST_SLOPE);
            fixed[i] = flow[i] - resistance * flow[i] * link[i];
            diagonal[i] += link[i];
            diagonal[parent] += link[i];
            right[i] += fixed[i] + (parent == 0 ? link[i] * headM[0] : 0);
            right[parent] -= fixed[i];
            if (k[i] > 0) {
                double inverse = 1 / (k[i] * k[i]);
                outletInverse[i] = 1 / Math.max(2 * outlet[i] * inverse, LEAST_SLOPE);
                outletFixed[i] = outlet[i] - outlet[i] * outlet[i] * inverse * outletInverse[i];
                diagonal[i] += outletInverse[i];
                right[i] += outletInverse[i] * instance.elevationM()[i] - outletFixed[i];
            }
        }
    }

    private double update() {
        double[] k = instance.k();
        double residualM = 0;
        for (int i = 1; i < diagonal.length; i++) {
            double fallM = headM[instance.parent()[i]] - headM[i];
            flow[i] = fixed[i] + link[i] * fallM;
            double lossM = instance.friction()[i] * Math.pow(Math.abs(flow[i]), N - 1) * flow[i];
            residualM = Math.max(residualM, Math.abs(fallM - lossM));
            if (k[i] > 0) {
                double pressureM = headM[i] - instance.elevationM()[i];
                outlet[i] = Math.max(outletFixed[i] + outletInverse[i] * pressureM, 1e-12);
                double needM = outlet[i] * outlet[i] / (k[i] * k[i]);
                residualM = Math.max(residualM, Math.abs(pressureM - needM));
            }
        }
        return residualM;
    }

    @Override
    public final Answer answer() {
        double inflow = 0;
        for (int i = 1; i < outlet.length; i++) {
            inflow += instance.k()[i] > 0 ? outlet[i] : 0;
        }
        return instance.answer(inflow, headM, flow);
    }
}
