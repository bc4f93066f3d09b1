package leat.calc.internal.cells;

import java.util.Arrays;
import leat.model.catalog.Profile;

/**
 * How depth falls off with distance from a head: straight pieces over the distance as a fraction of the radius, scaled so that
 * the mean over the wetted circle (hence over any sector of it) is exactly 1.
 */
public final class DepthCurve {

    /** Depth falls straight from the head to nothing at the radius. */
    public static final DepthCurve WEDGE = of(new double[] {0, 1}, new double[] {1, 0});

    /** The same depth everywhere. */
    public static final DepthCurve UNIFORM = of(new double[] {0, 1}, new double[] {1, 1});

    private static final int SLOTS = 256;

    /** Piece {@code i} is {@code atCentre[i] + slope[i] t} up to the fraction {@code end[i]}. */
    private final double[] end;

    private final double[] atCentre;
    private final double[] slope;

    /** The piece at the start of each of {@link #SLOTS} equal slots; from there a few steps forward find the right one. */
    private final int[] pieceAtSlot = new int[SLOTS + 1];

    private DepthCurve(double[] end, double[] atCentre, double[] slope) {
        this.end = end;
        this.atCentre = atCentre;
        this.slope = slope;
        int piece = 0;
        for (int slot = 0; slot <= SLOTS; slot++) {
            while (end[piece] < (double) slot / SLOTS) {
                piece++;
            }
            pieceAtSlot[slot] = piece;
        }
    }

    /**
     * @param fraction      distances over the radius, rising from 0 to 1
     * @param relativeDepth depths there, in any scale; none negative, not all 0
     */
    public static DepthCurve of(double[] fraction, double[] relativeDepth) {
        double mean = meanOverCircle(fraction, relativeDepth);
        int most = fraction.length - 1;
        double[] end = new double[most];
        double[] atCentre = new double[most];
        double[] slope = new double[most];
        int pieces = 0;
        for (int i = 0; i < most; i++) {
            double depthAtEnd = relativeDepth[i + 1] / mean;
            // Neighbours on one line become one piece: a table of a straight line costs no more than the line.
            boolean bends = pieces == 0
                    || Math.abs(atCentre[pieces - 1] + slope[pieces - 1] * fraction[i + 1] - depthAtEnd) > 1e-9;
            if (bends) {
                slope[pieces] = (depthAtEnd - relativeDepth[i] / mean) / (fraction[i + 1] - fraction[i]);
                atCentre[pieces] = depthAtEnd - slope[pieces] * fraction[i + 1];
                pieces++;
            }
            end[pieces - 1] = fraction[i + 1];
        }
        end[pieces - 1] = Double.POSITIVE_INFINITY; // a cell on the rim may lie past 1 by a rounding
        return new DepthCurve(
                Arrays.copyOf(end, pieces), Arrays.copyOf(atCentre, pieces), Arrays.copyOf(slope, pieces));
    }

    /** A curve of the catalogue: depths at even shares of the radius. */
    public static DepthCurve of(Profile profile) {
        int points = profile.relativeDepth().size();
        double[] fraction = new double[points];
        double[] relativeDepth = new double[points];
        for (int i = 0; i < points; i++) {
            fraction[i] = (double) i / (points - 1);
            relativeDepth[i] = profile.relativeDepth().get(i);
        }
        return of(fraction, relativeDepth);
    }

    /** The integral of p(t) 2 t dt from 0 to 1, exact for straight pieces. */
    private static double meanOverCircle(double[] fraction, double[] relativeDepth) {
        double mean = 0;
        for (int i = 0; i + 1 < fraction.length; i++) {
            double from = fraction[i];
            double to = fraction[i + 1];
            double slope = (relativeDepth[i + 1] - relativeDepth[i]) / (to - from);
            double atCentre = relativeDepth[i] - slope * from;
            mean += atCentre * (to * to - from * from) + slope * (to * to * to - from * from * from) * 2 / 3;
        }
        return mean;
    }

    /** Depth over mean depth at a fraction of the radius from 0 to 1. */
    public double relativeDepth(double fraction) {
        int piece = pieceAtSlot[(int) (Math.min(fraction, 1) * SLOTS)];
        while (fraction > end[piece]) {
            piece++;
        }
        return atCentre[piece] + slope[piece] * fraction;
    }

    boolean isStraight() {
        return end.length == 1;
    }

    double straightAtCentre() {
        return atCentre[0];
    }

    double straightSlope() {
        return slope[0];
    }
}
