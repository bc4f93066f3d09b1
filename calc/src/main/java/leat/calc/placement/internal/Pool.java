package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leat.calc.internal.cells.HeadArrays;

/** Heads that might be placed on a plot, each with the cells of the surface that it reaches as a set of bits. */
final class Pool {

    /** An arc drawn along a side may graze what must stay dry: it is cut by so many degrees at most, then given up. */
    private static final int MOST_CUT_DEG = 6;

    private final Plot plot;
    private final KeepOff lines;
    private final double reserveRatio;
    private final ThrowFinder finder;
    private final HeadArrays probe = new HeadArrays(1);
    private final ReachMarks marks;
    private final List<Candidate> candidates = new ArrayList<>();

    /** @param reserveRatio share of the radius on which reach may not count, 0 or more and less than 1 */
    Pool(Plot plot, double reserveRatio) {
        this(plot, reserveRatio, plot.lines());
    }

    /** @param lines that heads keep off */
    Pool(Plot plot, double reserveRatio, KeepOff lines) {
        this.lines = lines;
        this.plot = plot;
        this.reserveRatio = reserveRatio;
        finder = new ThrowFinder(plot);
        marks = new ReachMarks(plot, probe);
    }

    void add(Candidate candidate) {
        candidates.add(candidate);
    }

    /** Adds the best head of the family for each spot where one can stand. */
    void addAll(List<Spot> spots, Offer offer) {
        spots.forEach(spot -> best(spot, offer).ifPresent(candidates::add));
    }

    List<Candidate> candidates() {
        return candidates;
    }

    Optional<Candidate> best(Spot spot, Offer offer) {
        if (!lines.allows(spot.xM(), spot.yM()) || !finder.findBest(spot, offer)) {
            return Optional.empty();
        }
        double start = finder.startDeg();
        double sweep = finder.sweepDeg();
        Optional<Candidate> found = made(spot, offer, start, sweep);
        for (int cut = 1; cut <= MOST_CUT_DEG && found.isEmpty(); cut++) {
            found = made(spot, offer, start, sweep - cut);
            if (found.isEmpty()) {
                found = made(spot, offer, start + cut, sweep - cut);
            }
            if (found.isEmpty()) {
                found = made(spot, offer, start + cut, sweep - 2 * cut);
            }
        }
        return found;
    }

    /** Empty if it would throw on what must stay dry, or on nothing of the surface. */
    private Optional<Candidate> made(Spot spot, Offer offer, double startDeg, double sweepDeg) {
        if (sweepDeg < offer.leastArcDeg()) {
            return Optional.empty();
        }
        double radiusM = finder.radiusM();
        probe.place(0, spot.xM(), spot.yM());
        probe.radius(0, radiusM);
        probe.arcByBearing(0, startDeg, sweepDeg);
        long[] bits = new long[(plot.targetCells() + 63) / 64];
        marks.mark(0, bits);
        int bare = marks.bare();
        int dry = marks.dry();
        if (reserveRatio > 0) {
            Arrays.fill(bits, 0);
            probe.radius(0, radiusM * (1 - reserveRatio));
            marks.mark(0, bits);
        }
        int reached = 0;
        for (long word : bits) {
            reached += Long.bitCount(word);
        }
        if (dry > 0 || reached == 0) {
            return Optional.empty();
        }
        return Optional.of(new Candidate(spot, offer, radiusM, startDeg, sweepDeg, bits, reached, bare));
    }
}
