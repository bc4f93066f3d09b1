package leat.calc.internal.routes;

import java.util.Arrays;

/**
 * What a straight trench costs: its length, each piece times the factor of the dearest ground that it crosses; ground that
 * no patch covers costs 1 a metre. Patches are flat lists of edges; a point is inside where a ray crosses an odd number.
 */
public final class Tolls {

    /** Pieces shorter than this are not looked at: a line along an edge touches it for lengths of rounding only. */
    private static final double LEAST_PIECE_M = 1e-6;

    /** Much more than {@link #LEAST_PIECE_M}: in so long a piece outside the allowed ground lies one that is looked at. */
    private static final double SURELY_SEEN_M = 1e-3;

    /** Patches that no trench may leave come first, so that lines that leave them are dropped before others are met. */
    private int allowedPatches;

    private int patches;
    private int edges;
    private int[] firstEdge = new int[16];
    private double[] factor = new double[16];
    private Bands[] bands = new Bands[16];
    private double[] bounds = new double[64];
    private double[] ends = new double[256];
    private double[] cuts = new double[64];
    private int cutCount;
    private int[] met = new int[16];
    private int metCount;

    /** Ground that costs {@code groundFactor} a metre; infinite for ground that no trench may cross. */
    public void add(Patch patch, double groundFactor) {
        put(patch, groundFactor);
    }

    /** No trench may leave this patch, which may be several patches: what is in any of them is in. They are added first. */
    void addAllowed(Patch patch) {
        if (allowedPatches < patches) {
            throw new IllegalStateException("allowed ground is added after other ground");
        }
        allowedPatches++;
        put(patch, Double.POSITIVE_INFINITY);
    }

    private void put(Patch patch, double groundFactor) {
        if (patches + 2 > firstEdge.length) {
            firstEdge = Arrays.copyOf(firstEdge, 2 * patches + 2);
            factor = Arrays.copyOf(factor, 2 * patches + 2);
            bands = Arrays.copyOf(bands, 2 * patches + 2);
            bounds = Arrays.copyOf(bounds, 8 * patches + 8);
            met = new int[2 * patches + 2];
        }
        int box = 4 * patches;
        bounds[box] = bounds[box + 1] = Double.POSITIVE_INFINITY;
        bounds[box + 2] = bounds[box + 3] = Double.NEGATIVE_INFINITY;
        for (int r = 0; r < patch.xM().length; r++) {
            putRing(patch.xM()[r], patch.yM()[r], box);
        }
        factor[patches] = groundFactor;
        bands[patches] = new Bands(ends, firstEdge[patches], edges, bounds[box + 1], bounds[box + 3]);
        patches++;
        firstEdge[patches] = edges;
    }

    private void putRing(double[] xM, double[] yM, int box) {
        for (int i = 0; i < xM.length; i++) {
            int next = (i + 1) % xM.length;
            if (4 * edges + 4 > ends.length) {
                ends = Arrays.copyOf(ends, 2 * ends.length);
            }
            ends[4 * edges] = xM[i];
            ends[4 * edges + 1] = yM[i];
            ends[4 * edges + 2] = xM[next];
            ends[4 * edges + 3] = yM[next];
            edges++;
            bounds[box] = Math.min(bounds[box], xM[i]);
            bounds[box + 1] = Math.min(bounds[box + 1], yM[i]);
            bounds[box + 2] = Math.max(bounds[box + 2], xM[i]);
            bounds[box + 3] = Math.max(bounds[box + 3], yM[i]);
        }
    }

    /** Cost metres of a straight trench; infinite if it crosses ground that it must not. */
    public double costM(double x1, double y1, double x2, double y2) {
        double lengthM = Math.sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
        meetAllowed(x1, y1, x2, y2);
        if (leavesAllowed(x1, y1, x2, y2, lengthM)) {
            return Double.POSITIVE_INFINITY;
        }
        meetOthers(x1, y1, x2, y2);
        if (metCount == 0) {
            return lengthM;
        }
        sortCuts();
        double cost = 0;
        double from = 0;
        for (int i = 0; i <= cutCount; i++) {
            double to = i < cutCount ? cuts[i] : 1;
            double pieceM = (to - from) * lengthM;
            if (pieceM >= LEAST_PIECE_M) {
                double mid = (from + to) / 2;
                cost += pieceM * factorAt(x1 + mid * (x2 - x1), y1 + mid * (y2 - y1));
                if (cost == Double.POSITIVE_INFINITY) {
                    return cost;
                }
                from = to;
            }
        }
        // What is left over after the last piece was too short to be looked at, and costs as bare ground.
        return cost + (1 - from) * lengthM;
    }

    /** Where along a line, as shares of its length, it enters or leaves a patch; sorted. */
    public double[] crossings(double x1, double y1, double x2, double y2) {
        meet(x1, y1, x2, y2);
        sortCuts();
        return Arrays.copyOf(cuts, cutCount);
    }

