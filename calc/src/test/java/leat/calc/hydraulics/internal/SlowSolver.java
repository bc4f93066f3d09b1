package leat.calc.hydraulics.internal;

/**
 * Brute force for trees of orifices: one outlet after the other takes the flow at which its own law holds while all
 * others stay as they are, found by bisection; round after round until nothing moves.
 */
final class SlowSolver {

    private static final int ROUNDS = 20_000;

    private final RandomTree tree;
    private final double[] outflow;

    SlowSolver(RandomTree tree) {
        this.tree = tree;
        outflow = new double[tree.count];
    }

    double[] outflows() {
        for (int round = 0; round < ROUNDS; round++) {
            double moved = 0;
            for (int i = 1; i < tree.count; i++) {
                if (tree.kind[i] != RandomTree.Outlet.NONE) {
                    double before = outflow[i];
                    outflow[i] = bisect(i);
                    moved = Math.max(moved, Math.abs(outflow[i] - before));
                }
            }
            if (moved < 1e-16) {
                return outflow;
            }
        }
        throw new AssertionError("brute force did not settle");
    }

    private double bisect(int outlet) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 80; i++) {
            outflow[outlet] = (low + high) / 2;
            if (tree.outflow(outlet, pressureM(outlet)) > outflow[outlet]) {
                low = outflow[outlet];
            } else {
                high = outflow[outlet];
            }
        }
        return (low + high) / 2;
    }

    private double pressureM(int node) {
        double[] flow = outflow.clone();
        for (int i = tree.count - 1; i > 0; i--) {
            flow[tree.parent[i]] += flow[i];
        }
        double headM = tree.sourceHeadM;
        for (int i = node; i > 0; i = tree.parent[i]) {
            headM -= tree.lossM(i, flow[i]);
        }
        return headM - tree.elevationM[node];
    }
}
