package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Chooses few heads that reach every cell of a plot as often as wanted. Each family in turn: heads a throw apart or somewhat
 * nearer, more where reaches are missing, fewer where one can be spared. The best of these starts are then improved by moving, sparing and merging heads.
 * What no single family reaches, the others may fill. At last the heads are spread evenly.
 */
public final class Search {

    /** Spots to choose among lie a third of the radius apart, but no more than this many on the whole. */
    private static final double STEP_OVER_RADIUS = 1.0 / 3;

    /** Heads at first stand these shares of a throw apart: where a throw does not fit the sides, less often does. */
    private static final double[] SPACINGS = {1, 0.85, 0.7};

    private static final int MOST_SPOTS = 1500;
    private static final int MOST_HEADS = 500;

    /** Starts beyond the best six are not improved. */
    private static final int IMPROVED = 6;

    /** A change must lower the cost by this much; regular rows are worth more than a hundredth. */
    private static final double WORTH = 0.01;

    private final Plot plot;
    private final Given given;
    private final BooleanSupplier stopped;
    private final Spots spots;
    private final double reserveRatio;
    private final double paceRatio;
    private final int effort;
    private int spent;
    private boolean cutShort;
    private final List<Trial> trials = new ArrayList<>();

    private record Trial(Offer offer, Pool pool, Layout layout, double cost) {}

    /**
     * @param reserveRatio share of the radius on which reach may not count, 0 or more and less than 1
     * @param paceRatio    heads that water so many times as fast as others, or more, cannot run with them
     * @param effort       most changes that are tried in improving
     */
    public Search(Plot plot, Given given, double reserveRatio, double paceRatio, int effort, BooleanSupplier stopped) {
        this.paceRatio = paceRatio;
        this.plot = plot;
        this.given = given;
        this.reserveRatio = reserveRatio;
        this.effort = effort;
        this.stopped = stopped;
        spots = new Spots(plot);
    }

    /** @param lattice places of heads are rounded to it where no reach is lost */
    public Found run(List<Offer> offers, Lattice lattice) {
        List<Offer> left = new ArrayList<>();
        Layout best = choose(offers, left);
        new Evening(plot, spots, reserveRatio, best, lattice, effort, this::stops).run();
        return new Found(
                Found.standsOf(best.chosen()), best.missing(), HeadBound.least(plot, given, pools(), left), cutShort);
    }

    /** @param left gets the families that were not tried */
    Layout choose(List<Offer> offers, List<Offer> left) {
        List<Offer> farFirst = new ArrayList<>(offers);
        farFirst.sort(Comparator.comparingDouble(Offer::radiusM).reversed().thenComparingInt(Offer::rank));
        for (Offer offer : farFirst) {
            if (!trials.isEmpty() && (stops() || isHopeless(offer))) {
                left.add(offer);
            } else {
                trials.addAll(starts(offer));
            }
        }
        trials.sort(Search::compare);
        for (int i = 0; i < Math.min(IMPROVED, trials.size()); i++) {
            Trial trial = trials.get(i);
            improve(trial);
            trials.set(i, new Trial(trial.offer, trial.pool, trial.layout, trial.layout.cost()));
        }
        trials.sort(Search::compare);
        Layout best = trials.get(0).layout;
        for (Trial other : trials) {
            fill(best, other.pool);
        }
        for (Offer offer : left) {
            if (best.missing() > 0 && !stops()) {
                fill(best, pool(offer));
            }
        }
        fillOnLines(best, offers);
        spare(best);
        return best;
    }

    /** What heads off the lines in the ground cannot reach, heads near them may. */
    private void fillOnLines(Layout best, List<Offer> offers) {
        for (Offer offer : offers) {
            if (best.missing() > 0 && !plot.lines().isNothing() && !stops()) {
                fill(best, pool(offer, KeepOff.NOTHING));
            }
        }
    }

    private static int compare(Trial a, Trial b) {
        int byMissing = Integer.compare(a.layout.missing(), b.layout.missing());
        int byCost = Double.compare(a.cost, b.cost);
        return byMissing != 0 ? byMissing : byCost != 0 ? byCost : Integer.compare(a.offer.rank(), b.offer.rank());
    }

    /**
     * Whether a family throws so short that it needs too many heads to be worth a trial: at least twice as many as the areas
     * demand, which regular rows come near to from above.
     */
    private boolean isHopeless(Offer offer) {
        Trial best = Collections.min(trials, Search::compare);
        double areas = plot.wanted() * plot.targetCells() / HeadBound.cellsWithinReach(plot, offer);
        return best.layout.missing() == 0 && Math.log(2 * areas) > best.cost;
    }

    /** Of the families that were tried; starts of one family share theirs. */
    private List<Pool> pools() {
        return trials.stream().map(Trial::pool).distinct().toList();
    }

    private Pool pool(Offer offer) {
        return pool(offer, plot.lines());
    }

    private Pool pool(Offer offer, KeepOff lines) {
        double evenM = Math.sqrt(plot.targetCells() * plot.grid().cellAreaM2() / MOST_SPOTS);
        var pool = new Pool(plot, reserveRatio, lines);
        pool.addAll(spots.dense(Math.max(STEP_OVER_RADIUS * offer.radiusM(), evenM)), offer);
        return pool;
    }

    /** Layouts of that family alone; one without heads where given ones do. */
    private List<Trial> starts(Offer offer) {
        Layout bare = layout();
        if (bare.missing() == 0) {
            return List.of(new Trial(offer, new Pool(plot, reserveRatio), bare, bare.cost()));
        }
        Pool pool = pool(offer);
        List<Trial> starts = new ArrayList<>();
        for (double share : SPACINGS) {
            Layout layout = start(offer, pool, share * offer.radiusM() * (1 - reserveRatio));
            starts.add(new Trial(offer, pool, layout, layout.cost()));
        }
        return starts;
    }

