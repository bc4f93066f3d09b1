package leat.calc.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import leat.model.id.WireEndId;
import leat.model.site.Phase;

/**
 * Which thing is wired from which: the shortest wire along given trenches, each thing from what is wired already. Things
 * of now are never wired from things of later. Exact for one phase and no switches (Prim's rule); else each step is the
 * shortest one.
 */
final class WireTree {

    /** @param lengthM infinite where no wire leads from one to the other */
    record Step(WireEndId from, WireEndId to, double lengthM) {}

    /** The length of the way from one thing to another along the trenches. */
    interface Ways {
        double lengthM(WireEndId from, WireEndId to);
    }

    private static final Comparator<Step> SHORTEST =
            Comparator.comparingDouble(Step::lengthM).thenComparing(Step::to).thenComparing(Step::from);

    private final SortedSet<WireEndId> reached;
    private final BiPredicate<WireEndId, WireEndId> mayFeed;
    private final Ways ways;

    /** @param mayFeed whether the first may stand before the second on a wire */
    WireTree(SortedSet<WireEndId> reached, BiPredicate<WireEndId, WireEndId> mayFeed, Ways ways) {
        this.reached = new TreeSet<>(reached);
        this.mayFeed = mayFeed;
        this.ways = ways;
    }

    /** The steps in the order in which they were taken: what feeds stands before what is fed. */
    List<Step> join(List<WireEnd> wanted) {
        List<Step> steps = new ArrayList<>();
        SortedMap<WireEndId, WireEnd> left = new TreeMap<>();
        wanted.forEach(end -> left.put(end.id(), end));
        take(left, steps, Phase.NOW);
        take(left, steps, Phase.LATER);
        return steps;
    }

    private void take(SortedMap<WireEndId, WireEnd> left, List<Step> steps, Phase last) {
        while (true) {
            Step best = null;
            for (WireEnd to : left.values()) {
                for (WireEndId from : to.phase().compareTo(last) <= 0 ? reached : new TreeSet<WireEndId>()) {
                    Step step = new Step(from, to.id(), ways.lengthM(from, to.id()));
                    boolean can = step.lengthM() < Double.POSITIVE_INFINITY && mayFeed.test(from, to.id());
                    if (can && (best == null || SHORTEST.compare(step, best) < 0)) {
                        best = step;
                    }
                }
            }
            if (best == null) {
                return;
            }
            steps.add(best);
            reached.add(best.to());
            left.remove(best.to());
        }
    }
}
