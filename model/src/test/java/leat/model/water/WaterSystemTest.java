package leat.model.water;

import static leat.model.Refusals.refused;
import static leat.model.water.Plumbing.and;
import static leat.model.water.Plumbing.backflow;
import static leat.model.water.Plumbing.bib;
import static leat.model.water.Plumbing.lateral;
import static leat.model.water.Plumbing.mains;
import static leat.model.water.Plumbing.manifold;
import static leat.model.water.Plumbing.rotor;
import static leat.model.water.Plumbing.run;
import static leat.model.water.Plumbing.runFrom;
import static leat.model.water.Plumbing.spare;
import static leat.model.water.Plumbing.valve;
import static leat.model.water.Plumbing.zone;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.UpstreamId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class WaterSystemTest {

    private final WaterSystem whole = Plumbing.whole();

    private static List<String> names(List<PipeRun> runs) {
        return runs.stream().map(run -> run.id().name()).toList();
    }

    @Tag("law")
    @Test
    void pathsRunFromTheSourceThroughTheManifold() {
        assertEquals(List.of("service", "main", "main end", "F1", "F2"), names(whole.pathTo(new PipeId("F2"))));
        assertEquals(List.of("service"), names(whole.pathTo(new PipeId("service"))));
        assertEquals(List.of("S1"), names(whole.pathTo(new PipeId("S1"))), "its manifold has no supply yet");
        assertEquals(List.of(), whole.pathTo(new PipeId("nowhere")));
        assertEquals(
                Optional.of(new SourceId("street")),
                whole.sourceOf(new PipeId("B1")).map(Source::id));
        assertEquals(
                Optional.of(new SourceId("tank")),
                whole.sourceOf(new PipeId("butt")).map(Source::id));
        assertEquals(Optional.empty(), whole.sourceOf(new PipeId("S1")));
        assertEquals(Optional.empty(), whole.sourceOf(new PipeId("nowhere")));
    }

    @Tag("law")
    @Test
    void theBackflowPreventerPartsTheWaters() {
        assertEquals(Water.DRINKING, whole.waterIn(new PipeId("service")));
        assertEquals(Water.DRINKING, whole.waterIn(new PipeId("house side")));
        assertEquals(Water.IRRIGATION, whole.waterIn(new PipeId("main")), "it stands at the inlet of the run");
        assertEquals(Water.IRRIGATION, whole.waterIn(new PipeId("main end")));
        assertEquals(Water.IRRIGATION, whole.waterIn(new PipeId("F3")));
        assertEquals(Water.NON_DRINKING, whole.waterIn(new PipeId("butt")));
        assertEquals(Water.DRINKING, whole.waterIn(new PipeId("S1")), "taken for drinking water until it has a supply");
    }

    @Tag("law")
    @Test
    void thingsAreFoundByName() {
        assertEquals("R10", whole.head(new HeadId("R10")).orElseThrow().id().name());
        assertEquals("front", whole.zoneOf(new HeadId("R2")).orElseThrow().id().name());
        assertEquals(Optional.empty(), whole.zoneOf(new HeadId("R3")));
        assertEquals(
                "back", whole.lateral(new ZoneId("back")).orElseThrow().zone().name());
        assertEquals(
                "box", whole.manifoldOf(new ValveId("V3")).orElseThrow().id().name());
        assertEquals(Optional.empty(), whole.manifoldOf(new ValveId("V9")));
        assertEquals("V1", whole.zone(new ZoneId("front")).orElseThrow().valve().name());
        assertEquals(
                "street",
                whole.source(new SourceId("street")).orElseThrow().id().name());
        assertEquals(Optional.empty(), whole.pipe(new PipeId("nowhere")));
        assertEquals(
                List.of("R1", "R2", "R3", "R10"),
                whole.heads().stream().map(h -> h.id().name()).toList());
    }

    /** Random trees, given in any order: each run comes after the one that feeds it, and paths go back to the source. */
    @Tag("law")
    @RepeatedTest(60)
    void upstreamRunsStandFirst(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        int count = 1 + random.nextInt(60);
        List<PipeRun> runs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            UpstreamId from =
                    i == 0 || random.nextInt(8) == 0 ? new SourceId("street") : new PipeId("P" + random.nextInt(i));
            runs.add(run("P" + i, from));
        }
        Main inOrder = new Main(runs);
        Collections.shuffle(runs, random);
        Main main = new Main(runs);
        assertEquals(inOrder, main, "whatever the order they are given in");
        TreeSet<UpstreamId> seen = new TreeSet<>();
        seen.add(new SourceId("street"));
        for (PipeRun run : main.runs()) {
            assertTrue(seen.contains(run.from()));
            seen.add(run.id());
        }
        WaterSystem water = new WaterSystem(
                List.of(mains("street")), List.of(), main, List.of(), List.of(), List.of(), List.of(), List.of());
        PipeFeeds feeds = water.feeds();
        for (PipeRun run : main.runs()) {
            List<PipeRun> path = feeds.pathTo(run.id());
            assertEquals(run, path.get(path.size() - 1));
            assertEquals(new SourceId("street"), path.get(0).from());
            for (int i = 1; i < path.size(); i++) {
                assertEquals(path.get(i - 1).id(), path.get(i).from());
                assertEquals(Optional.of(path.get(i - 1)), feeds.upstreamOf(path.get(i)));
            }
            assertEquals(path, water.pathTo(run.id()));
            assertEquals(feeds.waterIn(run.id()), water.waterIn(run.id()));
            assertEquals(Optional.of(run), feeds.pipe(run.id()));
        }
    }

    /** A long chain is no trap: it was found slow once, when each lookup walked through all pipes. */
    @Tag("law")
    @Test
    void aChainOfThousandsIsWalkedInTime() {
        List<PipeRun> runs = new ArrayList<>(List.of(run("P0", new SourceId("street"))));
        for (int i = 1; i < 5_000; i++) {
            runs.add(runFrom("P" + i, "P" + (i - 1)));
        }
        Collections.reverse(runs);
        WaterSystem water = new WaterSystem(
                List.of(mains("street")),
                List.of(),
                new Main(runs),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        assertEquals(5_000, water.pathTo(new PipeId("P4999")).size());
    }

    @Tag("law")
    @Test
    void partsAreExchangedWithoutTouchingTheOthers() {
        assertEquals(
                whole, whole.withMain(whole.main()).withHeads(whole.heads()).withLaterals(whole.laterals()));
        assertEquals(whole, whole.withZones(whole.manifolds(), whole.zones()));
        assertEquals(whole, whole.withSupply(whole.main(), whole.manifolds(), whole.bibs()));
        assertEquals(5, whole.withHeads(and(whole.heads(), rotor("R4"))).heads().size());
    }

    @Tag("pinned")
    @Test
    void pipesThatAreFedByNothing() {
        refused(
                "pipe branch: from is 'stret', which is not there; it must be the name of a source",
                () -> whole.withMain(new Main(and(whole.main().runs(), run("branch", new SourceId("stret"))))));
        refused(
                "main, pipe branch: from is 'mian', no pipe of it; it must be one of its own pipes or what feeds them",
                () -> new Main(and(whole.main().runs(), runFrom("branch", "mian"))));
        refused(
                "main, pipe branch: from is a valve; it must be a source or a pipe of the main",
                () -> new Main(List.of(run("branch", new ValveId("V1")))));
        refused(
                "lateral of zone front, pipe F9: from is 'main', no pipe of it; it must be one of its own pipes or what feeds them",
                () -> lateral("front", List.of(runFrom("F9", "main"))));
        refused(
                "lateral of zone front, pipe F9: from is a source; it must be the zone's valve or a pipe of the lateral",
                () -> lateral("front", List.of(run("F9", new SourceId("street")))));
        refused("pipe X: from is itself; it must be another pipe, a source or a valve", () -> runFrom("X", "X"));
        refused(
                "main, pipe A: from is in a loop through A, B; it must be a feed from outside it",
                () -> new Main(List.of(runFrom("A", "B"), runFrom("B", "A"), runFrom("C", "B"))));
        refused(
                "main, pipe Y: from is in a loop through Y, Z; it must be a feed from outside it",
                () -> new Main(List.of(runFrom("A", "Y"), runFrom("Y", "Z"), runFrom("Z", "Y"))));
    }

    @Tag("pinned")
    @Test
    void thingsOnPipesThatAreNotThere() {
        refused(
                "backflow preventer cage: on is 'mian', which is not there; it must be the name of a pipe of the main",
                () -> new WaterSystem(
                        whole.sources(),
                        List.of(backflow("cage", "mian")),
                        whole.main(),
                        whole.manifolds(),
                        whole.heads(),
                        whole.zones(),
                        whole.laterals(),
                        whole.bibs()));
        refused(
                "hose bib court: on is 'F1', which is not there; it must be the name of a pipe of the main",
                () -> whole.withSupply(whole.main(), whole.manifolds(), List.of(bib("court", "F1"))));
        refused(
                "manifold box: on is 'mian', which is not there; it must be the name of a pipe of the main",
                () -> whole.withZones(
                        List.of(manifold("box", "mian", valve("V1"), valve("V2"), valve("V4"))), whole.zones()));
    }

    @Tag("pinned")
    @Test
    void zonesWithoutAValveOrAHead() {
        refused(
                "zone front: valve is 'V9', which is not there; it must be the name of a valve of a manifold",
                () -> whole.withZones(whole.manifolds(), List.of(zone("front", "V9"))));
        refused(
                "zone front: valve is 'V3', which is a spare; it must be a valve that is free and no spare",
                () -> whole.withZones(whole.manifolds(), List.of(zone("front", "V3"))));
        refused(
                "zone front: valve is 'V1', which feeds another zone; it must be a valve that is free and no spare",
                () -> whole.withZones(whole.manifolds(), List.of(zone("front", "V1"), zone("back", "V1"))));
        refused(
                "zone front: heads is 'R99', which is not there; it must be the name of a head",
                () -> whole.withZones(whole.manifolds(), and(whole.zones().subList(0, 1), zone("front", "V1", "R99"))));
        refused(
                "zone front: heads is 'R10', which is in another zone; it must be a head of no other zone",
                () -> whole.withZones(
                        whole.manifolds(), List.of(zone("back", "V2", "R10"), zone("front", "V1", "R10"))));
        refused(
                "zone front, head R1: id is used twice; it must be unique among its kind",
                () -> zone("front", "V1", "R1", "R1"));
    }

    @Tag("pinned")
    @Test
    void lateralsThatDoNotFitTheirZone() {
        refused(
                "lateral of zone lawn: zone is 'lawn', which is not there; it must be the name of a zone",
                () -> whole.withLaterals(List.of(lateral("lawn", List.of()))));
        refused(
                "pipe F1: from is valve V2; it must be the zone's own valve V1",
                () -> whole.withLaterals(List.of(lateral("front", List.of(run("F1", new ValveId("V2")))))));
        refused(
                "lateral of zone front: heads is 'R10'; it must be a head of the zone",
                () -> whole.withLaterals(
                        List.of(lateral("front", List.of(run("F1", new ValveId("V1"))), "R10", "F1"))));
        refused(
                "lateral of zone front, head R1: pipe is 'F9'; it must be a pipe of the lateral",
                () -> lateral("front", List.of(run("F1", new ValveId("V1"))), "R1", "F9"));
    }

    @Tag("pinned")
    @Test
    void namesThatAreUsedTwice() {
        refused(
                "pipe main: id is used twice; it must be unique among its kind",
                () -> whole.withLaterals(List.of(lateral("front", List.of(run("main", new ValveId("V1")))))));
        refused(
                "pipe main: id is used twice; it must be unique among its kind",
                () -> new Main(and(whole.main().runs(), runFrom("main", "service"))));
        refused(
                "valve V1: id is used twice; it must be unique among its kind",
                () -> whole.withZones(and(whole.manifolds(), manifold("more", "", valve("V1"))), whole.zones()));
        refused(
                "valve V1: id is used twice; it must be unique among its kind",
                () -> manifold("box", "", valve("V1"), spare("V1")));
        refused(
                "head R1: id is used twice; it must be unique among its kind",
                () -> whole.withHeads(and(whole.heads(), rotor("R1"))));
        refused(
                "hose bib court: id is used twice; it must be unique among its kind",
                () -> whole.withSupply(whole.main(), whole.manifolds(), and(whole.bibs(), bib("court", ""))));
    }
}
