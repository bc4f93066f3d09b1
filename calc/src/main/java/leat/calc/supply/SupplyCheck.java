package leat.calc.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Finding;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.ValveId;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.water.Head;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeFeeds;
import leat.model.water.PipeRun;
import leat.model.water.Source;
import leat.model.water.Water;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/** One pass over a site; used once. */
final class SupplyCheck {

    private static final Count ONE = Count.of(1);

    private final Site site;
    private final WaterSystem water;
    private final PipeFeeds feeds;
    private final SortedMap<PipeId, Water> waters = new TreeMap<>();
    private final List<Finding> findings = new ArrayList<>();

    SupplyCheck(Site site) {
        this.site = site;
        this.water = site.yard().water();
        this.feeds = water.feeds();
    }

    SupplyResult result() {
        water.pipes().forEach(run -> waters.put(run.id(), feeds.waterIn(run.id())));
        water.pipes().forEach(this::checkRun);
        water.manifolds().forEach(this::checkManifold);
        water.zones().forEach(this::checkZone);
        water.bibs().forEach(this::checkBib);
        findings.addAll(new CrossConnections(site, feeds).findings());
        return new SupplyResult(waters, findings);
    }

    private void checkRun(PipeRun run) {
        if (run.size().isEmpty()) {
            find("pipe.size", run.id(), ONE, "plan its size, or state one");
        }
        if (feeds.sourceOf(run.id()).isEmpty()) {
            find("water.supply", run.id(), ONE, "lead it back to a source");
        }
        upstreamPlace(run)
                .ifPresent(place -> checkGap(run.id(), run.route().start(), place, "start it on what feeds it"));
    }

    /** The place of what feeds the run that is nearest to its start. */
    private Optional<Point> upstreamPlace(PipeRun run) {
        if (run.from() instanceof PipeId pipe) {
            return feeds.pipe(pipe)
                    .map(upstream -> upstream.route().nearest(run.route().start()));
        }
        if (run.from() instanceof SourceId source) {
            return water.source(source).map(Source::at);
        }
        return run.from() instanceof ValveId valve ? water.manifoldOf(valve).map(Manifold::at) : Optional.empty();
    }

    private void checkManifold(Manifold manifold) {
        if (manifold.on().isEmpty()) {
            find("water.supply", manifold.id(), ONE, "plan a pipe to it, or name the one that feeds it");
        }
        manifold.on()
                .flatMap(feeds::pipe)
                .ifPresent(run -> checkGap(
                        manifold.id(), manifold.at(), run.route().nearest(manifold.at()), "set it on its pipe"));
        List<ValveId> used = water.zones().stream().map(Zone::valve).toList();
        manifold.valves().stream()
                .filter(valve -> !valve.spare() && !used.contains(valve.id()))
                .forEach(valve -> find("water.supply", valve.id(), ONE, "give it a zone, or call it a spare"));
    }

    private void checkZone(Zone zone) {
        Optional<Lateral> lateral = water.lateral(zone.id());
        zone.heads().stream()
                .filter(head -> lateral.isEmpty() || !lateral.get().heads().containsKey(head))
                .forEach(head -> find("water.supply", head, ONE, "plan the laterals of its zone"));
        if (lateral.isEmpty()) {
            return;
        }
        lateral.get().heads().forEach((id, pipe) -> {
            Optional<Head> head = water.head(id);
            Optional<PipeRun> run = feeds.pipe(pipe);
            if (head.isPresent() && run.isPresent()) {
                checkGap(id, head.get().at(), run.get().route().end(), "lead its pipe to it");
            }
            if (waters.get(pipe) == Water.DRINKING && feeds.sourceOf(pipe).isPresent()) {
                find("water.backflow", id, ONE, "set a backflow preventer before the manifold");
            }
        });
    }

    private void checkBib(HoseBib bib) {
        if (bib.on().isEmpty()) {
            find("water.supply", bib.id(), ONE, "plan a pipe to it, or name the one that feeds it");
        }
        bib.on()
                .flatMap(feeds::pipe)
                .ifPresent(run -> checkGap(bib.id(), bib.at(), run.route().nearest(bib.at()), "lead a branch to it"));
        boolean drinking = bib.on().map(on -> waters.get(on) == Water.DRINKING).orElse(false);
        if (drinking && !bib.vacuumBreaker()) {
            find("water.bib", bib.id(), ONE, "fit a hose connection vacuum breaker");
        }
        if (bib.on().map(on -> waters.get(on) == Water.NON_DRINKING).orElse(false)) {
            find(
                    "water.bib.sign",
                    bib.id(),
                    ONE,
                    "put a sign on it, and fit a tap that needs a key where children play");
        }
    }

    private void checkGap(Id id, Point here, Point there, String advice) {
        Length gap = here.distance(there);
        if (!site.rules().get("water.connected").isKeptBy(gap)) {
            find("water.connected", id, gap, advice);
        }
    }

    private void find(String rule, Id id, Quantity measured, String advice) {
        findings.add(Finding.of(site.rules().get(rule), Subject.of(id), measured, advice));
    }
}
