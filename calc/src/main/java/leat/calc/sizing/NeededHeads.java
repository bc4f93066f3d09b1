package leat.calc.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leat.calc.internal.pipes.PipeLaw;
import leat.model.catalog.PressureRange;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.water.Head;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeFeeds;
import leat.model.water.Source;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/**
 * How much head may be lost on the way to each pipe's end, as a negative head below the source: all heads of a zone shall
 * have their reference pressure; where no size can give that, their least one; where not even that, as much as can be.
 */
final class NeededHeads {

    /** Absorbs the rounding between two orders of adding the same losses. */
    private static final double SLACK_M = 1e-9;

    private final Site site;
    private final WaterSystem water;
    private final PipeFeeds feeds;
    private final SizeTree tree;
    private final SupplyHead supply;
    private final double[] neededM;
    private final List<Reason> reasons = new ArrayList<>();

    NeededHeads(Site site, SizingParameters parameters, DesignFlows flows, SizeTree tree) {
        this.site = site;
        this.tree = tree;
        water = site.yard().water();
        feeds = water.feeds();
        supply = new SupplyHead(site, feeds);
        neededM = new double[tree.count()];
        Arrays.fill(neededM, Double.NEGATIVE_INFINITY);
        water.laterals().forEach(lateral -> addZone(lateral, flows.of(lateral.zone())));
        water.bibs().forEach(bib -> addBib(bib, parameters.bibPressure()));
    }

    double[] neededM() {
        return neededM;
    }

    List<Reason> reasons() {
        return reasons;
    }

    private void addZone(Lateral lateral, Flow flow) {
        Zone zone = water.zone(lateral.zone()).orElseThrow();
        Optional<Manifold> manifold = water.manifoldOf(zone.valve());
        Optional<PipeId> on = manifold.flatMap(Manifold::on);
        Optional<Pressure> left = supply.at(zone, flow);
        if (left.isEmpty()) {
            reasons.add(new Reason(Subject.of(zone.id()), "no source feeds it yet, so only velocity sets its sizes"));
            return;
        }
        double sourceM = levelM(on.flatMap(feeds::sourceOf).map(Source::at).orElseThrow());
        boolean reference = canAll(lateral, left.get(), sourceM, true);
        boolean least = reference || canAll(lateral, left.get(), sourceM, false);
        if (!least) {
            reasons.add(new Reason(
                    Subject.of(zone.id()),
                    "no size of pipe gives all its heads their least pressure; losses are least"));
        } else if (!reference) {
            reasons.add(new Reason(
                    Subject.of(zone.id()),
                    "no size of pipe gives all its heads their reference pressure; the least counts"));
        }
        lateral.heads().forEach((id, pipe) -> {
            Head head = water.head(id).orElseThrow();
            need(pipe, least ? mayLoseM(head, left.get(), sourceM, reference) : Double.NEGATIVE_INFINITY);
        });
    }

    private boolean canAll(Lateral lateral, Pressure left, double sourceM, boolean reference) {
        return lateral.heads().entrySet().stream().allMatch(stands -> {
            Head head = water.head(stands.getKey()).orElseThrow();
            return tree.leastLossM(stands.getValue()) <= mayLoseM(head, left, sourceM, reference);
        });
    }

    /** Head that pipes may lose on the way to a head. */
    private double mayLoseM(Head head, Pressure left, double sourceM, boolean reference) {
        PressureRange range = site.catalog().head(head.family()).pressure();
        Pressure wanted = reference ? range.reference() : range.least();
        return left.minus(wanted).pascals() / PipeLaw.PASCALS_PER_M - (levelM(head.at()) - sourceM);
    }

    private void addBib(HoseBib bib, Pressure wanted) {
        Optional<Pressure> left = bib.on().flatMap(on -> supply.at(on, bib.drawn(), List.of()));
        if (left.isEmpty()) {
            return;
        }
        PipeId on = bib.on().orElseThrow();
        double sourceM = levelM(feeds.sourceOf(on).map(Source::at).orElseThrow());
        double mayLoseM = left.get().minus(wanted).pascals() / PipeLaw.PASCALS_PER_M - (levelM(bib.at()) - sourceM);
        if (tree.leastLossM(on) > mayLoseM) {
            reasons.add(new Reason(subject(bib.id()), "no size of pipe gives it the pressure wanted at a bib"));
        }
        need(on, mayLoseM);
    }

    /** At the end of a pipe no more may be lost than this, or than the largest sizes lose. */
    private void need(PipeId pipe, double mayLoseM) {
        double lossM = Math.max(mayLoseM, tree.leastLossM(pipe)) + SLACK_M;
        int node = tree.node(pipe);
        neededM[node] = Math.max(neededM[node], -lossM);
    }

    private static Subject subject(Id id) {
        return Subject.of(id);
    }

    private double levelM(Point point) {
        return site.yard().terrain().ground().levelFinished(point).metres();
    }
}
