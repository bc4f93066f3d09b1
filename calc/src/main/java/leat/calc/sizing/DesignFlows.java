package leat.calc.sizing;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.internal.pipes.PipeLaw;
import leat.model.catalog.HeadFamily;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.water.Head;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeFeeds;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/**
 * The flow that each pipe is sized for: its heads at the pressure that they would have if pipes lost none, at least their
 * reference pressure; and in the main the most that any zone or bib draws alone.
 */
final class DesignFlows {

    private final Site site;
    private final WaterSystem water;
    private final PipeFeeds feeds;
    private final SupplyHead supply;
    private final SortedMap<PipeId, Double> flowM3PerS = new TreeMap<>();
    private final SortedMap<ZoneId, Double> zoneM3PerS = new TreeMap<>();

    DesignFlows(Site site) {
        this.site = site;
        water = site.yard().water();
        feeds = water.feeds();
        supply = new SupplyHead(site, feeds);
        water.laterals().forEach(this::addLateral);
        for (HoseBib bib : water.bibs()) {
            bib.on().ifPresent(on -> raise(on, bib.drawn().si()));
        }
    }

    double of(PipeId pipe) {
        return flowM3PerS.getOrDefault(pipe, 0.0);
    }

    Flow of(ZoneId zone) {
        return new Flow(zoneM3PerS.getOrDefault(zone, 0.0));
    }

    private void addLateral(Lateral lateral) {
        Optional<Manifold> manifold = water.zone(lateral.zone()).flatMap(one -> water.manifoldOf(one.valve()));
        Optional<PipeId> on = manifold.flatMap(Manifold::on);
        double atReference = 0;
        for (HeadId id : lateral.heads().keySet()) {
            atReference += family(id).referenceFlow(head(id)).si();
        }
        zoneM3PerS.put(lateral.zone(), atReference);
        Flow reference = new Flow(atReference);
        Optional<Pressure> left = on.flatMap(pipe -> supply.at(pipe, reference, List.of()));
        double all = 0;
        for (var stands : lateral.heads().entrySet()) {
            double flow = headFlow(stands.getKey(), on, left);
            all += flow;
            flowM3PerS.merge(stands.getValue(), flow, Double::sum);
        }
        List<PipeRun> runs = lateral.runs();
        for (int i = runs.size() - 1; i >= 0; i--) {
            PipeRun run = runs.get(i);
            if (run.from() instanceof PipeId upstream) {
                flowM3PerS.merge(upstream, of(run.id()), Double::sum);
            }
        }
        double drawn = all;
        on.ifPresent(pipe -> raise(pipe, drawn));
    }

    /** At the pressure that the supply leaves at the head's own height: real pipes leave it less. */
    private double headFlow(HeadId id, Optional<PipeId> on, Optional<Pressure> left) {
        HeadFamily family = family(id);
        Pressure reference = family.pressure().reference();
        double riseM = on.flatMap(feeds::sourceOf)
                .map(source -> levelM(head(id).at()) - levelM(source.at()))
                .orElse(0.0);
        Pressure most = left.map(one -> one.minus(new Pressure(riseM * PipeLaw.PASCALS_PER_M)))
                .filter(one -> one.compareTo(reference) > 0)
                .orElse(reference);
        return family.flow(head(id), most).si();
    }

    private Head head(HeadId id) {
        return water.head(id).orElseThrow();
    }

    private HeadFamily family(HeadId id) {
        return site.catalog().head(head(id).family());
    }

    private double levelM(Point at) {
        return site.yard().terrain().ground().levelFinished(at).metres();
    }

    private void raise(PipeId pipe, double flow) {
        feeds.pathTo(pipe).forEach(run -> flowM3PerS.merge(run.id(), flow, Math::max));
    }
}
