package leat.calc.internal.routes;

import java.util.Arrays;

/**
 * The edges of one patch in horizontal bands of equal height, so that only those of one band are looked at to say whether a
 * point is inside: where a ray to the east crosses an odd number.
 */
final class Bands {

    private static final int MOST_BANDS = 64;

    private final double southM;
    private final double bandsPerM;
    private final int[] first;

    /** x and y of both ends of each edge, band by band; an edge stands in each band that it touches. */
    private final double[] ends;

    /** @param edges x and y of both ends of each edge; of these the ones of the patch, from {@code from} to before {@code end} */
    Bands(double[] edges, int from, int end, double southM, double northM) {
        int bands = Math.max(1, Math.min(MOST_BANDS, end - from));
        this.southM = southM;
        bandsPerM = northM > southM ? bands / (northM - southM) : 0;
        first = new int[bands + 1];
        for (int e = from; e < end; e++) {
            int last = lastBand(edges, e);
            for (int band = firstBand(edges, e); band <= last; band++) {
                first[band + 1]++;
            }
        }
        for (int band = 0; band < bands; band++) {
            first[band + 1] += first[band];
        }
        ends = new double[4 * first[bands]];
        int[] next = Arrays.copyOf(first, bands);
        for (int e = from; e < end; e++) {
            int last = lastBand(edges, e);
            for (int band = firstBand(edges, e); band <= last; band++) {
                System.arraycopy(edges, 4 * e, ends, 4 * next[band]++, 4);
            }
        }
    }

    private int firstBand(double[] edges, int edge) {
        return band(Math.min(edges[4 * edge + 1], edges[4 * edge + 3]));
    }

    private int lastBand(double[] edges, int edge) {
        return band(Math.max(edges[4 * edge + 1], edges[4 * edge + 3]));
    }

    /** Never falls as y rises, whatever the rounding: so a point between the ends of an edge is in a band of that edge. */
    private int band(double y) {
        return Math.max(0, Math.min(first.length - 2, (int) ((y - southM) * bandsPerM)));
    }

    boolean contains(double x, double y) {
        boolean inside = false;
        int band = band(y);
        int end = 4 * first[band + 1];
        for (int e = 4 * first[band]; e < end; e += 4) {
            double ay = ends[e + 1];
            double by = ends[e + 3];
            if ((ay > y) != (by > y) && x < ends[e] + (y - ay) / (by - ay) * (ends[e + 2] - ends[e])) {
                inside = !inside;
            }
        }
        return inside;
    }
}
