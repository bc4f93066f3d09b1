package leat.calc.hydraulics;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.geometry.Point;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.plan.Site;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeFeeds;
import leat.model.water.PipeRun;
import leat.model.water.Source;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/** Finds the pipes that carry the water of a zone or a bib, and lays them out as a path. */
final class PathFinder {

    private final Site site;
    private final WaterSystem water;
    private final PipeFeeds feeds;
    private final FittingLosses fittings;

    PathFinder(Site site, HydraulicsParameters parameters) {
        this.site = site;
        water = site.yard().water();
        feeds = water.feeds();
        fittings = new FittingLosses(site.catalog(), parameters.fittings());
    }

    /** A path, or why there is none. */
    record Found(RunStatus status, Optional<WaterPath> path) {

        static Found none(RunStatus status) {
            return new Found(status, Optional.empty());
        }
    }

    Found zone(Zone zone) {
        Optional<Lateral> lateral = water.lateral(zone.id());
        Optional<Manifold> manifold = water.manifoldOf(zone.valve());
        Optional<PipeId> on = manifold.flatMap(Manifold::on);
        if (lateral.isEmpty() || lateral.get().heads().isEmpty() || on.isEmpty()) {
            return Found.none(RunStatus.NOT_FED);
        }
        List<PipeRun> main = feeds.pathTo(on.get());
        Optional<Source> source = sourceOf(main);
        if (source.isEmpty()) {
            return Found.none(RunStatus.NOT_FED);
        }
        SortedMap<PipeId, SortedSet<Double>> branches = branches(lateral.get());
        List<PipeRun> carrying = lateral.get().runs().stream()
                .filter(run -> branches.containsKey(run.id()))
                .toList();
        if (isUnsized(main) || isUnsized(carrying)) {
            return Found.none(RunStatus.NOT_SIZED);
        }
        var draft = new PathDraft(site, fittings, source.get());
        int atManifold = main(draft, main, manifold.get().at());
        String valve = manifold.get().valves().stream()
                .filter(one -> one.id().equals(zone.valve()))
                .findFirst()
                .orElseThrow()
                .device();
        int behindValve = draft.device(Link.Kind.VALVE, zone.valve(), valve, atManifold);
        lateral(draft, lateral.get(), carrying, branches, behindValve);
        var path = new WaterPath(draft, draft.end());
        path.openHeads(site);
        return new Found(RunStatus.RUNS, Optional.of(path));
    }

    Found bib(HoseBib bib) {
        List<PipeRun> main = bib.on().map(feeds::pathTo).orElse(List.of());
        Optional<Source> source = sourceOf(main);
        if (source.isEmpty()) {
            return Found.none(RunStatus.NOT_FED);
        }
        if (isUnsized(main)) {
            return Found.none(RunStatus.NOT_SIZED);
        }
        var draft = new PathDraft(site, fittings, source.get());
        var path = new WaterPath(draft, main(draft, main, bib.at()));
        path.open(bib.drawn());
        return new Found(RunStatus.RUNS, Optional.of(path));
    }

    private Optional<Source> sourceOf(List<PipeRun> main) {
        return !main.isEmpty() && main.get(0).from() instanceof SourceId id ? water.source(id) : Optional.empty();
    }

    private static boolean isUnsized(List<PipeRun> runs) {
        return runs.stream().anyMatch(run -> run.size().isEmpty());
    }

    /** Lays the main as far as the place nearest to {@code end}; returns that place. */
    private int main(PathDraft draft, List<PipeRun> main, Point end) {
        int place = draft.end();
        double entry = 0;
        for (int i = 0; i < main.size(); i++) {
            PipeRun run = main.get(i);
            Point leaves = i + 1 < main.size() ? main.get(i + 1).route().start() : end;
            double stationM = run.route().stationOf(leaves).metres();
            for (var backflow : water.backflows()) {
                if (backflow.on().equals(run.id())) {
                    place = draft.device(Link.Kind.BACKFLOW, backflow.id(), backflow.device(), place);
                }
            }
            place = draft.fitted(run, place);
            draft.run(run, place, entry, new TreeSet<>(Set.of(stationM)));
            place = draft.placeAt(run.id(), stationM);
            entry = i + 1 < main.size() ? draft.entry(run, stationM, main.get(i + 1)) : 0;
        }
        return place;
    }

    /** Where water leaves each run of a lateral; runs that lead to no head are left out. */
    private SortedMap<PipeId, SortedSet<Double>> branches(Lateral lateral) {
        SortedMap<PipeId, SortedSet<Double>> branches = new TreeMap<>();
        for (PipeId pipe : lateral.heads().values()) {
            add(branches, pipe, endOf(feeds.pipe(pipe).orElseThrow()));
        }
        for (int i = lateral.runs().size() - 1; i >= 0; i--) {
            PipeRun run = lateral.runs().get(i);
            if (branches.containsKey(run.id()) && run.from() instanceof PipeId upstream) {
                add(branches, upstream, stationOn(feeds.pipe(upstream).orElseThrow(), run));
            }
        }
        return branches;
    }

    private static void add(SortedMap<PipeId, SortedSet<Double>> branches, PipeId pipe, double stationM) {
        branches.computeIfAbsent(pipe, key -> new TreeSet<>()).add(stationM);
    }

    private void lateral(
            PathDraft draft,
            Lateral lateral,
            List<PipeRun> carrying,
            SortedMap<PipeId, SortedSet<Double>> branches,
            int behindValve) {
        for (PipeRun run : carrying) {
            int behind = behindValve;
            double entry = 0;
            if (run.from() instanceof PipeId id) {
                PipeRun upstream = feeds.pipe(id).orElseThrow();
                double stationM = stationOn(upstream, run);
                behind = draft.placeAt(id, stationM);
                entry = draft.entry(upstream, stationM, run);
            }
            behind = draft.fitted(run, behind);
            draft.run(run, behind, entry, branches.getOrDefault(run.id(), Collections.emptySortedSet()));
        }
        for (var stands : lateral.heads().entrySet()) {
            PipeRun run = feeds.pipe(stands.getValue()).orElseThrow();
            draft.head(water.head(stands.getKey()).orElseThrow(), run, draft.placeAt(run.id(), endOf(run)));
        }
    }

    private static double endOf(PipeRun run) {
        return run.route().lengthM();
    }

    private static double stationOn(PipeRun upstream, PipeRun run) {
        return upstream.route().stationOf(run.route().start()).metres();
    }
}
