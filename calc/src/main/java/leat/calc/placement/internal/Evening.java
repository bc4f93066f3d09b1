package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Spreads the heads of a layout evenly: those on the border slide along their side, those within go anywhere; those in corners
 * stay, and those near a corner or the border go there first. At last places are rounded. No reach is lost, no two heads come nearer than the nearest two stood, and evenness of water
 * is traded against evenness of places at a fixed rate.
 */
final class Evening {

    /** A move must be worth this much. */
    private static final double WORTH = 1e-4;

    /** A head this share of its radius from the border, or on the border from a corner, belongs there. */
    private static final double NEAR = 0.25;

    /** What that may cost. */
    private static final double TIDYING_COST = 0.03;

    /** What rounding may cost. */
    private static final double ROUNDING_COST = 0.01;

    private static final int MOST_ROUNDS = 20;

    /** Shares of the radius by which heads are moved. */
    private static final double[] STEPS = {0.4, 0.2, 0.1, 0.05, 0.02};

    private static final int DIRECTIONS = 8;

    private final Spots spots;
    private final Pool pool;
    private final Layout layout;
    private final Lattice lattice;
    private final int effort;
    private final BooleanSupplier stopped;
    private final double leastApartM;
    private int spent;

    /** The head at each place that was looked at: most rounds look at the places around heads that have not moved. */
    private final Map<Place, Optional<Candidate>> seen = new HashMap<>();

    /** What a head depends on; the sides beside a spot follow from its station. */
    private record Place(double xM, double yM, double station, boolean onBorder, int offerRank) {
        static Place of(Spot spot, Offer offer) {
            return new Place(spot.xM(), spot.yM(), spot.station(), spot.sideDeg().length > 0, offer.rank());
        }
    }

    /**
     * @param lattice places are rounded to multiples of it, on the border measured along it from the last corner
     * @param effort   most places that are tried
     */
    Evening(
            Plot plot,
            Spots spots,
            double reserveRatio,
            Layout layout,
            Lattice lattice,
            int effort,
            BooleanSupplier stopped) {
        this.spots = spots;
        this.layout = layout;
        this.lattice = lattice;
        this.effort = effort;
        this.stopped = stopped;
        pool = new Pool(plot, reserveRatio);
        leastApartM = IntStream.range(0, layout.size())
                .mapToDouble(i -> layout.nearestM(layout.chosen().get(i).spot(), i))
                .min()
                .orElse(0);
    }

    void run() {
        tidy();
        spread();
        tidy();
        for (int head : aroundTheSurface()) {
            tryInTurn(head, rounded(head), ROUNDING_COST);
        }
    }

    /** Heads near a corner or the border go there. */
    private void tidy() {
        for (int head : aroundTheSurface()) {
            double nearM = NEAR * layout.chosen().get(head).radiusM();
            tryInTurn(head, spots.attracting(spot(head), nearM), TIDYING_COST);
        }
    }

    private void spread() {
        boolean moved = true;
        for (int round = 0; moved && round < MOST_ROUNDS; round++) {
            moved = false;
            for (int head : aroundTheSurface()) {
                moved |= move(head);
            }
        }
    }

    /** Takes the first of the places that is allowed and does not cost more than that. */
    private void tryInTurn(int head, List<Spot> places, double mayCost) {
        Candidate from = layout.chosen().get(head);
        double most = layout.cost() + mayCost;
        for (Spot to : places) {
            if (to.xM() == from.spot().xM() && to.yM() == from.spot().yM() || stopped.getAsBoolean()) {
                return;
            }
            Optional<Candidate> moved = allowed(head, to);
            if (moved.isPresent()) {
                layout.replace(head, moved.get());
                if (layout.cost() <= most) {
                    return;
                }
                layout.replace(head, from);
            }
        }
    }

