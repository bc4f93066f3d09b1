package leat.calc.placement.internal;

/**
 * A head that might be placed.
 *
 * @param startDeg bearing of the edge from which its arc runs clockwise
 * @param bits     set of cells of the surface that it reaches; not to be changed
 * @param reached  number of these
 * @param bare     number of cells that it throws on for nothing
 */
record Candidate(
        Spot spot, Offer offer, double radiusM, double startDeg, double sweepDeg, long[] bits, int reached, int bare) {

    double flowM3PerS() {
        return offer.flowM3PerS(radiusM, sweepDeg);
    }

    double awayM(Candidate other) {
        return Math.hypot(spot.xM() - other.spot.xM(), spot.yM() - other.spot.yM());
    }
}
