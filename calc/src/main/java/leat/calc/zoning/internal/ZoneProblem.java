package leat.calc.zoning.internal;

/**
 * Heads to be parted into zones. Head {@code i} draws {@code flowM3PerS[i]} and may share a zone only with heads of equal
 * {@code kind[i]}; it lies at {@code bearingRad[i]}, clockwise from north, as seen from the manifold. {@code lengthM} holds the lengths of pipe between any two places, row by row, places being the heads
 * in their order and then the manifold: {@code (n + 1)²} entries, symmetric, at least 0.
 */
public final class ZoneProblem {

    /** A sum of flows may exceed the capacity by this share: rounding in the sum, no licence. */
    private static final double ROUNDING_SHARE = 1e-9;

    final int heads;
    final double[] flowM3PerS;
    final int[] kind;
    final double[] lengthM;
    final double[] bearingRad;
    final double capacityM3PerS;
    final int mostHeads;
    final double zoneCostM;
    final double loadCostM;

    private ZoneProblem(double[] flowM3PerS, int[] kind, double[] lengthM, double[] bearingRad, Limits limits) {
        this.heads = flowM3PerS.length;
        this.flowM3PerS = flowM3PerS.clone();
        this.kind = kind.clone();
        this.lengthM = lengthM.clone();
        this.bearingRad = bearingRad.clone();
        this.capacityM3PerS = limits.capacityM3PerS * (1 + ROUNDING_SHARE);
        this.mostHeads = limits.mostHeads;
        this.zoneCostM = limits.zoneCostM;
        this.loadCostM = limits.loadCostM;
    }

    /**
     * What holds for each zone.
     *
     * @param capacityM3PerS most flow; a head that alone draws more gets a zone of its own
     * @param mostHeads      at least 1
     * @param zoneCostM      what a further zone costs, in metres of pipe
     * @param loadCostM      what a zone that draws all of the most flow costs besides, for the thickness of its pipes; one that draws a share of it, the
     *                       square of the share; at most {@code zoneCostM}
     */
    public record Limits(double capacityM3PerS, int mostHeads, double zoneCostM, double loadCostM) {}

    /** A problem over copies of the given arrays. {@code bearingRad} serves to find starts only. */
    public static ZoneProblem of(
            double[] flowM3PerS, int[] kind, double[] lengthM, double[] bearingRad, Limits limits) {
        int heads = flowM3PerS.length;
        if (kind.length != heads || bearingRad.length != heads || lengthM.length != (heads + 1) * (heads + 1)) {
            throw new IllegalArgumentException(heads + " flows, " + kind.length + " kinds, " + bearingRad.length
                    + " bearings, " + lengthM.length + " lengths");
        }
        if (limits.mostHeads < 1) {
            throw new IllegalArgumentException("most heads " + limits.mostHeads);
        }
        return new ZoneProblem(flowM3PerS, kind, lengthM, bearingRad, limits);
    }

    /** A problem in which pipes run straight. */
    public static ZoneProblem straight(
            double[] flowM3PerS,
            int[] kind,
            double[] xM,
            double[] yM,
            double manifoldXM,
            double manifoldYM,
            Limits limits) {
        int places = xM.length + 1;
        double[] lengthM = new double[places * places];
        double[] bearingRad = new double[xM.length];
        for (int i = 0; i < places; i++) {
            double x = i < xM.length ? xM[i] : manifoldXM;
            double y = i < xM.length ? yM[i] : manifoldYM;
            for (int j = 0; j < places; j++) {
                double dx = x - (j < xM.length ? xM[j] : manifoldXM);
                double dy = y - (j < xM.length ? yM[j] : manifoldYM);
                lengthM[i * places + j] = Math.sqrt(dx * dx + dy * dy);
            }
            if (i < xM.length) {
                bearingRad[i] = StrictMath.atan2(x - manifoldXM, y - manifoldYM);
            }
        }
        return of(flowM3PerS, kind, lengthM, bearingRad, limits);
    }

    int manifold() {
        return heads;
    }

    double lengthM(int a, int b) {
        return lengthM[a * (heads + 1) + b];
    }

    boolean fits(double zoneFlowM3PerS, int zoneHeads) {
        return zoneFlowM3PerS <= capacityM3PerS && zoneHeads <= mostHeads;
    }
}
