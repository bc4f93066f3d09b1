package leat.calc.zoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;
import leat.calc.HeadPhases;
import leat.calc.Progress;
import leat.calc.zoning.internal.ZonePlan;
import leat.calc.zoning.internal.ZoneProblem;
import leat.calc.zoning.internal.ZoneSplit;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.site.Phase;
import leat.model.water.Head;
import leat.model.water.Manifold;

/**
 * The free heads of one manifold in groups, clockwise around the manifold.
 *
 * @param groups begin behind the widest gap, so that they run from one side of the manifold to the other
 * @param plan   of the search, for its bounds
 */
record Partition(List<HeadGroup> groups, ZonePlan plan) {

    /** What a further zone costs in metres of pipe: a valve, its place in the box, its wire. Common practice, no source. */
    private static final double ZONE_COST_M = 20;

    /** What a zone costs that draws all that is safe, in metres of pipe: it wants thicker pipe; our choice, no source. */
    private static final double LOAD_COST_M = 20;

    static Partition of(
            List<Head> heads,
            Manifold manifold,
            Flow mostFlow,
            Site site,
            ZoningParameters parameters,
            Progress progress) {
        double[] flowM3PerS = heads.stream()
                .mapToDouble(head ->
                        site.catalog().head(head.family()).referenceFlow(head).si())
                .toArray();
        ZoneProblem problem = ZoneProblem.straight(
                flowM3PerS,
                kinds(heads, site),
                heads.stream().mapToDouble(head -> head.at().xM()).toArray(),
                heads.stream().mapToDouble(head -> head.at().yM()).toArray(),
                manifold.at().xM(),
                manifold.at().yM(),
                new ZoneProblem.Limits(
                        mostFlow.si(), (int) parameters.mostHeads().value(), ZONE_COST_M, LOAD_COST_M));
        ZonePlan plan = ZoneSplit.solve(problem, parameters.seed(), parameters.effort(), progress::stopped);
        return new Partition(clockwise(groups(heads, flowM3PerS, plan, site), manifold.at(), heads), plan);
    }

    private static int[] kinds(List<Head> heads, Site site) {
        SortedMap<HeadId, String> kinds = HeadKinds.of(heads, site);
        List<String> names = List.copyOf(new TreeSet<>(kinds.values()));
        return heads.stream()
                .mapToInt(head -> names.indexOf(kinds.get(head.id())))
                .toArray();
    }

    private static List<HeadGroup> groups(List<Head> heads, double[] flowM3PerS, ZonePlan plan, Site site) {
        List<HeadGroup> groups = new ArrayList<>();
        for (int zone = 0; zone < plan.zones(); zone++) {
            List<HeadId> members = new ArrayList<>();
            double flow = 0;
            Phase phase = Phase.NOW; // heads of one kind are all of one phase
            for (int i = 0; i < heads.size(); i++) {
                if (plan.zoneOf()[i] == zone) {
                    members.add(heads.get(i).id());
                    flow += flowM3PerS[i];
                    phase = HeadPhases.of(heads.get(i), site.yard());
                }
            }
            groups.add(new HeadGroup(members, Flow.cubicMetresPerSecond(flow), phase));
        }
        return groups;
    }

    private static List<HeadGroup> clockwise(List<HeadGroup> groups, Point from, List<Head> heads) {
        List<HeadGroup> sorted = new ArrayList<>(groups);
        sorted.sort(Comparator.comparingDouble((HeadGroup group) -> bearingDegrees(group, from, heads))
                .thenComparing(group -> group.heads().get(0)));
        int first = 0;
        double widest = 0;
        for (int i = 0; i < sorted.size(); i++) {
            int before = (i + sorted.size() - 1) % sorted.size();
            double gap = bearingDegrees(sorted.get(i), from, heads) - bearingDegrees(sorted.get(before), from, heads);
            double turned = gap <= 0 ? gap + 360 : gap;
            if (turned > widest) {
                widest = turned;
                first = i;
            }
        }
        List<HeadGroup> ordered = new ArrayList<>(sorted.subList(first, sorted.size()));
        ordered.addAll(sorted.subList(0, first));
        return List.copyOf(ordered);
    }

    /** Of the mean place of the group's heads, as seen from the manifold. */
    private static double bearingDegrees(HeadGroup group, Point from, List<Head> heads) {
        double sumX = 0;
        double sumY = 0;
        for (Head head : heads) {
            if (group.heads().contains(head.id())) {
                sumX += head.at().xM();
                sumY += head.at().yM();
            }
        }
        int count = group.heads().size();
        return from.bearingTo(new Point(sumX / count, sumY / count)).degrees();
    }
}
