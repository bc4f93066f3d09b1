package leat.bench;

/** Careful hand-written Java without a library: Newton with one sweep from the leaves and one from the source. */
final class TreeSweepRival implements Entrant {

    private static final double N = 1.852;

    private final TreeInstance instance;
    private final double[] flow;
    private final double[] outlet;
    private final double[] headM;
    private final double[] inverseSlope;
    private final double[] fixed;
    private final double[] outletInverse;
    private final double[] outletFixed;
    private final double[] diagonal;
    private final double[] right;
    private final double[] power;

    TreeSweepRival(TreeInstance instance) {
        this.instance = instance;
        int n = instance.nodeCount();
        flow = new double[n];
        outlet = new double[n];
        headM = new double[n];
        inverseSlope = new double[n];
        fixed = new double[n];
        outletInverse = new double[n];
        outletFixed = new double[n];
        diagonal = new double[n];
        right = new double[n];
        power = new double[n];
    }

    @Override
    public String name() {
        return "plain-java-sweep";
    }

    @Override
    public double solve() {
        int n = instance.nodeCount();
        double firstPower = Math.pow(1e-3, N - 1);
        headM[0] = instance.sourceHeadM();
        for (int i = 1; i < n; i++) {
            outlet[i] = instance.k()[i] * Math.sqrt(20);
            flow[i] = 1e-3;
            power[i] = firstPower;
        }
        double residualM = 1;
        for (int step = 0; step < 60 && residualM > 1e-6; step++) {
            linearise();
            for (int i = n - 1; i > 0; i--) {
                int parent = instance.parent()[i];
                double part = inverseSlope[i] / diagonal[i];
                if (parent > 0) {
                    diagonal[parent] += inverseSlope[i] * (1 - part);
                    right[parent] += part * right[i] - fixed[i];
                }
            }
            residualM = update();
        }
        return headM[n - 1] + flow[1];
    }

    private void linearise() {
        double[] k = instance.k();
        for (int i = 1; i < instance.nodeCount(); i++) {
            double resistance = instance.friction()[i] * power[i];
            inverseSlope[i] = 1 / Math.max(N * resistance, 1e-3);
            fixed[i] = flow[i] - resistance * flow[i] * inverseSlope[i];
            if (k[i] > 0) {
                double inverse = 1 / (k[i] * k[i]);
                outletInverse[i] = 1 / Math.max(2 * outlet[i] * inverse, 1e-3);
                outletFixed[i] = outlet[i] - outlet[i] * outlet[i] * inverse * outletInverse[i];
            }
            diagonal[i] = inverseSlope[i] + outletInverse[i];
            right[i] = fixed[i] - outletFixed[i] + outletInverse[i] * instance.elevationM()[i];
        }
    }

    private double update() {
        double[] k = instance.k();
        double residualM = 0;
        for (int i = 1; i < instance.nodeCount(); i++) {
            double upstreamM = headM[instance.parent()[i]];
            headM[i] = (right[i] + inverseSlope[i] * upstreamM) / diagonal[i];
            flow[i] = fixed[i] + inverseSlope[i] * (upstreamM - headM[i]);
            power[i] = Math.pow(Math.abs(flow[i]), N - 1);
            double lossM = instance.friction()[i] * power[i] * flow[i];
            residualM = Math.max(residualM, Math.abs(upstreamM - headM[i] - lossM));
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
    public Answer answer() {
        double inflow = 0;
        for (int i = 1; i < instance.nodeCount(); i++) {
            inflow += instance.k()[i] > 0 ? outlet[i] : 0;
        }
        return instance.answer(inflow, headM, flow);
    }
}
