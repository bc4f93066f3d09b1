package leat.calc.hydraulics.internal;

import java.util.Random;
import leat.calc.internal.pipes.PipeLaw;

/** A made-up tree of pipes with every kind of outlet and device; the seed says which. Laws are written out plainly. */
final class RandomTree {

    enum Outlet {
        NONE,
        ORIFICE,
        POWER,
        COMPENSATING
    }

    final int count;
    final int[] parent;
    final double[] friction;
    final double[] minor;
    final double[] elevationM;
    final double[] demand;
    final Outlet[] kind;
    final double[] size;
    final double[] shape;
    final boolean[] device;
    final double[] thresholdM;
    final double[] deviceK;
    final double[] deviceN;
    final double sourceHeadM;

    private RandomTree(int count, double sourceHeadM) {
        this.count = count;
        this.sourceHeadM = sourceHeadM;
        parent = new int[count];
        friction = new double[count];
        minor = new double[count];
        elevationM = new double[count];
        demand = new double[count];
        kind = new Outlet[count];
        size = new double[count];
        shape = new double[count];
        device = new boolean[count];
        thresholdM = new double[count];
        deviceK = new double[count];
        deviceN = new double[count];
    }

    /** Orifices only, all well below the source. */
    static RandomTree plain(long seed, int most) {
        var random = new Random(seed);
        var tree = new RandomTree(2 + random.nextInt(most - 1), random.nextDouble(20, 70));
        for (int i = 1; i < tree.count; i++) {
            tree.pipe(i, random);
            tree.elevationM[i] = random.nextDouble(-3, 3);
            boolean runs = random.nextBoolean() || i == tree.count - 1;
            tree.kind[i] = runs ? Outlet.ORIFICE : Outlet.NONE;
            tree.size[i] = runs ? random.nextDouble(1e-5, 8e-5) : 0;
            tree.shape[i] = 0.5;
        }
        return tree;
    }

    /** Anything: outlets above the source, devices that hold the water back, starved ends. */
    static RandomTree wild(long seed, int most) {
        var random = new Random(seed);
        var tree = new RandomTree(2 + random.nextInt(most - 1), random.nextDouble(-5, 60));
        double spreadM = random.nextDouble() < 0.5 ? 3 : 40;
        for (int i = 1; i < tree.count; i++) {
            tree.pipe(i, random);
            tree.elevationM[i] = random.nextDouble(-spreadM, spreadM);
            tree.minor[i] = random.nextInt(3) == 0 ? random.nextDouble(0, 1e7) : 0;
            tree.demand[i] = random.nextInt(20) == 0 ? random.nextDouble(0, 1e-4) : 0;
            tree.outlet(i, random);
            tree.device[i] = random.nextInt(6) == 0;
            if (tree.device[i]) {
                tree.thresholdM[i] = random.nextBoolean() ? 0 : random.nextDouble(0, 8);
                tree.deviceK[i] = random.nextDouble(0, 1e7);
                tree.deviceN[i] = new double[] {1.852, 2, 1.7}[random.nextInt(3)];
            }
        }
        return tree;
    }

    private void pipe(int i, Random random) {
        parent[i] = random.nextInt(3) == 0 ? random.nextInt(i) : i - 1;
        double boreM = 0.010 * Math.pow(5, random.nextDouble());
        friction[i] = PipeLaw.frictionCoefficient(random.nextDouble(0.2, 30), boreM, 150);
        kind[i] = Outlet.NONE;
    }

    private void outlet(int i, Random random) {
        kind[i] = Outlet.values()[random.nextInt(4)];
        switch (kind[i]) {
            case NONE:
                break;
            case ORIFICE:
                size[i] = random.nextDouble(1e-6, 2e-4);
                shape[i] = 0.5;
                break;
            case POWER:
                size[i] = random.nextDouble(1e-6, 1e-4);
                shape[i] = random.nextDouble(0.3, 1);
                break;
            case COMPENSATING:
                size[i] = random.nextDouble(1e-6, 3e-4);
                shape[i] = random.nextDouble(2, 20);
                break;
        }
    }

    TreeSolver solver() {
        var solver = new TreeSolver(parent);
        for (int i = 1; i < count; i++) {
            solver.setPipe(i, friction[i], minor[i]);
            solver.setElevation(i, elevationM[i]);
            solver.setDemand(i, demand[i]);
            if (kind[i] == Outlet.COMPENSATING) {
                solver.setCompensatingOutlet(i, size[i], shape[i]);
            } else if (kind[i] != Outlet.NONE) {
                solver.setOutlet(i, size[i], shape[i]);
            }
            if (device[i]) {
                solver.setDevice(i, thresholdM[i], deviceK[i], deviceN[i]);
            }
        }
        return solver;
    }

    double lossM(int i, double q) {
        double magnitude = Math.abs(q);
        double lossM = friction[i] * Math.pow(magnitude, 1.852) + minor[i] * q * q;
        if (device[i]) {
            lossM += Math.min(1, magnitude / 1e-7) * thresholdM[i] + deviceK[i] * Math.pow(magnitude, deviceN[i]);
        }
        return Math.signum(q) * lossM;
    }

    double outflow(int i, double pressureM) {
        if (pressureM <= 0 || kind[i] == Outlet.NONE) {
            return 0;
        }
        if (kind[i] == Outlet.COMPENSATING) {
            double part = Math.min(1, pressureM / shape[i]);
            return size[i] * part * (2 - part);
        }
        if (kind[i] == Outlet.POWER && pressureM < 1e-6) {
            return size[i] * Math.pow(1e-6, shape[i] - 1) * pressureM; // the solver's convention, a micrometre of water
        }
        return size[i] * Math.pow(pressureM, shape[i]);
    }

    /** Sum of all outflows and demands. */
    double inflow(TreeSolver solved) {
        double sum = 0;
        for (int i = 1; i < count; i++) {
            sum += solved.outletM3PerS(i) + demand[i];
        }
        return sum;
    }
}
