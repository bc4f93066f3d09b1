package leat.model.water;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leat.model.fault.Require;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;

/**
 * All that carries water. Each list is kept sorted by id (pipes: upstream first); each name that is used exists, each
 * head is in at most one zone, each valve feeds at most one. An unfinished system is legal: heads without a zone, zones
 * without a lateral, pipes without a size.
 */
public record WaterSystem(
        List<Source> sources,
        List<BackflowPreventer> backflows,
        Main main,
        List<Manifold> manifolds,
        List<Head> heads,
        List<Zone> zones,
        List<Lateral> laterals,
        List<HoseBib> bibs) {

    public static final WaterSystem EMPTY =
            new WaterSystem(List.of(), List.of(), Main.EMPTY, List.of(), List.of(), List.of(), List.of(), List.of());

    public WaterSystem {
        sources = Require.unique("source", sources, Source::id);
        backflows = Require.unique("backflow preventer", backflows, BackflowPreventer::id);
        Require.present("water", "main", main);
        manifolds = Require.unique("manifold", manifolds, Manifold::id);
        heads = Require.unique("head", heads, Head::id);
        zones = Require.unique("zone", zones, Zone::id);
        laterals = Require.unique("lateral", laterals, Lateral::zone);
        bibs = Require.unique("hose bib", bibs, HoseBib::id);
        new WaterReferences(sources, main, manifolds, heads, zones, laterals).check(backflows, bibs);
    }

    public Optional<Source> source(SourceId id) {
        return sources.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<Head> head(HeadId id) {
        return heads.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<Zone> zone(ZoneId id) {
        return zones.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<Zone> zoneOf(HeadId head) {
        return zones.stream()
                .filter(zone -> Collections.binarySearch(zone.heads(), head) >= 0)
                .findFirst();
    }

    public Optional<Lateral> lateral(ZoneId zone) {
        return laterals.stream().filter(one -> one.zone().equals(zone)).findFirst();
    }

    public Optional<Manifold> manifoldOf(ValveId valve) {
        return manifolds.stream()
                .filter(manifold ->
                        manifold.valves().stream().anyMatch(one -> one.id().equals(valve)))
                .findFirst();
    }

    /** The run of the main or of a lateral. */
    public Optional<PipeRun> pipe(PipeId id) {
        return pipes().filter(run -> run.id().equals(id)).findFirst();
    }

    /** Runs of the main, then those of the laterals by zone; upstream runs first in each. */
    public Stream<PipeRun> pipes() {
        return Stream.concat(main.runs().stream(), laterals.stream().flatMap(lateral -> lateral.runs().stream()));
    }

    /** What feeds each pipe, found once; take this where many pipes are asked for, and ask it instead of the system. */
    public PipeFeeds feeds() {
        return new PipeFeeds(this);
    }

    /** The runs from the source's own to this one, in the direction of the flow; shorter when the supply is unfinished. */
    public List<PipeRun> pathTo(PipeId pipe) {
        return feeds().pathTo(pipe);
    }

    /** The source that feeds the run at last; empty when the supply is unfinished. */
    public Optional<Source> sourceOf(PipeId pipe) {
        return feeds().sourceOf(pipe);
    }

    /** What the run carries; drinking water while its supply is unfinished and nothing says otherwise. */
    public Water waterIn(PipeId pipe) {
        return feeds().waterIn(pipe);
    }

    public WaterSystem withMain(Main newMain) {
        return new WaterSystem(sources, backflows, newMain, manifolds, heads, zones, laterals, bibs);
    }

    public WaterSystem withHeads(List<Head> newHeads) {
        return new WaterSystem(sources, backflows, main, manifolds, newHeads, zones, laterals, bibs);
    }

    /** Manifolds and zones change together, since zones name valves. */
    public WaterSystem withZones(List<Manifold> newManifolds, List<Zone> newZones) {
        return new WaterSystem(sources, backflows, main, newManifolds, heads, newZones, laterals, bibs);
    }

    public WaterSystem withLaterals(List<Lateral> newLaterals) {
        return new WaterSystem(sources, backflows, main, manifolds, heads, zones, newLaterals, bibs);
    }

    /** Main, and what hangs on it by name. */
    public WaterSystem withSupply(Main newMain, List<Manifold> newManifolds, List<HoseBib> newBibs) {
        return new WaterSystem(sources, backflows, newMain, newManifolds, heads, zones, laterals, newBibs);
    }
}
