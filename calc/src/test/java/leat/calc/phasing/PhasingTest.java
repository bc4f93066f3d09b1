package leat.calc.phasing;

import static leat.model.plan.Parts.LATER;
import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.amps;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.cable;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.feed;
import static leat.model.plan.Parts.kilopascals;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.temporary;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.valveWires;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.fault.UnfinishedException;
import leat.model.finding.Finding;
import leat.model.finding.Severity;
import leat.model.plan.CablePart;
import leat.model.plan.Part;
import leat.model.plan.Parts;
import leat.model.plan.Path;
import leat.model.plan.PipePart;
import leat.model.plan.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan that is sound, and one thing of it after another put off until later. */
@Tag("law")
class PhasingTest {

    private static PipePart pipe(String name, double fromX, double toX, String from) {
        return pipe(name, polyline(at(fromX, 0), at(toX, 0))).from(from).series("PE100 SDR 11 (PN 16)");
    }

    private static PipePart pipe(String name, Path route) {
        return Parts.pipe(name, route);
    }

    private static CablePart wire(String name, double fromX, double toX, String from, String to) {
        return cable(name, polyline(at(fromX, 1), at(toX, 1)))
                .circuit("garden")
                .from(from)
                .to(to)
                .through("duct");
    }

    /** Street, main, a manifold with two zones, a bib; a panel, a circuit, an outlet behind a duct, a clock in the shed. */
    private static SortedMap<String, Part> parts() {
        SortedMap<String, Part> parts = new TreeMap<>();
        parts.put("shed", structure("shed", rectangle(at(20, 2), metres(3), metres(3))));
        parts.put("street", mains("street", at(0, 0)).staticPressure(kilopascals(400)));
        parts.put("main", pipe("main", 0, 10, "street"));
        parts.put("box", manifold("box", at(10, 0)).on("main").valves("V1", "V2"));
        parts.put("tap", bib("tap", at(5, 0)).on("main"));
        parts.put("S1", spray("S1", at(15, 0)).family("spray-4_6").arc(0, 90).radius(metres(4)));
        parts.put("S2", spray("S2", at(19, 0)).family("spray-4_6").arc(0, 90).radius(metres(4)));
        parts.put("Z1", zone("Z1").valve("V1").heads("S1"));
        parts.put("Z2", zone("Z2").valve("V2").heads("S2"));
        parts.put("L1", pipe("L1", 10, 15, "V1").to("S1"));
        parts.put("L2", pipe("L2", 10, 19, "V2").to("S2"));
        parts.put("house", panel("house", at(0, 1)).spareWays(2));
        parts.put("garden", circuit("garden").from("house").breaker(amps(16)));
        parts.put("duct", conduit("duct", polyline(at(0, 1), at(8, 1))));
        parts.put("court", outlet("court", at(8, 1)).on("garden"));
        parts.put("W1", wire("W1", 0, 8, "house", "court"));
        parts.put("clock", controller("clock").inside("shed").on("garden"));
        parts.put("W2", wire("W2", 8, 20, "court", "clock"));
        parts.put(
                "W3",
                valveWires("W3", polyline(at(20, 2), at(10, 0)))
                        .from("clock")
                        .to("box")
                        .strands(4));
        parts.put(
                "T1",
                trench("T1", polyline(at(0, 0), at(10, 0))).depth(metres(0.6)).holds("main"));
        return parts;
    }

    private static PhasingResult run(SortedMap<String, Part> parts) {
        Yard plot = yard("Plot").units(METRIC).with(parts.values().toArray(Part[]::new));
        return Phasing.run(StandingData.load(Yard.EDITION).siteOf(plot), PhasingParameters.defaults(), Progress.NONE);
    }

    private static List<String> breaches(SortedMap<String, Part> parts) {
        return run(parts).findings().stream()
                .filter(one -> one.severity() == Severity.BREACH)
                .map(one -> one.subject().toString())
                .toList();
    }

    private static List<String> ends(SortedMap<String, Part> parts) {
        return run(parts).ends().stream()
                .map(one -> one.id().name() + " " + one.kind() + " until "
                        + one.waitsFor().name())
                .toList();
    }

    @Test
    void aPlanOfNowIsSoundAndEndsNowhereEarly() {
        assertEquals(List.of(), run(parts()).findings());
        assertEquals(List.of(), run(parts()).ends());
    }