    /** By station, so that a row is evened from one end to the other. */
    private int[] aroundTheSurface() {
        return IntStream.range(0, layout.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> spot(i).station())
                        .thenComparingDouble(i -> spot(i).xM())
                        .thenComparingDouble(i -> spot(i).yM()))
                .mapToInt(i -> i)
                .toArray();
    }

    private Spot spot(int head) {
        return layout.chosen().get(head).spot();
    }

    /** Moves a head to the best of the places around it; returns whether one was better. */
    private boolean move(int head) {
        Candidate from = layout.chosen().get(head);
        double bestCost = layout.cost() - WORTH;
        @Nullable Candidate best = null;
        for (Spot to : around(head)) {
            if (spent >= effort || stopped.getAsBoolean()) {
                break;
            }
            Optional<Candidate> moved = allowed(head, to);
            if (moved.isPresent()) {
                layout.replace(head, moved.get());
                double cost = layout.cost();
                layout.replace(head, from);
                if (cost < bestCost) {
                    bestCost = cost;
                    best = moved.get();
                }
            }
        }
        if (best != null) {
            layout.replace(head, best);
        }
        return best != null;
    }

    /** The head of the same family at another place, unless a reach or the full circle were lost or it came too near to another. */
    private Optional<Candidate> allowed(int head, Spot to) {
        spent++;
        Candidate before = layout.chosen().get(head);
        if (!layout.isFree(to, head) || layout.nearestM(to, head) < leastApartM) {
            return Optional.empty();
        }
        return seen.computeIfAbsent(Place.of(to, before.offer()), place -> pool.best(to, before.offer()))
                .filter(one -> one.sweepDeg() == 360 || before.sweepDeg() < 360)
                .filter(one -> layout.missingWith(head, one) <= layout.missing());
    }

    private List<Spot> around(int head) {
        Spot from = spot(head);
        double radiusM = layout.chosen().get(head).radiusM();
        Optional<Border> border = spots.borderOf(from);
        List<Spot> around = new ArrayList<>();
        if (border.isPresent()) {
            double[] room = room(head, border.get());
            addWithin(around, border.get(), room, (room[0] + room[1]) / 2);
            for (double step : STEPS) {
                addWithin(around, border.get(), room, from.station() - step * radiusM);
                addWithin(around, border.get(), room, from.station() + step * radiusM);
            }
            return around;
        }
        for (double step : STEPS) {
            for (int i = 0; i < DIRECTIONS; i++) {
                double turn = 2 * Math.PI * i / DIRECTIONS;
                spots.inner(
                                from.xM() + step * radiusM * StrictMath.cos(turn),
                                from.yM() + step * radiusM * StrictMath.sin(turn))
                        .ifPresent(around::add);
            }
        }
        return around;
    }

    private static void addWithin(List<Spot> around, Border border, double[] room, double station) {
        if (station > room[0] && station < room[1] && border.has(station)) {
            around.add(border.at(station));
        }
    }

    /** From the last corner or head before one on the border to the next behind it; nothing for a head in a corner. */
    private double[] room(int head, Border border) {
        double here = spot(head).station();
        double before = Double.NEGATIVE_INFINITY;
        double behind = Double.POSITIVE_INFINITY;
        double[] corners = border.cornerStations(Spots.CORNER_DEG);
        for (double corner : corners) {
            if (Math.abs(corner - here) < 1e-6) {
                return new double[] {here, here};
            }
            before = corner < here ? Math.max(before, corner) : before;
            behind = corner > here ? Math.min(behind, corner) : behind;
        }
        // Beyond the last corner the border runs on to where it began.
        behind = Math.min(behind, border.endStation() + corners[0] - border.firstStation());
        for (int other = 0; other < layout.size(); other++) {
            double there = spot(other).station();
            if (other != head && spot(other).sideDeg().length > 0 && border.has(there)) {
                before = there < here ? Math.max(before, there) : before;
                behind = there > here ? Math.min(behind, there) : behind;
            }
        }
        return new double[] {before, behind};
    }

    /** Round places near a head, the nearest first. */
    private List<Spot> rounded(int head) {
        Spot from = spot(head);
        Optional<Border> border = spots.borderOf(from);
        List<Spot> rounded = new ArrayList<>();
        if (border.isPresent()) {
            double[] room = room(head, border.get());
            double corner = border.get().cornerBefore(from.station());
            for (int further : new int[] {0, 1, -1, 2, -2}) {
                addWithin(rounded, border.get(), room, corner + lattice.near(from.station() - corner, further));
            }
            return rounded.stream().map(this::cleaned).toList();
        }
        for (int east = -1; east <= 1; east++) {
            for (int north = -1; north <= 1; north++) {
                spots.inner(lattice.near(from.xM(), east), lattice.near(from.yM(), north))
                        .ifPresent(rounded::add);
            }
        }
        rounded.sort(Comparator.comparingDouble(to -> Math.hypot(to.xM() - from.xM(), to.yM() - from.yM())));
        return rounded;
    }

    private Spot cleaned(Spot spot) {
        return new Spot(lattice.cleaned(spot.xM()), lattice.cleaned(spot.yM()), spot.sideDeg(), spot.station());
    }
}
