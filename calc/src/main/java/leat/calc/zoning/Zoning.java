package leat.calc.zoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.zoning.internal.ZonePlan;
import leat.model.finding.Bound;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.ManifoldId;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.water.Head;
import leat.model.water.Manifold;

/**
 * The stage that parts heads into zones: fewest zones that the supply can feed, then least pipe. Heads in a given zone
 * stay there; given zones without heads are filled first, then given valves without a zone are used, then valves are
 * planned. Each manifold serves the heads nearest to it.
 */
public final class Zoning {

    private Zoning() {}

    /**
     * Gives the yard with all planned zones made anew. Laterals of zones that changed are taken away, with the trenches
     * that held nothing else.
     */
    public static Proposal run(Site site, ZoningParameters parameters, Progress progress) {
        GivenZones given = GivenZones.of(site.yard());
        List<Reason> reasons = new ArrayList<>();
        List<Manifold> manifolds = site.yard().water().manifolds().stream()
                .map(manifold -> given.without(manifold, site.yard()))
                .toList();
        var draft = new ZoneDraft(site, parameters, given, manifolds);
        if (manifolds.isEmpty() && !given.free().isEmpty()) {
            reasons.add(new Reason(Subject.yard(), "there is no manifold whose valves zones could use"));
        }
        List<ZonePlan> plans = new ArrayList<>();
        SortedMap<ManifoldId, List<Head>> served = nearest(given.free(), manifolds);
        for (Manifold manifold : manifolds) {
            List<Head> heads = served.getOrDefault(manifold.id(), List.of());
            if (!heads.isEmpty()) {
                progress.at((double) plans.size() / served.size(), "zones at " + manifold.id());
                plans.add(fill(draft, manifold, heads, site, parameters, progress, reasons));
            }
            draft.addSpares(manifold);
        }
        reasons.addAll(draft.reasons());
        return new Proposal(draft.yard(), status(plans, draft, manifolds, given), bounds(plans), reasons);
    }

    private static ZonePlan fill(
            ZoneDraft draft,
            Manifold manifold,
            List<Head> heads,
            Site site,
            ZoningParameters parameters,
            Progress progress,
            List<Reason> reasons) {
        Pressure wanted = heads.stream()
                .map(head -> site.catalog().head(head.family()).pressure().reference())
                .max(Pressure::compareTo)
                .orElse(Pressure.ZERO);
        SafeFlow safe = SafeFlow.toCome(manifold, site, parameters, wanted);
        reasons.addAll(safe.reasons());
        Flow mostFlow = safe.flow().orElse(SafeFlow.ENDLESS);
        Partition partition = Partition.of(heads, manifold, mostFlow, site, parameters, progress);
        for (HeadGroup group : partition.groups()) {
            draft.add(manifold, group);
            if (group.flow().compareTo(mostFlow.times(1 + 1e-9)) > 0) {
                reasons.add(new Reason(
                        Subject.of(group.heads().get(0)), "it alone draws more than a zone may take from the supply"));
            }
        }
        return partition.plan();
    }

    private static SortedMap<ManifoldId, List<Head>> nearest(List<Head> heads, List<Manifold> manifolds) {
        SortedMap<ManifoldId, List<Head>> served = new TreeMap<>();
        for (Head head : heads) {
            manifolds.stream()
                    .min(Comparator.comparingDouble((Manifold one) -> one.at().distanceM(head.at()))
                            .thenComparing(Manifold::id))
                    .ifPresent(one -> served.computeIfAbsent(one.id(), key -> new ArrayList<>())
                            .add(head));
        }
        return served;
    }

    private static Status status(List<ZonePlan> plans, ZoneDraft draft, List<Manifold> manifolds, GivenZones given) {
        if (plans.stream().anyMatch(ZonePlan::interrupted)) {
            return Status.STOPPED;
        }
        boolean undone =
                draft.leftOut() || (manifolds.isEmpty() && !given.free().isEmpty());
        return undone ? Status.PARTIAL : Status.COMPLETE;
    }

    private static List<Bound> bounds(List<ZonePlan> plans) {
        if (plans.isEmpty()) {
            return List.of();
        }
        int zones = plans.stream().mapToInt(ZonePlan::zones).sum();
        int fewest = plans.stream().mapToInt(ZonePlan::fewestZones).sum();
        double cost = plans.stream().mapToDouble(ZonePlan::costM).sum();
        double bound = plans.stream().mapToDouble(ZonePlan::boundM).sum();
        return List.of(
                new Bound("zones", Count.of(zones), Count.of(fewest)),
                new Bound("pipe and valves, as length of pipe", new Length(cost), new Length(Math.min(bound, cost))));
    }
}
