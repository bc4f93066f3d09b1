package leat.calc.trenching;

import java.util.ArrayList;
import java.util.Comparator;
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
import leat.model.geometry.Polyline;
import leat.model.id.Id;
import leat.model.id.ManifoldId;
import leat.model.id.PipeId;
import leat.model.id.UpstreamId;
import leat.model.site.Phase;
import leat.model.water.HoseBib;
import leat.model.water.Main;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.Source;
import leat.model.water.Water;
import leat.model.water.WaterSystem;

/**
 * Routes the always-on main: manifolds first, to pipes behind a backflow preventer where there is one; then hose bibs, to
 * whatever main is nearest.
 */
final class MainRoutes {

    private final RouteDraft draft;
    private final DigSite site;
    private final TrenchingParameters parameters;
    private final Progress progress;
    private final List<PipeRun> runs = new ArrayList<>();
    private final SortedMap<Id, PipeId> feeds = new TreeMap<>();

    MainRoutes(RouteDraft draft, DigSite site, TrenchingParameters parameters, Progress progress) {
        this.draft = draft;
        this.site = site;
        this.parameters = parameters;
        this.progress = progress;
    }

    /** A place to be supplied. */
    private record Outlet(Id id, Point at, Phase phase) {}

    /** A pipe or a source that water can be taken from, anywhere along its line. */
    private record Feeder(UpstreamId id, List<Point> line) {}

    /** The water system with a new main, whose laterals still have to be made anew. */
    WaterSystem route() {
        WaterSystem water = draft.before().water();
        leadToManifolds(water);
        join(allFeeders(water), bibs(water));
        List<Manifold> manifolds = water.manifolds().stream()
                .map(one -> one.withOn(on(one.id(), one.on())))
                .toList();
        List<HoseBib> bibs = water.bibs().stream()
                .map(one -> one.withOn(on(one.id(), one.on())))
                .toList();
        return water.withLaterals(List.of()).withSupply(new Main(runs), manifolds, bibs);
    }

    /** The given pipe or the source at which the new main of each manifold begins; those that none can reach are left out. */
    SortedMap<ManifoldId, UpstreamId> beginnings() {
        WaterSystem water = draft.before().water();
        leadToManifolds(water);
        SortedMap<PipeId, UpstreamId> upstream = new TreeMap<>();
        runs.stream().filter(run -> !draft.isGiven(run.id())).forEach(run -> upstream.put(run.id(), run.from()));
        SortedMap<ManifoldId, UpstreamId> beginnings = new TreeMap<>();
        for (Manifold manifold : water.manifolds()) {
            UpstreamId at = feeds.get(manifold.id());
            while (at instanceof PipeId pipe && upstream.containsKey(pipe)) {
                at = upstream.get(pipe);
            }
            if (at != null) {
                beginnings.put(manifold.id(), at);
            }
        }
        return beginnings;
    }

    private void leadToManifolds(WaterSystem water) {
        water.main().runs().stream().filter(run -> draft.isGiven(run.id())).forEach(runs::add);
        join(manifoldFeeders(water), manifolds(water));
    }

    private Optional<PipeId> on(Id id, Optional<PipeId> before) {
        return draft.isGiven(before) ? before : Optional.ofNullable(feeds.get(id));
    }

    private List<Outlet> manifolds(WaterSystem water) {
        return water.manifolds().stream()
                .filter(one -> !draft.isGiven(one.on()))
                .map(one -> new Outlet(one.id(), one.at(), Phase.NOW))
                .toList();
    }

    private List<Outlet> bibs(WaterSystem water) {
        return water.bibs().stream()
                .filter(one -> !draft.isGiven(one.on()))
                .map(one -> new Outlet(one.id(), one.at(), one.phase()))
                .toList();
    }

    private List<Feeder> manifoldFeeders(WaterSystem water) {
        List<Feeder> guarded = runs.stream()
                .filter(run -> water.waterIn(run.id()) != Water.DRINKING)
                .map(run -> new Feeder(run.id(), run.route().points()))
                .toList();
        return guarded.isEmpty() ? allFeeders(water) : guarded;
    }

    private List<Feeder> allFeeders(WaterSystem water) {
        List<Feeder> feeders = new ArrayList<>();
        runs.forEach(run -> feeders.add(new Feeder(run.id(), run.route().points())));
        for (Source source : water.sources()) {
            if (runs.stream().noneMatch(run -> run.from().equals(source.id()))) {
                feeders.add(new Feeder(source.id(), List.of(source.at())));
            }
        }
        return feeders;
    }

