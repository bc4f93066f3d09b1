package leat.calc.placement.internal;

import java.util.Arrays;

/**
 * Finds what a head at a spot may wet: the directions in which it throws on nothing that must stay dry, cut down to where it
 * throws on the surface. Directions are kept in steps of half a degree.
 */
final class ThrowFinder {

    private static final int STEPS = 720;
    private static final double STEP_DEG = 360.0 / STEPS;

    /** An edge of the arc this near to a side of the surface is drawn along that side. */
    private static final double SNAP_DEG = 4;

    /** An arc ends where less than this share of its edge falls on planting. */
    private static final double LEAST_SHARE = 0.3;

    /** A gap of a few degrees is worth nobody's time where nothing must stay dry. */
    private static final double ALMOST_FULL_DEG = 340;

    /** Radii tried between the full one and the least. */
    private static final int RADII = 6;

    private static final double HALF_CELL_DEG = Math.toDegrees(0.5);

    private final Plot plot;
    private final boolean[] blocked = new boolean[STEPS];
    private final double[] planted = new double[STEPS];
    private final double[] bare = new double[STEPS];
    private final double[] onTarget = new double[STEPS];

    /** The arc found last: bearing of its start, clockwise sweep, and weight of the surface in it. */
    private double startDeg;

    private double sweepDeg;
    private double weight;
    private boolean anyBlocked;
    private double radiusM;

    ThrowFinder(Plot plot) {
        this.plot = plot;
    }

    double startDeg() {
        return startDeg;
    }

    double sweepDeg() {
        return sweepDeg;
    }

    double radiusM() {
        return radiusM;
    }

    /** The radius and the arc with which a head of the family reaches most of the surface from the spot; false if none. */
    boolean findBest(Spot spot, Offer offer) {
        double bestWeight = 0;
        double bestStart = 0;
        double bestSweep = 0;
        double bestRadius = 0;
        for (int i = 0; i < RADII; i++) {
            double tried = offer.radiusM() - (offer.radiusM() - offer.leastRadiusM()) * i / (RADII - 1);
            // A shorter throw has to gain something: 2 % keeps the full radius where nothing speaks against it.
            if (find(spot, offer, tried) && weight > 1.02 * bestWeight) {
                bestWeight = weight;
                bestStart = startDeg;
                bestSweep = sweepDeg;
                bestRadius = tried;
            }
            if (!anyBlocked) {
                break; // less radius would only reach less
            }
        }
        startDeg = bestStart;
        sweepDeg = bestSweep;
        radiusM = bestRadius;
        return bestWeight > 0;
    }

    /** The same for one radius. */
    boolean find(Spot spot, Offer offer, double withRadiusM) {
        radiusM = withRadiusM;
        look(spot);
        weight = 0;
        int start = firstEdge();
        if (start < 0) {
            return chooseAll(offer);
        }
        int at = 0;
        while (at < STEPS) {
            int from = start + at;
            if (blocked[from % STEPS]) {
                at++;
                continue;
            }
            int length = 1;
            while (at + length < STEPS && !blocked[(from + length) % STEPS]) {
                length++;
            }
            consider(spot, offer, from, length);
            at += length;
        }
        return weight > 0;
    }

    private void look(Spot spot) {
        Arrays.fill(blocked, false);
        anyBlocked = false;
        Arrays.fill(planted, 0);
        Arrays.fill(bare, 0);
        Arrays.fill(onTarget, 0);
        double cellM = plot.grid().cellM();
        // A cell whose centre lies just past the rim is still half within reach.
        double farM = radiusM + cellM / 2;
        int firstRow = Math.max(0, (int) ((spot.yM() - farM - plot.grid().southM()) / cellM));
        int lastRow = Math.min(
                plot.grid().rows() - 1, (int) ((spot.yM() + farM - plot.grid().southM()) / cellM));
        int firstColumn = Math.max(0, (int) ((spot.xM() - farM - plot.grid().westM()) / cellM));
        int lastColumn = Math.min(plot.grid().columns() - 1, (int)
                ((spot.xM() + farM - plot.grid().westM()) / cellM));
        for (int row = firstRow; row <= lastRow; row++) {
            double north = plot.grid().centreYM(row) - spot.yM();
            for (int column = firstColumn; column <= lastColumn; column++) {
                double east = plot.grid().centreXM(column) - spot.xM();
                double away = Math.sqrt(east * east + north * north);
                if (away <= farM && away > 0) {
                    note(plot.cover(row, column), Math.toDegrees(Math.atan2(east, north)), away, cellM);
                }
            }
        }
    }

