package leat.calc.hydraulics.internal;

import leat.calc.internal.pipes.FlowPower;

/**
 * Brings a tree near its solution where plain Newton steps go back and forth: outlets that fall dry, devices that hold
 * the water back.
 * <p>
 * Heads alone are the unknowns here. The flows that follow from them are the slope of a concave function of the heads,
 * so a Newton step shortened until that slope along it has fallen by half always leads uphill and arrives. It is slower
 * than the plain step, for each law has to be inverted.
 */
final class HeadSearch {

    private static final int MOST_STEPS = 100;
    private static final int MOST_CUTS = 40;
    private static final int MOST_HALVINGS = 200;
    /** In m per m³/s, added to each link during the search: one that stands still shall not pass any flow for nothing. */
    private static final double RESISTANCE = 1e-2;

    private final TreeSolver tree;
    private final double[] fromM;
    private final double[] wayM;
    private final double[] surplus;

    HeadSearch(TreeSolver tree) {
        this.tree = tree;
        fromM = new double[tree.count];
        wayM = new double[tree.count];
        surplus = new double[tree.count];
    }

    /** Starts from the heads in the tree and leaves flows, heads and tangents there, near the solution. */
    void approach(double toleranceM) {
        for (int i = 0; i < MOST_STEPS; i++) {
            System.arraycopy(tree.headM, 0, fromM, 0, fromM.length);
            stateAt(0);
            tree.solveTangents();
            double furthestM = 0;
            for (int node = 1; node < fromM.length; node++) {
                wayM[node] = tree.headM[node] - fromM[node];
                furthestM = Math.max(furthestM, Math.abs(wayM[node]));
            }
            double share = share();
            if (furthestM * share < toleranceM) {
                return;
            }
        }
    }

    /** Share of the way at which to stop; the tree's state is there then. */
    private double share() {
        double first = Math.abs(stateAt(0));
        double low = 0;
        double high = 1;
        double share = 1;
        for (int i = 0; i < MOST_CUTS; i++) {
            double slope = stateAt(share);
            if (Math.abs(slope) <= 0.5 * first || slope > 0 && share == 1) {
                return share;
            }
            if (slope > 0) {
                low = share;
            } else {
                high = share;
            }
            share = (low + high) / 2;
        }
        return share;
    }

    /** Sets heads, flows and tangents at a share of the way. Returns the slope of the concave function along the way. */
    private double stateAt(double share) {
        for (int i = 1; i < fromM.length; i++) {
            tree.headM[i] = fromM[i] + share * wayM[i];
            surplus[i] = 0;
        }
        for (int i = fromM.length - 1; i > 0; i--) {
            double lossM = tree.headM[tree.parent[i]] - tree.headM[i];
            double q = Math.signum(lossM) * flowAt(i, Math.abs(lossM));
            tree.flow[i] = q;
            tree.power[i] = FlowPower.of(Math.abs(q));
            surplus[i] += q;
            surplus[tree.parent[i]] -= q;
        }
        tree.lawsFromHeads(RESISTANCE);
        double slope = 0;
        for (int i = 1; i < fromM.length; i++) {
            slope += (surplus[i] - tree.demand[i] - tree.outletAt(i)) * wayM[i];
        }
        return slope;
    }

    /** The flow at which a link loses so much, by bisection. */
    private double flowAt(int link, double lossM) {
        double low = 0;
        double high = lossM / RESISTANCE;
        if (tree.friction[link] > 0) {
            high = Math.min(high, StrictMath.pow(lossM / tree.friction[link], 1 / (1 + FlowPower.EXPONENT)));
        }
        for (int i = 0; i < MOST_HALVINGS && high - low > 1e-12 * high; i++) {
            double q = low >= high / 2 ? (low + high) / 2 : high / 2;
            double atM = (tree.friction[link] * FlowPower.of(q) + RESISTANCE) * q + tree.devices.lossM(link, q);
            if (atM > lossM) {
                high = q;
            } else {
                low = q;
            }
        }
        return high;
    }
}
