package leat.calc.sizing;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.sizing.internal.SizeChoice;
import leat.model.finding.Bound;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.id.PipeId;
import leat.model.plan.Aspect;
import leat.model.plan.Planned;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Area;
import leat.model.water.Lateral;
import leat.model.water.Main;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/**
 * The stage that chooses pipe sizes: least pipe, so that water runs slowly enough, heads have their pressure, and no pipe
 * is larger than the one that feeds it. Exact within its model: heads at their reference flows, the main at the most that
 * any zone or bib draws alone, fittings as a share of the friction, a run's whole loss even where water leaves it earlier.
 */
public final class Sizing {

    private Sizing() {}

    /** Gives the yard with all planned and missing sizes chosen anew. */
    public static Proposal run(Site site, SizingParameters parameters, Progress progress) {
        Yard yard = site.yard();
        if (yard.water().pipes().findAny().isEmpty()) {
            return new Proposal(yard, Status.COMPLETE, List.of(), List.of());
        }
        progress.at(0, "flows");
        var flows = new DesignFlows(site);
        var tree = new SizeTree(site, parameters, flows);
        var needed = new NeededHeads(site, parameters, flows, tree);
        if (progress.stopped()) {
            return new Proposal(yard, Status.STOPPED, List.of(), List.of());
        }
        progress.at(0.5, "sizes");
        SizeChoice.Sizes sizes = tree.choose(needed.neededM());
        List<Reason> reasons = new ArrayList<>(tree.reasons());
        reasons.addAll(needed.reasons());
        Area pipe = Area.squareMetres(sizes.price());
        return new Proposal(
                sized(yard, tree, sizes),
                reasons.isEmpty() ? Status.COMPLETE : Status.PARTIAL,
                List.of(new Bound("pipe, as length times outside diameter", pipe, pipe)),
                reasons);
    }

    private static Yard sized(Yard yard, SizeTree tree, SizeChoice.Sizes sizes) {
        WaterSystem water = yard.water();
        List<PipeId> here =
                water.pipes().filter(tree::isSizedHere).map(PipeRun::id).toList();
        Main main = new Main(sized(water.main().runs(), tree, sizes));
        List<Lateral> laterals = water.laterals().stream()
                .map(lateral -> new Lateral(lateral.zone(), sized(lateral.runs(), tree, sizes), lateral.heads()))
                .toList();
        Planned planned = yard.planned().with(here, Aspect.SIZE);
        return yard.changed(water.withMain(main).withLaterals(laterals), yard.trenches(), planned);
    }

    private static List<PipeRun> sized(List<PipeRun> runs, SizeTree tree, SizeChoice.Sizes sizes) {
        return runs.stream()
                .map(run -> tree.sized(run, sizes.size()[tree.node(run.id())]))
                .toList();
    }
}
