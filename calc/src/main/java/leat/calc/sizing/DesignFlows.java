package leat.calc.sizing;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeFeeds;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/**
 * The flow that each pipe is sized for: its heads at their reference pressure, and in the main the most that any zone or
 * bib draws alone.
 */
final class DesignFlows {

    private final Site site;
    private final WaterSystem water;
    private final PipeFeeds feeds;
    private final SortedMap<PipeId, Double> flowM3PerS = new TreeMap<>();
    private final SortedMap<ZoneId, Double> zoneM3PerS = new TreeMap<>();

    DesignFlows(Site site) {
        this.site = site;
        water = site.yard().water();
        feeds = water.feeds();
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
        double zone = 0;
        for (var stands : lateral.heads().entrySet()) {
            double flow = headFlow(stands.getKey());
            zone += flow;
            flowM3PerS.merge(stands.getValue(), flow, Double::sum);
        }
        List<PipeRun> runs = lateral.runs();
        for (int i = runs.size() - 1; i >= 0; i--) {
            PipeRun run = runs.get(i);
            if (run.from() instanceof PipeId upstream) {
                flowM3PerS.merge(upstream, of(run.id()), Double::sum);
            }
        }
        zoneM3PerS.put(lateral.zone(), zone);
        double all = zone;
        Optional<Manifold> manifold = water.zone(lateral.zone()).flatMap(one -> water.manifoldOf(one.valve()));
        manifold.flatMap(Manifold::on).ifPresent(on -> raise(on, all));
    }

    private double headFlow(HeadId id) {
        var head = water.head(id).orElseThrow();
        return site.catalog().head(head.family()).referenceFlow(head).si();
    }

    private void raise(PipeId pipe, double flow) {
        feeds.pathTo(pipe).forEach(run -> flowM3PerS.merge(run.id(), flow, Math::max));
    }
}
