package leat.calc.placement.internal;

import java.util.Arrays;

/**
 * Finds what a head at a spot may wet: the directions in which it throws on nothing that must stay dry, cut down to where it
 * throws on the surface. Directions are kept in steps of half a degree.
 */
final class ThrowFinder {

    private static final int STEPS = CellsAround.STEPS;
    private static final double STEP_DEG = CellsAround.STEP_DEG;

    /** An edge of the arc this near to a side of the surface is drawn along that side. */
    private static final double SNAP_DEG = 4;

    /** An arc ends where less than this share of its edge falls on planting. */
    private static final double LEAST_SHARE = 0.3;

    /** A gap of a few degrees is worth nobody's time where nothing must stay dry. */
    private static final double ALMOST_FULL_DEG = 340;

    /** Radii tried between the full one and the least. */
    private static final int RADII = 6;

    /** A shorter throw has to gain something: the full radius is kept where nothing speaks against it. */
    private static final double WORTH_SHORTENING = 1.02;

    /** More than rounding in a sum of shares comes to. */
    private static final double ROUNDING = 1 + 1e-9;

    /** A cell whose centre lies past the rim by no more than this is still half within reach. */
    private final double halfCellM;

    private final CellsAround around;
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
        halfCellM = plot.grid().cellM() / 2;
        around = new CellsAround(plot);
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
        around.look(spot, offer.radiusM() + halfCellM);
        for (int i = 0; i < RADII; i++) {
            double tried = offer.radiusM() - (offer.radiusM() - offer.leastRadiusM()) * i / (RADII - 1);
            double least = WORTH_SHORTENING * bestWeight;
            if (around.targetsWithin(tried + halfCellM) * ROUNDING < least) {
                break; // nor will a still shorter throw reach more than all that lies so near
            }
            if (find(spot, offer, tried) && weight > least) {
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

    /** The best arc for one radius. */
    private boolean find(Spot spot, Offer offer, double withRadiusM) {
        fillDirections(withRadiusM + halfCellM);
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

    private void fillDirections(double withinM) {
        Arrays.fill(blocked, false);
        anyBlocked = false;
        Arrays.fill(planted, 0);
        Arrays.fill(bare, 0);
        Arrays.fill(onTarget, 0);
        for (int cell = 0; cell < around.count(); cell++) {
            if (around.awayM(cell) <= withinM) {
                int from = around.firstStep(cell);
                int end = from + around.steps(cell);
                double share = 1.0 / around.steps(cell);
                note(around.cover(cell), share, from, Math.min(end, STEPS));
                note(around.cover(cell), share, 0, end - STEPS);
            }
        }
    }

    /** A cell fills the directions that it spans. */
    private void note(byte cover, double share, int from, int end) {
        if (cover == Plot.DRY) {
            for (int step = from; step < end; step++) {
                blocked[step] = true;
            }
            anyBlocked = true;
        } else if (cover == Plot.BARE) {
            add(share, bare, from, end);
        } else {
            add(share, planted, from, end);
            if (cover == Plot.TARGET) {
                add(share, onTarget, from, end);
            }
        }
    }

    private static void add(double share, double[] sums, int from, int end) {
        for (int step = from; step < end; step++) {
            sums[step] += share;
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
