package leat.calc.placement.internal;

/**
 * Where a head may stand.
 *
 * @param sideDeg bearings of the sides of the surface that run from here, where it stands on the border; arcs are drawn along them
 * @param station how far along the border it stands, or the nearest spot of the border; to number heads around the surface
 */
record Spot(double xM, double yM, double[] sideDeg, double station) {

    double awayM(Spot other) {
        return Math.hypot(xM - other.xM, yM - other.yM);
    }
}
