package leat.bench;

import leat.calc.internal.pipes.PipeLaw;
import tools.jackson.databind.JsonNode;

/**
 * A branched network: pipe i feeds node i from {@code parent[i]} (smaller than i), node 0 is the source with the head
 * {@code H0}; outlets q = k · p^0.5. JSON: parent, L, D, k, z by node, C, H0; metres, m³/s.
 */
record TreeInstance(int[] parent, double[] friction, double[] k, double[] elevationM, double sourceHeadM) {

    static TreeInstance read(JsonNode json) {
        double c = json.get("C").doubleValue();
        double[] lengthM = doubles(json.get("L"));
        double[] boreM = doubles(json.get("D"));
        double[] friction = new double[lengthM.length];
        for (int i = 1; i < friction.length; i++) {
            friction[i] = PipeLaw.frictionCoefficient(lengthM[i], boreM[i], c);
        }
        return new TreeInstance(
                ints(json.get("parent")),
                friction,
                doubles(json.get("k")),
                doubles(json.get("z")),
                json.get("H0").doubleValue());
    }

    int nodeCount() {
        return parent.length;
    }

    /** The answer that counts: heads at all nodes, inflow, and how well the laws hold. */
    Answer answer(double inflowM3PerS, double[] headM, double[] flowM3PerS) {
        double residualM = 0;
        double imbalance = 0;
        double lowestM = Double.POSITIVE_INFINITY;
        double[] balance = flowM3PerS.clone();
        for (int i = parent.length - 1; i > 0; i--) {
            balance[parent[i]] -= flowM3PerS[i];
        }
        for (int i = 1; i < parent.length; i++) {
            double lossM = friction[i] * Math.pow(Math.abs(flowM3PerS[i]), 0.852) * flowM3PerS[i];
            residualM = Math.max(residualM, Math.abs(headM[parent[i]] - headM[i] - lossM));
            double outlet = k[i] * Math.sqrt(Math.max(0, headM[i] - elevationM[i]));
            imbalance = Math.max(imbalance, Math.abs(balance[i] - outlet));
            lowestM = k[i] > 0 ? Math.min(lowestM, headM[i] - elevationM[i]) : lowestM;
        }
        return new Answer()
                .figure("inflow_m3s", inflowM3PerS, 1e-8, 0)
                .figure("p_min_m", lowestM, 0, 1e-5)
                .series("head_m", headM, 0, 1e-5)
                .require("energy residual below 1e-6 m, it is " + residualM, residualM < 1e-6)
                .require("flow balance to 1e-8 of the inflow, off by " + imbalance, imbalance < 1e-8 * inflowM3PerS);
    }

    static double[] doubles(JsonNode array) {
        double[] values = new double[array.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = array.get(i).doubleValue();
        }
        return values;
    }

    static int[] ints(JsonNode array) {
        int[] values = new int[array.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = array.get(i).intValue();
        }
        return values;
    }
}
