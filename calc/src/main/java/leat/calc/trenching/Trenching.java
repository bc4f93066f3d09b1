package leat.calc.trenching;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.GivenTrenches;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.PipeLaying;
import leat.calc.internal.routes.TrenchCuts;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.ManifoldId;
import leat.model.id.SegmentId;
import leat.model.id.UpstreamId;
import leat.model.plan.Planned;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.trench.TrenchSegment;
import leat.model.water.WaterSystem;

/**
 * The stage that routes main and laterals along shared trenches. Given pipes and trenches stay; manifolds and hose bibs
 * that no given pipe feeds are joined to the main, heads that no given pipe reaches to the valve of their zone. Given
 * trenches that are deep enough are shared; trenches are made for all new pipes that lie in none. Planned runs end at heads, where they part, and where a run of
 * later leaves the trench of now that it is laid ahead in.
 */
public final class Trenching {

    private Trenching() {}

    /** Gives the yard with all planned routes made anew. A route that comes out as it was keeps the size of its pipe. */
    public static Proposal run(Site site, TrenchingParameters parameters, Progress progress) {
        DigSite dig = DigSite.of(site, parameters.choices());
        Yard before = site.yard();
        if (dig.open().isEmpty()) {
            var reason = new Reason(Subject.yard(), "no ground is left in which a trench may run");
            return new Proposal(before, Status.PARTIAL, List.of(), List.of(reason));
        }
        var draft = new RouteDraft(site);
        addGiven(before, draft);
        progress.at(0, "main");
        WaterSystem supplied = new MainRoutes(draft, dig, parameters, progress).route();
        WaterSystem routed = new LateralRoutes(draft, dig, parameters, progress).route(supplied);
        WaterSystem water = new LaidAhead(draft, routed, parameters).in(routed);
        List<TrenchSegment> given = GivenTrenches.of(before);
        var laying = new PipeLaying(site.rules(), water, parameters.belowPipe());
        List<TrenchSegment> trenches = new TrenchCuts(dig.byHand(), laying).cut(draft.work(), given);
        SortedSet<SegmentId> madeIds =
                new TreeSet<>(trenches.stream().map(TrenchSegment::id).toList());
        given.forEach(trench -> madeIds.remove(trench.id()));
        Planned planned = draft.planned(Yard.plannable(water, before.power(), trenches), madeIds);
        Yard yard = before.changed(water, trenches, planned);
        return new Proposal(yard, status(draft), draft.bounds(), draft.reasons());
    }

    /**
     * Where the main to come of each manifold that no given pipe feeds will begin: at a given pipe or a source. The same
     * whether a main was planned before or not, so that zones can be held against what is given of the way to them.
     */
    public static SortedMap<ManifoldId, UpstreamId> mainsToCome(
            Site site, TrenchingParameters parameters, Progress progress) {
        var draft = new RouteDraft(site);
        if (site.yard().water().manifolds().stream().allMatch(one -> draft.isGiven(one.on()))) {
            return Collections.emptySortedMap();
        }
        DigSite dig = DigSite.of(site, parameters.choices());
        if (dig.open().isEmpty()) {
            return Collections.emptySortedMap();
        }
        addGiven(site.yard(), draft);
        progress.at(0, "main to come");
        return new MainRoutes(draft, dig, parameters, progress).beginnings();
    }

    /** Given trenches others may share; and new pipes that are given and lie in none need one, which others may share too. */
    private static void addGiven(Yard before, RouteDraft draft) {
        List<TrenchSegment> given = GivenTrenches.of(before);
        given.forEach(draft.work()::addReady);
        before.water()
                .pipes()
                .filter(run -> draft.isGiven(run.id()) && !run.existing())
                .forEach(run -> draft.work().add(run.id(), run.route().points()));
        if (!given.isEmpty()) {
            draft.work().settle(); // a pipe may have been drawn along a trench without a word that it lies in it
        }
    }

    private static Status status(RouteDraft draft) {
        if (draft.interrupted()) {
            return Status.STOPPED;
        }
        return draft.reasons().isEmpty() ? Status.COMPLETE : Status.PARTIAL;
    }
}
