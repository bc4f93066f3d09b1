package leat.calc.trenching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.PlaceTree;
import leat.calc.internal.routes.RouteSearch;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.ZoneId;
import leat.model.water.Head;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/** Routes the laterals of all zones: one tree of trenches from each manifold, and in it the pipes of each zone. */
final class LateralRoutes {

    private final RouteDraft draft;
    private final DigSite site;
    private final TrenchingParameters parameters;
    private final Progress progress;
    private final SortedMap<ZoneId, Lateral> laterals = new TreeMap<>();

    LateralRoutes(RouteDraft draft, DigSite site, TrenchingParameters parameters, Progress progress) {
        this.draft = draft;
        this.site = site;
        this.parameters = parameters;
        this.progress = progress;
    }

    /** @param supplied the water system with its new main and no laterals */
    WaterSystem route(WaterSystem supplied) {
        draft.before().water().laterals().forEach(lateral -> laterals.put(lateral.zone(), onlyGiven(lateral)));
        for (Manifold manifold : supplied.manifolds()) {
            progress.at(
                    (double) supplied.manifolds().indexOf(manifold)
                            / supplied.manifolds().size(),
                    "laterals from " + manifold.id());
            join(manifold, supplied);
        }
        return supplied.withLaterals(laterals.values().stream()
                .filter(lateral -> !lateral.runs().isEmpty())
                .toList());
    }

    private Lateral onlyGiven(Lateral lateral) {
        SortedMap<HeadId, PipeId> heads = new TreeMap<>(lateral.heads());
        heads.values().removeIf(pipe -> !draft.isGiven(pipe));
        return new Lateral(
                lateral.zone(),
                lateral.runs().stream().filter(run -> draft.isGiven(run.id())).toList(),
                heads);
    }

    private void join(Manifold manifold, WaterSystem water) {
        List<Zone> zones = water.zones().stream()
                .filter(zone ->
                        manifold.valves().stream().anyMatch(valve -> valve.id().equals(zone.valve())))
                .toList();
        SortedMap<HeadId, Point> dry = dryHeads(zones, water);
        if (dry.isEmpty()) {
            return;
        }
        dry.values().forEach(draft.work()::cutNear);
        draft.work().cutNear(manifold.at());
        var search = new RouteSearch(site, parameters.choices(), progress);
        search.addDug(draft.work(), draft.depthM("trench.cover.lateral", parameters));
        int root = search.place(manifold.at());
        SortedMap<HeadId, Integer> places = new TreeMap<>();
        dry.forEach((head, at) -> places.put(head, search.place(at)));
        RouteSearch.Found found = search.join(root, new TreeSet<>(places.values()));
        draft.count(found);
        places.forEach((head, place) -> {
            if (found.missed().contains(place)) {
                draft.miss(
                        head,
                        "no trench may reach it from " + manifold.id() + between(manifold.at(), search.at(place)));
            } else if (place == root) {
                draft.miss(head, "it stands where " + manifold.id() + " stands, so no pipe can lead to it");
            }
        });
        places.values().removeIf(place -> place == root || found.missed().contains(place));
        zones.forEach(zone -> lay(zone, root, places, search, found.tree()));
    }

    private String between(Point from, Point to) {
        return new Barriers(draft.before().terrain()).between(from, to);
    }

    /** Heads that no given pipe reaches. */
    private SortedMap<HeadId, Point> dryHeads(List<Zone> zones, WaterSystem water) {
        SortedMap<HeadId, Point> dry = new TreeMap<>();
        for (Zone zone : zones) {
            SortedSet<HeadId> wet = new TreeSet<>(before(zone).heads().keySet());
            for (HeadId id : zone.heads()) {
                Optional<Head> head = water.head(id);
                if (!wet.contains(id) && head.isPresent()) {
                    dry.put(id, head.get().at());
                }
            }
        }
        return dry;
    }

    private Lateral before(Zone zone) {
        return laterals.getOrDefault(zone.id(), new Lateral(zone.id(), List.of(), Collections.emptySortedMap()));
    }

    private void lay(Zone zone, int root, SortedMap<HeadId, Integer> places, RouteSearch search, PlaceTree tree) {
        SortedMap<HeadId, Integer> own = new TreeMap<>(places);
        own.keySet().retainAll(zone.heads());
        List<PlaceTree.Leg> legs = tree.legs(new TreeSet<>(List.of(root)), new TreeSet<>(own.values()));
        String series = parameters.lateralSeries(draft.before().units());
        List<PipeRun> runs = new ArrayList<>(before(zone).runs());
        SortedMap<Integer, PipeId> endingAt = new TreeMap<>();
        List<PipeId> ids = new ArrayList<>();
        for (PlaceTree.Leg leg : legs) {
            PipeId id = draft.nextName(zone.id().name() + "/");
            ids.add(id);
            runs.add(draft.run(
                    id,
                    leg.upstream() >= 0 ? ids.get(leg.upstream()) : zone.valve(),
                    search.at(leg.places()),
                    series,
                    zone.phase()));
            endingAt.put(leg.end(), id);
        }
        SortedMap<HeadId, PipeId> heads = new TreeMap<>(before(zone).heads());
        own.forEach((head, place) -> Optional.ofNullable(endingAt.get(place)).ifPresent(pipe -> heads.put(head, pipe)));
        laterals.put(zone.id(), new Lateral(zone.id(), runs, heads));
    }
}