    /** A cell fills the directions that it spans, seen from the head. */
    private void note(byte cover, double bearingDeg, double away, double cellM) {
        double halfDeg = Math.min(90, HALF_CELL_DEG * cellM / away);
        int from = (int) Math.floor((bearingDeg - halfDeg) / STEP_DEG);
        int end = Math.max(from + 1, (int) Math.ceil((bearingDeg + halfDeg) / STEP_DEG));
        end = Math.min(end, from + STEPS);
        double share = 1.0 / (end - from);
        for (int k = from; k < end; k++) {
            int step = Math.floorMod(k, STEPS);
            if (cover == Plot.DRY) {
                blocked[step] = true;
                anyBlocked = true;
            } else if (cover == Plot.BARE) {
                bare[step] += share;
            } else {
                planted[step] += share;
                onTarget[step] += cover == Plot.TARGET ? share : 0;
            }
        }
    }

    /** A step after a blocked one or, if none is blocked, after one that is not worth it; -1 if all are worth it. */
    private int firstEdge() {
        for (int step = 0; step < STEPS; step++) {
            if (blocked[step]) {
                return step;
            }
        }
        for (int step = 0; step < STEPS; step++) {
            if (!isWorth(step)) {
                return step;
            }
        }
        return -1;
    }

    private boolean chooseAll(Offer offer) {
        if (offer.mostArcDeg() < 360) {
            return false;
        }
        startDeg = 0;
        sweepDeg = 360;
        weight = Arrays.stream(onTarget).sum();
        return weight > 0;
    }

    private void consider(Spot spot, Offer offer, int firstStep, int length) {
        int from = firstStep;
        int end = firstStep + length;
        while (from < end && !isWorth(from % STEPS)) {
            from++;
        }
        while (end > from && !isWorth((end - 1) % STEPS)) {
            end--;
        }
        double a = edge(spot, from * STEP_DEG, end * STEP_DEG, true);
        double b = edge(spot, end * STEP_DEG, from * STEP_DEG, false);
        double sweep = b - a;
        if (sweep > 360 || !anyBlocked && sweep > ALMOST_FULL_DEG && offer.mostArcDeg() >= 360) {
            a = 0;
            sweep = 360;
            from = 0;
            end = STEPS;
        }
        if (sweep > offer.mostArcDeg()) {
            a += (sweep - offer.mostArcDeg()) / 2;
            sweep = offer.mostArcDeg();
        }
        double found = 0;
        for (int step = from; step < end; step++) {
            found += onTarget[step % STEPS];
        }
        if (end > from && sweep >= offer.leastArcDeg() && found > weight) {
            weight = found;
            startDeg = rounded(a - 360 * Math.floor(a / 360));
            sweepDeg = Math.min(360, rounded(sweep));
        }
    }

    /** Bearings of sides come from arcs of tangent: a right angle is to be one. */
    private static double rounded(double deg) {
        return Math.rint(deg * 1e6) / 1e6;
    }

    /** Along a side of the surface where one is near, else the whole degree inside. */
    private static double edge(Spot spot, double atDeg, double otherDeg, boolean isStart) {
        for (double side : spot.sideDeg()) {
            double turned = side + 360 * Math.rint((atDeg - side) / 360);
            if (Math.abs(turned - atDeg) <= SNAP_DEG && (isStart ? turned < otherDeg : turned > otherDeg)) {
                return turned;
            }
        }
        return isStart ? Math.ceil(atDeg) : Math.floor(atDeg);
    }

    private boolean isWorth(int step) {
        return onTarget[step] > 0 && planted[step] >= LEAST_SHARE * (planted[step] + bare[step]);
    }
}
