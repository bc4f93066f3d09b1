package leat.calc.staking.internal;

import java.util.Arrays;

/** Whether a tape can be drawn straight between two places past what stands there. */
public final class Sight {

    /** A tape that lies along a wall or touches a corner does not go through it: absorbs rounding, and the wall's skin. */
    private static final double SKIN_M = 0.005;

    private Sight() {}

    /**
     * Whether the line from A to B stays out of the ring.
     *
     * @param ringXs corners in order; the first is not repeated
     */
    public static boolean isClear(double aX, double aY, double bX, double bY, double[] ringXs, double[] ringYs) {
        double[] cuts = cuts(aX, aY, bX, bY, ringXs, ringYs);
        for (int i = 1; i < cuts.length; i++) {
            double share = (cuts[i - 1] + cuts[i]) / 2;
            double x = aX + share * (bX - aX);
            double y = aY + share * (bY - aY);
            if (contains(x, y, ringXs, ringYs) && skinM(x, y, ringXs, ringYs) > SKIN_M) {
                return false;
            }
        }
        return true;
    }

    /** Even-odd rule; a point on the ring may fall either way. */
    public static boolean contains(double x, double y, double[] ringXs, double[] ringYs) {
        boolean inside = false;
        for (int i = 0, j = ringXs.length - 1; i < ringXs.length; j = i++) {
            boolean spans = (ringYs[i] > y) != (ringYs[j] > y);
            if (spans && x < ringXs[i] + (y - ringYs[i]) / (ringYs[j] - ringYs[i]) * (ringXs[j] - ringXs[i])) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Shares of the way from A to B at which it meets the ring's sides, with 0 and 1, in order. */
    private static double[] cuts(double aX, double aY, double bX, double bY, double[] ringXs, double[] ringYs) {
        double[] cuts = new double[ringXs.length + 2];
        int count = 0;
        cuts[count++] = 0;
        cuts[count++] = 1;
        for (int i = 0, j = ringXs.length - 1; i < ringXs.length; j = i++) {
            double sideX = ringXs[i] - ringXs[j];
            double sideY = ringYs[i] - ringYs[j];
            double cross = (bX - aX) * sideY - (bY - aY) * sideX;
            double share = ((ringXs[j] - aX) * sideY - (ringYs[j] - aY) * sideX) / cross;
            double along = ((ringXs[j] - aX) * (bY - aY) - (ringYs[j] - aY) * (bX - aX)) / cross;
            if (cross != 0 && share > 0 && share < 1 && along >= 0 && along <= 1) {
                cuts[count++] = share;
            }
        }
        double[] found = Arrays.copyOf(cuts, count);
        Arrays.sort(found);
        return found;
    }

    private static double skinM(double x, double y, double[] ringXs, double[] ringYs) {
        double nearestM = Double.POSITIVE_INFINITY;
        for (int i = 0, j = ringXs.length - 1; i < ringXs.length; j = i++) {
            double sideX = ringXs[i] - ringXs[j];
            double sideY = ringYs[i] - ringYs[j];
            double share = ((x - ringXs[j]) * sideX + (y - ringYs[j]) * sideY) / (sideX * sideX + sideY * sideY);
            double within = Math.max(0, Math.min(1, share));
            nearestM = Math.min(nearestM, Math.hypot(x - ringXs[j] - within * sideX, y - ringYs[j] - within * sideY));
        }
        return nearestM;
    }
}