    private static Part later(String name) {
        return switch (name) {
            case "shed" ->
                structure("shed", rectangle(at(20, 2), metres(3), metres(3))).phase(LATER);
            case "main" -> pipe("main", 0, 10, "street").phase(LATER);
            case "L1" -> pipe("L1", 10, 15, "V1").to("S1").phase(LATER);
            case "house" -> panel("house", at(0, 1)).spareWays(2).isNew().phase(LATER);
            case "garden" -> circuit("garden").from("house").breaker(amps(16)).phase(LATER);
            case "duct" -> conduit("duct", polyline(at(0, 1), at(8, 1))).phase(LATER);
            case "court" -> outlet("court", at(8, 1)).on("garden").phase(LATER);
            case "W3" ->
                valveWires("W3", polyline(at(20, 2), at(10, 0)))
                        .from("clock")
                        .to("box")
                        .strands(4)
                        .phase(LATER);
            case "T1" ->
                trench("T1", polyline(at(0, 0), at(10, 0)))
                        .depth(metres(0.6))
                        .holds("main")
                        .phase(LATER);
            case "Z1" -> zone("Z1").valve("V1").heads("S1").phase(LATER);
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** What stands in the way of what, worked out by hand from the plan above. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shed | controller clock",
                "main | hose bib tap, manifold box",
                "L1 | head S1",
                "house | circuit garden, controller clock, outlet court",
                "garden | cable W1, cable W2, controller clock, outlet court",
                "duct | cable W1, cable W2",
                "court | controller clock",
                "W3 | zone Z1, zone Z2",
                "T1 | pipe main",
                "Z1 | none"
            })
    void whatIsPutOffStandsInTheWay(String name, String stranded) {
        SortedMap<String, Part> parts = parts();
        parts.put(name, later(name));
        List<String> expected = stranded.equals("none") ? List.of() : List.of(stranded.split(", "));
        assertEquals(expected, breaches(parts).stream().sorted().toList());
    }

    @Test
    void bothCuresAreNamedAndTheSecondCures() {
        SortedMap<String, Part> parts = parts();
        parts.put("shed", later("shed"));
        Finding breach = run(parts).findings().get(0);
        assertEquals(
                "build these now as well: surface shed; or state a temporary arrangement for controller clock",
                breach.advice());
        parts.put("post", temporary("controller clock", "hung on a post by the gate until the shed stands"));
        Finding note = run(parts).findings().get(0);
        assertEquals(Severity.NOTE, note.severity());
        assertTrue(note.advice().contains("hung on a post by the gate"), note.advice());
    }

    @Test
    void anArrangementThatNothingNeedsIsANote() {
        SortedMap<String, Part> parts = parts();
        parts.put("post", temporary("controller clock", "hung on a post"));
        assertEquals(
                List.of("phase.temporary NOTE"),
                run(parts).findings().stream()
                        .map(one -> one.rule().id() + " " + one.severity())
                        .toList());
        parts.put("post", temporary("controller clok", "hung on a post"));
        var refused = assertThrows(UnfinishedException.class, () -> run(parts));
        assertTrue(String.valueOf(refused.getMessage()).contains("perhaps 'controller clock'"), refused.getMessage());
    }

    @Test
    void whatIsLaidAheadEndsCapped() {
        SortedMap<String, Part> parts = parts();
        parts.put("L1b", pipe("L1b", 12, 17, "L1").phase(LATER));
        parts.put("Z2", zone("Z2").valve("V2").heads("S2").phase(LATER));
        parts.put("L2", pipe("L2", 10, 19, "V2").to("S2").phase(LATER));
        parts.put("tap", bib("tap", at(5, 0)).on("main").phase(LATER));
        parts.put(
                "lights",
                luminaires("path", at(12, 3)).on("garden").phase(LATER).wiresNow());
        parts.put("W4", wire("W4", 8, 12, "court", "path 1"));
        parts.put(
                "hut",
                structure("hut", rectangle(at(30, 2), metres(3), metres(3))).phase(LATER));
        parts.put("feed", feed("hut").on("garden").phase(LATER).conduitNow());
        parts.put("duct 2", conduit("duct 2", polyline(at(8, 1), at(30, 2))));
        parts.put(
                "W5",
                cable("W5", polyline(at(8, 1), at(30, 2)))
                        .circuit("garden")
                        .from("court")
                        .to("hut")
                        .through("duct 2")
                        .phase(LATER));
        assertEquals(List.of(), breaches(parts));
        assertEquals(
                List.of(
                        "W4 WIRES until path 1",
                        "duct 2 CONDUIT until W5",
                        "L1 PIPE until L1b",
                        "main PIPE until tap",
                        "V2 VALVE until Z2"),
                ends(parts));
    }

    /** What is there already carries what comes later, and waits for nothing. */
    @Test
    void whatIsThereAlreadyNeitherWaitsNorEnds() {
        SortedMap<String, Part> parts = parts();
        parts.put("main", pipe("main", 0, 10, "street").existing().phase(LATER));
        parts.put(
                "duct", conduit("duct", polyline(at(0, 1), at(8, 1))).existing().phase(LATER));
        parts.put("branch", pipe("branch", 5, 8, "main").phase(LATER));
        assertEquals(List.of(), breaches(parts));
        assertEquals(List.of(), ends(parts));
    }
}
