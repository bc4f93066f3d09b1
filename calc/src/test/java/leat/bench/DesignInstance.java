package leat.bench;

import tools.jackson.databind.JsonNode;

/**
 * A base design and a rule that makes random designs of it; the rule is a counter-based hash, so that any program makes the same
 * ones. JSON: lawn, heads (x, y, start, sweep), parent (-1 for the manifold), manifold, H0, C, sizes, pipe_price, valve_price,
 * head_price, nozzle_k, nozzle_r, jitter, cell, seed. Metres, m³/s; outlets q = k p^0.5.
 */
record DesignInstance(
        CoverageInstance coverage,
        int[] parent,
        double manifoldXM,
        double manifoldYM,
        double sourceHeadM,
        double hazenWilliamsC,
        double[] boreM,
        double[] pipePrice,
        double valvesPrice,
        double[] headPrice,
        double[] nozzleK,
        double[] nozzleRadiusM,
        double jitterM,
        long seed) {

    /** Price of unevenness in the score. */
    static final double PER_LOST_UNIFORMITY = 2000;

    private static final int ZONES = 4;

    static DesignInstance read(JsonNode json) {
        return new DesignInstance(
                CoverageInstance.read(json, json.get("cell").doubleValue()),
                TreeInstance.ints(json.get("parent")),
                json.get("manifold").get(0).doubleValue(),
                json.get("manifold").get(1).doubleValue(),
                json.get("H0").doubleValue(),
                json.get("C").doubleValue(),
                TreeInstance.doubles(json.get("sizes")),
                TreeInstance.doubles(json.get("pipe_price")),
                ZONES * json.get("valve_price").doubleValue(),
                TreeInstance.doubles(json.get("head_price")),
                TreeInstance.doubles(json.get("nozzle_k")),
                TreeInstance.doubles(json.get("nozzle_r")),
                json.get("jitter").doubleValue(),
                json.get("seed").longValue());
    }

    int heads() {
        return parent.length;
    }

    /** Fills {@code out} with design number {@code design}. */
    void make(int design, Draft out) {
        out.price = valvesPrice;
        for (int i = 0; i < heads(); i++) {
            long k = 4L * ((long) heads() * design + i);
            out.xM[i] = coverage.xM()[i] + (2 * share(k) - 1) * jitterM;
            out.yM[i] = coverage.yM()[i] + (2 * share(k + 1) - 1) * jitterM;
            out.nozzle[i] = (int) (nozzleK.length * share(k + 2));
            int size = (int) (boreM.length * share(k + 3));
            out.size[i] = parent[i] < 0 ? size : Math.min(size, out.size[parent[i]]);
            double upXM = parent[i] < 0 ? manifoldXM : out.xM[parent[i]];
            double upYM = parent[i] < 0 ? manifoldYM : out.yM[parent[i]];
            out.lengthM[i] =
                    Math.sqrt((out.xM[i] - upXM) * (out.xM[i] - upXM) + (out.yM[i] - upYM) * (out.yM[i] - upYM));
            out.price += out.lengthM[i] * pipePrice[out.size[i]] + headPrice[out.nozzle[i]];
        }
    }

    /** The finaliser of splitmix64 (Steele, Lea and Flood 2014), as a share of 1. */
    private double share(long k) {
        long z = seed * 0xD1342543DE82EF95L + (k + 1) * 0x9E3779B97F4A7C15L;
        z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        z ^= z >>> 31;
        return (z >>> 11) * 0x1.0p-53;
    }

    /** One design; made again and again in the same arrays. */
    static final class Draft {
        final double[] xM;
        final double[] yM;
        final int[] nozzle;
        final int[] size;
        final double[] lengthM;
        double price;

        Draft(int heads) {
            xM = new double[heads];
            yM = new double[heads];
            nozzle = new int[heads];
            size = new int[heads];
            lengthM = new double[heads];
        }
    }
}
