package leat.calc.internal.cells;

import java.util.Arrays;

/**
 * The heads of a coverage calculation, parallel arrays, one entry a head. A head wets a sector of a circle. What depends on the
 * arc alone is worked out when the arc is set, so that moving a head or changing its radius costs no trigonometry.
 */
public final class HeadArrays {

    /** An arc within this of the full turn has no edges; the same slack lets a row exactly level with a head belong to it. */
    private static final double ANGLE_SLACK_RAD = 1e-12;

    /** Each head has two intervals north of it, then two south, the western first: an arc may leave a row and come back to it. */
    static final int INTERVALS = 4;

    private final double[] xM;
    private final double[] yM;
    private final double[] radiusM;
    private final double[] sweepRad;
    private final double[] meanRateMPerS;
    private final DepthCurve[] profile;

    /** In a row at the distance d from the head, interval k is x from {@code west[k] d} to {@code east[k] d}. */
    private final double[] west;

    private final double[] east;
    private final boolean[] reachesEast;
    private final boolean[] reachesWest;

    public HeadArrays(int heads) {
        xM = new double[heads];
        yM = new double[heads];
        radiusM = new double[heads];
        sweepRad = new double[heads];
        meanRateMPerS = new double[heads];
        profile = new DepthCurve[heads];
        Arrays.fill(profile, DepthCurve.UNIFORM);
        west = new double[INTERVALS * heads];
        east = new double[INTERVALS * heads];
        reachesEast = new boolean[heads];
        reachesWest = new boolean[heads];
        for (int head = 0; head < heads; head++) {
            arc(head, 0, 2 * Math.PI);
        }
    }

    public int size() {
        return xM.length;
    }

    public void place(int head, double atXM, double atYM) {
        xM[head] = atXM;
        yM[head] = atYM;
    }

    /** @param meters radius that water reaches, more than 0 */
    public void radius(int head, double meters) {
        radiusM[head] = meters;
    }

    public void profile(int head, DepthCurve shape) {
        profile[head] = shape;
    }

    /** The flow is spread over the sector: call after radius and arc are set. */
    public void flow(int head, double flowM3PerS) {
        meanRateMPerS[head] = flowM3PerS / wettedAreaM2(head);
    }

    /** Mean depth rate over the sector. */
    public void meanRate(int head, double rateMPerS) {
        meanRateMPerS[head] = rateMPerS;
    }

    /**
     * @param startRad first edge, counter-clockwise from east, any turn
     * @param turnRad  counter-clockwise sweep, more than 0, at most 2π
     */
    public void arc(int head, double startRad, double turnRad) {
        double turn = 2 * Math.PI;
        double start = startRad - turn * Math.floor(startRad / turn);
        double stop = start + turnRad;
        if (turnRad > turn - ANGLE_SLACK_RAD) {
            start = 0;
            stop = turn;
        }
        sweepRad[head] = Math.min(turnRad, turn);
        int k = INTERVALS * head;
        north(k, start, Math.min(stop, Math.PI));
        north(k + 1, 0, Math.min(stop, turn + Math.PI) - turn);
        south(k + 2, 0, stop - 3 * Math.PI);
        south(k + 3, Math.max(start, Math.PI) - Math.PI, Math.min(stop, turn) - Math.PI);
        reachesEast[head] = start < ANGLE_SLACK_RAD || stop > turn - ANGLE_SLACK_RAD;
        reachesWest[head] = start < Math.PI + ANGLE_SLACK_RAD && stop > Math.PI - ANGLE_SLACK_RAD
                || stop > 3 * Math.PI - ANGLE_SLACK_RAD;
    }

    /** The arc by bearings, as the model has it: clockwise from north, then a clockwise sweep. */
    public void arcByBearing(int head, double startDeg, double clockwiseDeg) {
        arc(head, Math.toRadians(90 - startDeg - clockwiseDeg), Math.toRadians(clockwiseDeg));
    }

    /** Directions from {@code a} to {@code b}, 0 east and π west, over the north. */
    private void north(int k, double a, double b) {
        boolean none = a >= b;
        west[k] = none ? Double.POSITIVE_INFINITY : b >= Math.PI ? Double.NEGATIVE_INFINITY : cotangent(b);
        east[k] = none ? Double.NEGATIVE_INFINITY : a <= 0 ? Double.POSITIVE_INFINITY : cotangent(a);
    }

    /** Directions from {@code a} to {@code b}, 0 west and π east, over the south. */
    private void south(int k, double a, double b) {
        boolean none = a >= b;
        west[k] = none ? Double.POSITIVE_INFINITY : a <= 0 ? Double.NEGATIVE_INFINITY : -cotangent(a);
        east[k] = none ? Double.NEGATIVE_INFINITY : b >= Math.PI ? Double.POSITIVE_INFINITY : -cotangent(b);
    }

    private static double cotangent(double angleRad) {
        return Math.cos(angleRad) / Math.sin(angleRad);
    }

    /** Makes {@code head} like one of other arrays. */
    public void copy(int head, HeadArrays other, int otherHead) {
        xM[head] = other.xM[otherHead];
        yM[head] = other.yM[otherHead];
        radiusM[head] = other.radiusM[otherHead];
        sweepRad[head] = other.sweepRad[otherHead];
        meanRateMPerS[head] = other.meanRateMPerS[otherHead];
        profile[head] = other.profile[otherHead];
        System.arraycopy(other.west, INTERVALS * otherHead, west, INTERVALS * head, INTERVALS);
        System.arraycopy(other.east, INTERVALS * otherHead, east, INTERVALS * head, INTERVALS);
        reachesEast[head] = other.reachesEast[otherHead];
        reachesWest[head] = other.reachesWest[otherHead];
    }

    public double xM(int head) {
        return xM[head];
    }

    public double yM(int head) {
        return yM[head];
    }

    public double radiusM(int head) {
        return radiusM[head];
    }

    public double meanRateMPerS(int head) {
        return meanRateMPerS[head];
    }

    public double mostMeanRateMPerS() {
        double most = 0;
        for (double rate : meanRateMPerS) {
            most = Math.max(most, rate);
        }
        return most;
    }

    public DepthCurve profile(int head) {
        return profile[head];
    }

    public double wettedAreaM2(int head) {
        return sweepRad[head] * radiusM[head] * radiusM[head] / 2;
    }

    double west(int interval) {
        return west[interval];
    }

    double east(int interval) {
        return east[interval];
    }

    boolean reachesEast(int head) {
        return reachesEast[head];
    }

    boolean reachesWest(int head) {
        return reachesWest[head];
    }
}
