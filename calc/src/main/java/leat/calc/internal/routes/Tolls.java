package leat.calc.internal.routes;

import java.util.Arrays;

/**
 * What a straight trench costs: its length, each piece times the factor of the dearest ground that it crosses; ground that
 * no patch covers costs 1 a metre. Patches are flat lists of edges; a point is inside where a ray crosses an odd number.
 */
public final class Tolls {

    /** Pieces shorter than this are not looked at: a line along an edge touches it for lengths of rounding only. */
    private static final double LEAST_PIECE_M = 1e-6;

    private int patches;
    private int edges;
    private int[] firstEdge = new int[16];
    private double[] factor = new double[16];
    private boolean[] isOutside = new boolean[16];
    private double[] bounds = new double[64];
    private double[] ends = new double[256];
    private double[] cuts = new double[64];
    private int cutCount;
    private int[] met = new int[16];
    private int metCount;

    /** Ground that costs {@code groundFactor} a metre; infinite for ground that no trench may cross. */
    public void add(Patch patch, double groundFactor) {
        put(patch, groundFactor, false);
    }

    /** No trench may leave this patch, which may be several patches: what is in any of them is in. */
    void addAllowed(Patch patch) {
        put(patch, Double.POSITIVE_INFINITY, true);
    }

    private void put(Patch patch, double groundFactor, boolean outside) {
        if (patches + 2 > firstEdge.length) {
            firstEdge = Arrays.copyOf(firstEdge, 2 * patches + 2);
            factor = Arrays.copyOf(factor, 2 * patches + 2);
            isOutside = Arrays.copyOf(isOutside, 2 * patches + 2);
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
        isOutside[patches] = outside;
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
        meet(x1, y1, x2, y2);
        if (metCount == 0) {
            return lengthM;
        }
        if (cutCount > 1) {
            Arrays.sort(cuts, 0, cutCount);
        }
        double cost = 0;
        double from = 0;
        for (int i = 0; i <= cutCount; i++) {
            double to = i < cutCount ? cuts[i] : 1;
            double pieceM = (to - from) * lengthM;
            if (pieceM >= LEAST_PIECE_M) {
                double mid = (from + to) / 2;
                cost += pieceM * factorAt(x1 + mid * (x2 - x1), y1 + mid * (y2 - y1));
                from = to;
            }
        }
        // What is left over after the last piece was too short to be looked at, and costs as bare ground.
        return cost + (1 - from) * lengthM;
    }

    /** Where along a line, as shares of its length, it enters or leaves a patch; sorted. */
    public double[] crossings(double x1, double y1, double x2, double y2) {
        meet(x1, y1, x2, y2);
        Arrays.sort(cuts, 0, cutCount);
        return Arrays.copyOf(cuts, cutCount);
    }

    /** The factor at one point. */
    public double factorAtPoint(double x, double y) {
        meet(x, y, x, y);
        return factorAt(x, y);
    }

    /** Which patches the line's box touches, and where it crosses their edges. */
    private void meet(double x1, double y1, double x2, double y2) {
        metCount = 0;
        cutCount = 0;
        double west = Math.min(x1, x2);
        double east = Math.max(x1, x2);
        double south = Math.min(y1, y2);
        double north = Math.max(y1, y2);
        for (int p = 0; p < patches; p++) {
            int box = 4 * p;
            boolean apart =
                    bounds[box] > east || bounds[box + 2] < west || bounds[box + 1] > north || bounds[box + 3] < south;
            if (apart && !isOutside[p]) {
                continue;
            }
            met[metCount++] = p;
            for (int e = firstEdge[p]; e < firstEdge[p + 1]; e++) {
                cut(e, x1, y1, x2, y2);
            }
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
        double dearest = 1;
        boolean mustBeInside = false;
        boolean isInside = false;
        for (int i = 0; i < metCount; i++) {
            int p = met[i];
            if (isOutside[p]) {
                mustBeInside = true;
                isInside = isInside || contains(p, x, y);
            } else if (factor[p] > dearest && contains(p, x, y)) {
                dearest = factor[p];
            }
        }
        return mustBeInside && !isInside ? Double.POSITIVE_INFINITY : dearest;
    }

    private boolean contains(int patch, double x, double y) {
        int box = 4 * patch;
        if (x < bounds[box] || y < bounds[box + 1] || x > bounds[box + 2] || y > bounds[box + 3]) {
            return false;
        }
        boolean inside = false;
        for (int e = 4 * firstEdge[patch]; e < 4 * firstEdge[patch + 1]; e += 4) {
            double ay = ends[e + 1];
            double by = ends[e + 3];
            if ((ay > y) != (by > y) && x < ends[e] + (y - ay) / (by - ay) * (ends[e + 2] - ends[e])) {
                inside = !inside;
            }
        }
        return inside;
    }
}
