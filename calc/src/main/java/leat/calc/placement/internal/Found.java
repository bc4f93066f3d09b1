package leat.calc.placement.internal;

import java.util.Comparator;
import java.util.List;

/**
 * What a search found.
 *
 * @param stands     around the surface: along the border from its first corner, inner heads where they are nearest to it
 * @param missing    reaches that are missing
 * @param least      no choice among the heads that were considered has fewer
 * @param cutShort   whether it was stopped
 */
public record Found(List<Stand> stands, int missing, int least, boolean cutShort) {

    /**
     * A head where it stands.
     *
     * @param startDeg bearing of the edge from which its arc runs clockwise
     */
    public record Stand(Offer offer, double xM, double yM, double radiusM, double startDeg, double sweepDeg) {}

    static List<Stand> standsOf(List<Candidate> chosen) {
        return chosen.stream()
                .sorted(Comparator.<Candidate>comparingDouble(one -> one.spot().station())
                        .thenComparingDouble(one -> one.spot().xM())
                        .thenComparingDouble(one -> one.spot().yM()))
                .map(one -> new Stand(
                        one.offer(), one.spot().xM(), one.spot().yM(), one.radiusM(), one.startDeg(), one.sweepDeg()))
                .toList();
    }

    public Found {
        stands = List.copyOf(stands);
    }
}
