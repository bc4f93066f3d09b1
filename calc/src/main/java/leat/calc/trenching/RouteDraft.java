package leat.calc.trenching;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.GivenPipes;
import leat.calc.internal.routes.RouteSearch;
import leat.calc.internal.routes.Trenchwork;
import leat.model.catalog.Rules;
import leat.model.finding.Bound;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.id.UpstreamId;
import leat.model.plan.Aspect;
import leat.model.plan.Planned;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.water.PipeRun;

/** What the stage has routed so far. Used once. */
final class RouteDraft {

    private final Yard before;
    private final Rules rules;
    private final SortedSet<PipeId> given;
    private final SortedMap<PipeId, PipeRun> earlier = new TreeMap<>();
    private final SortedSet<PipeId> names = new TreeSet<>();
    private final Trenchwork work = new Trenchwork();
    private final List<PipeRun> made = new ArrayList<>();
    private final List<Reason> reasons = new ArrayList<>();
    private double costM;
    private double boundM;
    private boolean interrupted;

    RouteDraft(Site site) {
        this.before = site.yard();
        this.rules = site.rules();
        this.given = GivenPipes.of(before);
        this.names.addAll(given);
        before.water().pipes().forEach(run -> earlier.put(run.id(), run));
    }

    Yard before() {
        return before;
    }

    boolean isGiven(PipeId pipe) {
        return given.contains(pipe);
    }

    boolean isGiven(Optional<PipeId> pipe) {
        return pipe.isPresent() && isGiven(pipe.get());
    }

    /** How deep a trench for pipes is under a rule on their cover. */
    double depthM(String rule, TrenchingParameters parameters) {
        return rules.get(rule).limit().si() + parameters.belowPipe().metres();
    }

    Trenchwork work() {
        return work;
    }

    List<Reason> reasons() {
        return List.copyOf(reasons);
    }

    boolean interrupted() {
        return interrupted;
    }

    void miss(Id id, String why) {
        reasons.add(new Reason(Subject.of(id), why));
    }

    void count(RouteSearch.Found found) {
        costM += found.costM();
        boundM += Math.min(found.boundM(), found.costM());
        interrupted |= found.interrupted();
    }

    List<Bound> bounds() {
        return made.isEmpty()
                ? List.of()
                : List.of(new Bound("trenches, as length dug in lawn", new Length(costM), new Length(boundM)));
    }

    /** The next name that no pipe has, such as {@code zone-3/2}. */
    PipeId nextName(String stem) {
        int number = 1;
        while (names.contains(new PipeId(stem + number))) {
            number++;
        }
        var id = new PipeId(stem + number);
        names.add(id);
        return id;
    }

    /** A new run, with the size that it had if it was the same before. */
    PipeRun run(PipeId id, UpstreamId from, List<Point> route, String series, Phase phase) {
        var bare = new PipeRun(id, from, new Polyline(route), series, Optional.empty(), false, phase);
        PipeRun was = earlier.get(id);
        boolean isSame = was != null && was.withoutSize().equals(bare);
        boolean isPinned = was != null
                && !before.isPlanned(id, Aspect.SIZE)
                && was.series().equals(series);
        PipeRun run = was != null && (isSame || isPinned)
                ? was.size().map(bare::withSize).orElse(bare)
                : bare;
        made.add(run);
        work.add(id, route);
        return run;
    }

    /** The run that was made here once more, with another beginning or at another time. */
    PipeRun again(PipeRun run, UpstreamId from, List<Point> route, Phase phase) {
        made.removeIf(one -> one.id().equals(run.id()));
        work.remove(run.id());
        return run(run.id(), from, route, run.series(), phase);
    }

    /** Marks what is planned now, of all that is there. */
    Planned planned(SortedSet<Id> there, SortedSet<? extends Id> trenches) {
        Planned planned = before.planned().only(there);
        for (PipeRun run : made) {
            boolean hasGivenSize =
                    run.size().isPresent() && earlier.containsKey(run.id()) && !before.isPlanned(run.id(), Aspect.SIZE);
            planned = planned.with(run.id(), Aspect.ROUTE);
            planned = hasGivenSize ? planned : planned.with(run.id(), Aspect.SIZE);
        }
        return planned.with(trenches, Aspect.ROUTE);
    }
}