    /** The factor at one point. */
    public double factorAtPoint(double x, double y) {
        meet(x, y, x, y);
        return factorAt(x, y);
    }

    /** Which patches the line's box touches, and where it crosses their edges. */
    private void meet(double x1, double y1, double x2, double y2) {
        meetAllowed(x1, y1, x2, y2);
        meetOthers(x1, y1, x2, y2);
    }

    private void meetAllowed(double x1, double y1, double x2, double y2) {
        metCount = 0;
        cutCount = 0;
        for (int p = 0; p < allowedPatches; p++) {
            meetOne(p, x1, y1, x2, y2);
        }
    }

    private void meetOthers(double x1, double y1, double x2, double y2) {
        double west = Math.min(x1, x2);
        double east = Math.max(x1, x2);
        double south = Math.min(y1, y2);
        double north = Math.max(y1, y2);
        for (int p = allowedPatches; p < patches; p++) {
            int box = 4 * p;
            if (bounds[box] <= east
                    && bounds[box + 2] >= west
                    && bounds[box + 1] <= north
                    && bounds[box + 3] >= south) {
                meetOne(p, x1, y1, x2, y2);
            }
        }
    }

    private void meetOne(int patch, double x1, double y1, double x2, double y2) {
        met[metCount++] = patch;
        for (int e = firstEdge[patch]; e < firstEdge[patch + 1]; e++) {
            cut(e, x1, y1, x2, y2);
        }
    }

    /** Whether a piece between two edges of the allowed ground lies outside it; met so far is that ground alone. */
    private boolean leavesAllowed(double x1, double y1, double x2, double y2, double lengthM) {
        if (cutCount > 1 && leavesFirst(x1, y1, x2, y2, lengthM)) {
            return true;
        }
        sortCuts();
        double from = 0;
        for (int i = 0; i <= cutCount && allowedPatches > 0; i++) {
            double to = i < cutCount ? cuts[i] : 1;
            if (isOutside(from, to, x1, y1, x2, y2, lengthM)) {
                return true;
            }
            from = to;
        }
        return false;
    }

    /** Most lines that leave the allowed ground do so where they cross it first: no need to sort the rest. */
    private boolean leavesFirst(double x1, double y1, double x2, double y2, double lengthM) {
        double least = 1;
        double next = 1;
        for (int i = 0; i < cutCount; i++) {
            next = Math.min(next, Math.max(least, cuts[i]));
            least = Math.min(least, cuts[i]);
        }
        return isOutside(least, next, x1, y1, x2, y2, lengthM);
    }

    private boolean isOutside(double from, double to, double x1, double y1, double x2, double y2, double lengthM) {
        double mid = (from + to) / 2;
        return (to - from) * lengthM > SURELY_SEEN_M && !isAllowed(x1 + mid * (x2 - x1), y1 + mid * (y2 - y1));
    }

    /** By insertion: a line crosses few edges. */
    private void sortCuts() {
        for (int i = 1; i < cutCount; i++) {
            double cut = cuts[i];
            int at = i;
            while (at > 0 && cuts[at - 1] > cut) {
                cuts[at] = cuts[at - 1];
                at--;
            }
            cuts[at] = cut;
        }
    }

    private void cut(int edge, double x1, double y1, double x2, double y2) {
        double ax = ends[4 * edge];
        double ay = ends[4 * edge + 1];
        double bx = ends[4 * edge + 2];
        double by = ends[4 * edge + 3];
        double sideA = (x2 - x1) * (ay - y1) - (y2 - y1) * (ax - x1);
        double sideB = (x2 - x1) * (by - y1) - (y2 - y1) * (bx - x1);
        if ((sideA > 0) == (sideB > 0)) {
            return;
        }
        double across = (bx - ax) * (y1 - ay) - (by - ay) * (x1 - ax);
        double along = (bx - ax) * (y2 - y1) - (by - ay) * (x2 - x1);
        double t = -across / along;
        if (t > 0 && t < 1) {
            if (cutCount == cuts.length) {
                cuts = Arrays.copyOf(cuts, 2 * cuts.length);
            }
            cuts[cutCount++] = t;
        }
    }

    private double factorAt(double x, double y) {
        if (!isAllowed(x, y)) {
            return Double.POSITIVE_INFINITY;
        }
        double dearest = 1;
        for (int i = allowedPatches; i < metCount; i++) {
            if (factor[met[i]] > dearest && contains(met[i], x, y)) {
                dearest = factor[met[i]];
            }
        }
        return dearest;
    }

    private boolean isAllowed(double x, double y) {
        boolean isInside = allowedPatches == 0;
        for (int p = 0; p < allowedPatches && !isInside; p++) {
            isInside = contains(p, x, y);
        }
        return isInside;
    }

    private boolean contains(int patch, double x, double y) {
        int box = 4 * patch;
        if (x < bounds[box] || y < bounds[box + 1] || x > bounds[box + 2] || y > bounds[box + 3]) {
            return false;
        }
        return bands[patch].contains(x, y);
    }
}