    private Layout layout() {
        return new Layout(plot, given, paceRatio, MOST_HEADS);
    }

    /** Heads that far apart, more where reaches are missing, without those that can be spared. */
    private Layout start(Offer offer, Pool pool, double apartM) {
        Layout layout = layout();
        for (Spot spot : spots.headToHead(apartM)) {
            Optional<Candidate> head = pool.best(spot, offer);
            head.ifPresent(pool::add);
            head.filter(one -> !layout.isFull() && layout.isFree(one.spot(), -1) && gain(one, layout.wanting()) > 0)
                    .ifPresent(layout::add);
        }
        fill(layout, pool);
        spare(layout);
        return layout;
    }

    private static int gain(Candidate candidate, long[] wanting) {
        int gain = 0;
        for (int word = 0; word < wanting.length; word++) {
            gain += Long.bitCount(candidate.bits()[word] & wanting[word]);
        }
        return gain;
    }

    /** Adds the head that brings most, again and again. */
    private void fill(Layout layout, Pool pool) {
        while (layout.missing() > 0 && !layout.isFull() && !stops()) {
            long[] wanting = layout.wanting();
            @Nullable Candidate best = null;
            int bestGain = 0;
            for (Candidate one : pool.candidates()) {
                int gain = gain(one, wanting);
                boolean better = gain > bestGain || gain == bestGain && best != null && one.bare() < best.bare();
                if (gain > 0 && better && layout.isFree(one.spot(), -1)) {
                    best = one;
                    bestGain = gain;
                }
            }
            if (best == null) {
                return;
            }
            layout.add(best);
        }
    }

    /** Takes out heads that are missed least, as long as no reach is lost and the cost falls. */
    private void spare(Layout layout) {
        while (!stops()) {
            double cost = layout.cost();
            double bestCost = cost - WORTH;
            int best = -1;
            for (int i = 0; i < layout.size(); i++) {
                if (layout.missingWith(i, null) <= layout.missing()) {
                    Candidate head = layout.chosen().get(i);
                    layout.remove(i);
                    double without = layout.cost();
                    layout.add(head);
                    swapBack(layout, i);
                    if (without < bestCost) {
                        bestCost = without;
                        best = i;
                    }
                }
            }
            if (best < 0) {
                return;
            }
            layout.remove(best);
        }
    }

    /** After a head was taken out and added again it is the last: puts it back to its place. */
    private static void swapBack(Layout layout, int index) {
        int last = layout.size() - 1;
        if (index != last) {
            Candidate moved = layout.chosen().get(index);
            Candidate head = layout.chosen().get(last);
            layout.replace(index, head);
            layout.replace(last, moved);
        }
    }

    private void improve(Trial trial) {
        boolean better = true;
        while (better && !stops() && spent < effort) {
            better = false;
            for (int i = 0; i < trial.layout.size() && spent < effort && !stops(); i++) {
                better |= move(trial, i);
            }
            int before = trial.layout.size();
            for (int i = 0; i < trial.layout.size(); i++) {
                for (int j = i + 1; j < trial.layout.size() && spent < effort && !stops(); j++) {
                    merge(trial, i, j);
                }
            }
            spare(trial.layout);
            better |= trial.layout.size() < before;
        }
    }

    /** Moves a head to the best spot near it, if that is worth it. */
    private boolean move(Trial trial, int index) {
        Layout layout = trial.layout;
        Candidate from = layout.chosen().get(index);
        int missing = layout.missing();
        double bestCost = layout.cost() - WORTH;
        @Nullable Candidate best = null;
        for (Candidate to : trial.pool.candidates()) {
            if (to.awayM(from) > 0.75 * from.radiusM() || spent >= effort || !layout.isFree(to.spot(), index)) {
                continue;
            }
            int then = layout.missingWith(index, to);
            if (then > missing) {
                continue;
            }
            spent++;
            layout.replace(index, to);
            double cost = layout.cost();
            layout.replace(index, from);
            if (then < missing || cost < bestCost) {
                best = to;
                bestCost = cost;
                missing = then;
            }
        }
        if (best != null) {
            layout.replace(index, best);
        }
        return best != null;
    }

    /** Puts one head in the place of two neighbours, if no reach is lost and it is worth it. */
    private void merge(Trial trial, int first, int second) {
        Layout layout = trial.layout;
        Candidate a = layout.chosen().get(first);
        Candidate b = layout.chosen().get(second);
        if (a.awayM(b) > 0.75 * Math.max(a.radiusM(), b.radiusM())) {
            return;
        }
        int missing = layout.missing();
        double bestCost = layout.cost() - WORTH;
        layout.remove(second);
        @Nullable Candidate best = null;
        for (Candidate to : trial.pool.candidates()) {
            boolean between = to.awayM(a) + to.awayM(b) <= 1.5 * a.radiusM();
            if (between
                    && layout.isFree(to.spot(), first)
                    && layout.missingWith(first, to) <= missing
                    && spent < effort) {
                spent++;
                layout.replace(first, to);
                double cost = layout.cost();
                layout.replace(first, a);
                if (cost < bestCost) {
                    best = to;
                    bestCost = cost;
                }
            }
        }
        if (best == null) {
            layout.add(b);
            swapBack(layout, second);
        } else {
            layout.replace(first, best);
        }
    }

    private boolean stops() {
        cutShort |= stopped.getAsBoolean();
        return cutShort;
    }
}