    private void join(List<Feeder> feeders, List<Outlet> outlets) {
        if (outlets.isEmpty()) {
            return;
        }
        if (feeders.isEmpty()) {
            outlets.forEach(outlet -> draft.miss(outlet.id(), "there is no source or main that could feed it"));
            return;
        }
        outlets.forEach(outlet -> draft.work().cutReadyNear(outlet.at()));
        feeders.forEach(feeder -> feeder.line().forEach(draft.work()::cutReadyNear));
        var search = new RouteSearch(site, parameters.choices(), progress);
        search.addDug(draft.work(), draft.depthM("trench.cover.main", parameters));
        SortedMap<Integer, UpstreamId> springs = springs(search, feeders, outlets);
        SortedMap<Integer, Outlet> wanted = new TreeMap<>();
        for (Outlet outlet : outlets) {
            int place = search.place(outlet.at());
            if (springs.get(place) instanceof PipeId pipe) {
                feeds.put(outlet.id(), pipe);
            } else if (springs.containsKey(place) || wanted.containsKey(place)) {
                draft.miss(outlet.id(), "it stands where another part of the supply stands, so no pipe can lead to it");
            } else {
                wanted.put(place, outlet);
            }
        }
        if (!wanted.isEmpty()) {
            lay(search, springs, wanted);
        }
    }

    private static SortedMap<Integer, UpstreamId> springs(
            RouteSearch search, List<Feeder> feeders, List<Outlet> outlets) {
        SortedMap<Integer, UpstreamId> springs = new TreeMap<>();
        for (Feeder feeder : feeders) {
            for (Point point : feeder.line()) {
                springs.putIfAbsent(search.place(point), feeder.id());
            }
            for (Outlet outlet : outlets) {
                if (feeder.line().size() > 1) {
                    Point nearest = new Polyline(feeder.line()).nearest(outlet.at());
                    springs.putIfAbsent(search.place(nearest), feeder.id());
                }
            }
        }
        search.addSprings(List.copyOf(springs.keySet()));
        return springs;
    }

    private void lay(RouteSearch search, SortedMap<Integer, UpstreamId> springs, SortedMap<Integer, Outlet> wanted) {
        RouteSearch.Found found = search.join(springs.firstKey(), new TreeSet<>(wanted.keySet()));
        draft.count(found);
        found.missed()
                .forEach(place -> Optional.ofNullable(wanted.remove(place))
                        .ifPresent(outlet -> draft.miss(
                                outlet.id(),
                                "no trench may reach it from the main" + between(search, springs, outlet))));
        SortedSet<Integer> starts = new TreeSet<>(springs.keySet());
        List<PlaceTree.Leg> legs = found.tree().legs(starts, new TreeSet<>(wanted.keySet()));
        String series = parameters.mainSeries(draft.before().units());
        List<PipeId> ids = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            PlaceTree.Leg leg = legs.get(i);
            PipeId id = draft.nextName("main-");
            ids.add(id);
            UpstreamId from = leg.upstream() >= 0 ? ids.get(leg.upstream()) : upstream(springs, leg.start());
            runs.add(draft.run(id, from, search.at(leg.places()), series, phase(legs, i, wanted)));
            Optional.ofNullable(wanted.get(leg.end())).ifPresent(outlet -> feeds.put(outlet.id(), id));
        }
    }

    private String between(RouteSearch search, SortedMap<Integer, UpstreamId> springs, Outlet outlet) {
        Point nearest = springs.keySet().stream()
                .map(search::at)
                .min(Comparator.comparingDouble(outlet.at()::distanceM))
                .orElseThrow();
        return new Barriers(draft.before().terrain()).between(nearest, outlet.at());
    }

    private static UpstreamId upstream(SortedMap<Integer, UpstreamId> springs, int place) {
        UpstreamId id = springs.get(place);
        if (id == null) {
            throw new AssertionError("place " + place + " is no spring");
        }
        return id;
    }

    /** A stretch is laid now if anything that it feeds is built now. */
    private static Phase phase(List<PlaceTree.Leg> legs, int index, SortedMap<Integer, Outlet> wanted) {
        Outlet outlet = wanted.get(legs.get(index).end());
        if (outlet != null && outlet.phase() == Phase.NOW) {
            return Phase.NOW;
        }
        for (int i = index + 1; i < legs.size(); i++) {
            if (legs.get(i).upstream() == index && phase(legs, i, wanted) == Phase.NOW) {
                return Phase.NOW;
            }
        }
        return Phase.LATER;
    }
}
