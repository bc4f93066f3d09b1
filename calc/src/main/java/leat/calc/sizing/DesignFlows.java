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
import leat.model.water.Zone;

/**
 * The flow that each pipe is sized for: its heads at the pressure that they would have if pipes lost none, at least their
 * reference pressure; and in the main the most that any zone or bib draws alone.
 */
final class DesignFlows {

    /** Halves a flow to a millionth of itself. */
    private static final int HALVINGS = 20;

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
        Zone zone = water.zone(lateral.zone()).orElseThrow();
        Optional<PipeId> on = water.manifoldOf(zone.valve()).flatMap(Manifold::on);
        double sourceM =
                on.flatMap(feeds::sourceOf).map(source -> levelM(source.at())).orElse(0.0);
        double atReference = drawn(lateral, Optional.empty(), sourceM);
        zoneM3PerS.put(zone.id(), atReference);
        Optional<Pressure> left = supply.at(zone, new Flow(balanced(lateral, zone, atReference, sourceM)));
        double drawn = drawn(lateral, left, sourceM);
        lateral.heads().forEach((head, pipe) -> flowM3PerS.merge(pipe, headFlow(head, left, sourceM), Double::sum));
        List<PipeRun> runs = lateral.runs();
        for (int i = runs.size() - 1; i >= 0; i--) {
            PipeRun run = runs.get(i);
            if (run.from() instanceof PipeId upstream) {
                flowM3PerS.merge(upstream, of(run.id()), Double::sum);
            }
        }
        on.ifPresent(pipe -> raise(pipe, drawn));
    }

    /** The zone's flow at which its heads draw just what the supply leaves pressure for, were its pipes without loss. */
    private double balanced(Lateral lateral, Zone zone, double atReference, double sourceM) {
        double low = atReference;
        double high = drawn(lateral, supply.at(zone, new Flow(low)), sourceM);
        for (int i = 0; i < HALVINGS; i++) {
            double mid = (low + high) / 2;
            boolean more = drawn(lateral, supply.at(zone, new Flow(mid)), sourceM) > mid;
            low = more ? mid : low;
            high = more ? high : mid;
        }
        return high;
    }

    private double drawn(Lateral lateral, Optional<Pressure> left, double sourceM) {
        double sum = 0;
        for (HeadId head : lateral.heads().keySet()) {
            sum += headFlow(head, left, sourceM);
        }
        return sum;
    }

    /** At the pressure that the supply leaves at the head's own height, or at its reference pressure if that is more. */
    private double headFlow(HeadId id, Optional<Pressure> left, double sourceM) {
        HeadFamily family = family(id);
        Pressure reference = family.pressure().reference();
        Pressure rise = new Pressure((levelM(head(id).at()) - sourceM) * PipeLaw.PASCALS_PER_M);
        Pressure most = left.map(one -> one.minus(rise))
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
