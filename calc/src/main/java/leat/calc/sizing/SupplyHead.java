package leat.calc.sizing;

import java.util.List;
import java.util.Optional;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.water.BackflowPreventer;
import leat.model.water.Manifold;
import leat.model.water.PipeFeeds;
import leat.model.water.PipeRun;
import leat.model.water.Source;
import leat.model.water.Zone;
import leat.model.water.ZoneValve;

/** The pressure that is left for pipes: what the source gives at a flow, less what devices on the way lose at it. */
final class SupplyHead {

    private final Site site;
    private final PipeFeeds feeds;

    SupplyHead(Site site, PipeFeeds feeds) {
        this.site = site;
        this.feeds = feeds;
    }

    /** Behind the valve of a zone, at the level of the source; empty while no source feeds its manifold. */
    Optional<Pressure> at(Zone zone, Flow flow) {
        Optional<Manifold> manifold = site.yard().water().manifoldOf(zone.valve());
        List<String> valve = manifold.stream()
                .flatMap(one -> one.valves().stream())
                .filter(one -> one.id().equals(zone.valve()))
                .map(ZoneValve::device)
                .toList();
        return manifold.flatMap(Manifold::on).flatMap(pipe -> at(pipe, flow, valve));
    }

    /** Pressure at the level of the source; empty while no source feeds the pipe. */
    Optional<Pressure> at(PipeId pipe, Flow flow, List<String> moreDevices) {
        Optional<Source> source = feeds.sourceOf(pipe);
        if (source.isEmpty()) {
            return Optional.empty();
        }
        Pressure left = source.get().pressureAt(flow);
        List<PipeRun> runs = feeds.pathTo(pipe);
        List<PipeId> path = runs.stream().map(PipeRun::id).toList();
        for (PipeRun run : runs) {
            for (String key : run.fitted()) {
                left = left.minus(loss(key, flow));
            }
        }
        for (BackflowPreventer backflow : site.yard().water().backflows()) {
            if (path.contains(backflow.on())) {
                left = left.minus(loss(backflow.device(), flow));
            }
        }
        Optional<String> meter = source.get().meter();
        if (meter.isPresent()) {
            left = left.minus(loss(meter.get(), flow));
        }
        for (String key : moreDevices) {
            left = left.minus(loss(key, flow));
        }
        return Optional.of(left);
    }

    private Pressure loss(String key, Flow flow) {
        return site.catalog().device(key).loss().lossAt(flow);
    }
}
