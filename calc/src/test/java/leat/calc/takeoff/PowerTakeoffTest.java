package leat.calc.takeoff;

import static leat.model.plan.Parts.LATER;
import static leat.model.plan.Parts.amps;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.cable;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.feed;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.valveWires;
import static leat.model.plan.Parts.volts;
import static leat.model.plan.Parts.watts;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.calc.digging.Digging;
import leat.calc.digging.DiggingParameters;
import leat.document.StandingData;
import leat.model.catalog.MaterialKind;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Source: counted by hand on the drawing that the yard states; feet, flat, trenches 18 in deep. */
@Tag("reference")
class PowerTakeoffTest {

    private static final double DEPTH_M = Length.inches(18).metres();
    private static final double BOX_M = 0.45;
    private static final double SLACK_M = 0.3;

    /**
     * An outlet in this year's works at the end of an L of conduit, a light of later that gets its wires now, a feed of
     * later that gets an empty conduit now, and valve wires in the ground.
     */
    private final Yard plot = yard("Plot")
            .with(
                    structure("shed", rectangle(at(60, 0), feet(6), feet(4))).phase(LATER),
                    panel("house", at(0, 0)),
                    circuit("garden").from("house").breaker(amps(20)).groundFault(),
                    circuit("pond")
                            .from("house")
                            .breaker(amps(30))
                            .voltage(volts(240))
                            .phase(LATER),
                    outlet("court", at(20, 10)).on("garden").groundFault(),
                    luminaires("path", at(20, 30)).on("garden").wiresNow(),
                    feed("shed").draws(watts(900)).phase(LATER),
                    controller("clock").at(at(0, 0)).stations(6),
                    manifold("box", at(0, 30)).valves("V1", "V2"),
                    conduit("c1", polyline(at(0, 0), at(20, 0), at(20, 10))).size("3/4"),
                    conduit("c2", polyline(at(20, 10), at(20, 30))).size("1/2"),
                    conduit("c3", polyline(at(0, 0), at(60, 0))).size("1"),
                    cable("r1", polyline(at(0, 0), at(20, 0), at(20, 10)))
                            .circuit("garden")
                            .from("house")
                            .to("court")
                            .through("c1")
                            .conductor("12"),
                    cable("r2", polyline(at(20, 10), at(20, 30)))
                            .circuit("garden")
                            .from("court")
                            .to("path 1")
                            .through("c2")
                            .conductor("14"),
                    valveWires("w", polyline(at(0, 0), at(0, 30)))
                            .from("clock")
                            .to("box")
                            .conductor("18")
                            .strands(5),
                    trench("T1", polyline(at(0, 0), at(20, 0), at(20, 10)))
                            .depth(new Length(DEPTH_M))
                            .holdsConduits("c1"),
                    trench("T2", polyline(at(20, 10), at(20, 30)))
                            .depth(new Length(DEPTH_M))
                            .holdsConduits("c2"),
                    trench("T3", polyline(at(0, 0), at(60, 0)))
                            .depth(new Length(DEPTH_M))
                            .holdsConduits("c3"),
                    trench("T4", polyline(at(0, 0), at(0, 30)))
                            .depth(new Length(DEPTH_M))
                            .byHand()
                            .holdsCables("w"));

    private final TakeoffResult takeoff = takeoff(plot);

    private static TakeoffResult takeoff(Yard yard) {
        Site site = StandingData.load(Yard.EDITION).siteOf(yard);
        var digging = Digging.run(site, DiggingParameters.defaults(), Progress.NONE);
        return Takeoff.run(site, TakeoffParameters.defaults().withDigging(digging), Progress.NONE);
    }

    @Test
    void conductorsAreAsLongAsTheirWayWithRisesAndSlack() {
        double ends = 2 * (DEPTH_M + BOX_M + SLACK_M);
        double first = Length.feet(30).metres() + ends;
        double second = Length.feet(20).metres() + ends;
        SortedMap<String, Double> wires = sums(MaterialKind.WIRE, Phase.NOW);
        for (String colour : new String[] {"black", "white", "green"}) {
            assertEquals(first, wires.get("wire 12 AWG " + colour), 1e-9);
            assertEquals(second, wires.get("wire 14 AWG " + colour), 1e-9);
        }
        assertEquals(Length.feet(30).metres() + ends, wires.get("valve cable 18 AWG, 5 strands"), 1e-9);
        assertEquals(7, wires.size());
    }

    @Test
    void conduitsAreCutFromSticksOfTenFeet() {
        SortedMap<String, Double> tubes = sums(MaterialKind.CONDUIT, Phase.NOW);
        assertEquals(Length.feet(33).metres(), tubes.get("conduit 3/4 PVC-40"), 1e-9);
        assertEquals(Length.feet(23).metres(), tubes.get("conduit 1/2 PVC-40"), 1e-9);
        assertEquals(Length.feet(63).metres(), tubes.get("conduit 1 PVC-40"), 1e-9);
        assertEquals(
                new TreeMap<>(Map.ofEntries(
                        Map.entry("sweep 90 3/4 PVC-40", 3.0), // two ends and the corner
                        Map.entry("sweep 90 1/2 PVC-40", 2.0),
                        Map.entry("sweep 90 1 PVC-40", 2.0),
                        Map.entry("conduit coupling 3/4 PVC-40", 6.0), // 33 ft: three joints; three sweeps
                        Map.entry("conduit coupling 1/2 PVC-40", 4.0), // 23 ft: two joints; two sweeps
                        Map.entry("conduit coupling 1 PVC-40", 8.0), // 63 ft: six joints; two sweeps
                        Map.entry("conduit terminal adapter 3/4 PVC-40", 2.0),
                        Map.entry("conduit terminal adapter 1/2 PVC-40", 2.0),
                        Map.entry("conduit cap 1 PVC-40", 2.0))),
                sums(MaterialKind.CONDUIT_FITTING, Phase.NOW));
    }

    @Test
    void whatEndsEarlyIsCappedBoxedAndTagged() {
        SortedMap<String, Double> marking = sums(MaterialKind.MARKING, Phase.NOW);
        assertEquals(3, marking.get("tag"), "two ends of the empty conduit, one of the wires");
        assertEquals(Length.feet(63).metres() + 2 * SLACK_M, marking.get("pull string"), 1e-9);
        SortedMap<String, Double> devices = sums(MaterialKind.ELECTRICAL_DEVICE, Phase.NOW);
        assertEquals(3, devices.get("wire connector"));
        assertEquals(4, devices.get("splice connector waterproof"), "two for each valve");
        assertEquals(2, sums(MaterialKind.ELECTRICAL_BOX, Phase.NOW).get("outdoor box"));
        assertEquals(
                Length.feet(30 + 20 + 60).metres(),
                marking.get("warning tape electric"),
                1e-9,
                "not above valve wires");
    }

    @Test
    void devicesAreThoseOfEachPhase() {
        SortedMap<String, Double> now = sums(MaterialKind.ELECTRICAL_DEVICE, Phase.NOW);
        assertEquals(1, now.get("breaker 20 A, 1 pole, ground fault"));
        assertEquals(1, now.get("outlet with ground-fault protection"));
        assertEquals(1, now.get("controller 6 stations"));
        SortedMap<String, Double> later = sums(MaterialKind.ELECTRICAL_DEVICE, Phase.LATER);
        assertEquals(1, later.get("breaker 30 A, 2 poles"));
        assertEquals(1, later.get("feed disconnect"));
        assertEquals(
                1,
                later.keySet().stream()
                        .filter(key -> key.startsWith("luminaire"))
                        .count());
        SortedMap<String, Double> labour = sums(MaterialKind.LABOUR, Phase.NOW);
        assertEquals(Length.feet(30).metres(), labour.get("trench dug by hand"), 1e-9);
        assertEquals(Length.feet(110).metres(), labour.get("trench dug by machine"), 1e-9);
    }

    /** An L in three pieces is one conduit: two rises, and a sweep at the corner. */
    @Test
    void conduitsThatGoOnAsOthersNeitherRiseNorEndThere() {
        Yard pieces = yard("Pieces")
                .with(
                        panel("house", at(0, 0)),
                        circuit("garden").from("house").breaker(amps(20)),
                        outlet("court", at(20, 10)).on("garden"),
                        conduit("p1", polyline(at(0, 0), at(8, 0))).size("3/4"),
                        conduit("p2", polyline(at(20, 0), at(8, 0))).size("3/4"),
                        conduit("p3", polyline(at(20, 0), at(20, 10))).size("3/4"),
                        cable("r1", polyline(at(0, 0), at(20, 0), at(20, 10)))
                                .circuit("garden")
                                .from("house")
                                .to("court")
                                .through("p1", "p2", "p3")
                                .conductor("12"),
                        trench("T1", polyline(at(0, 0), at(20, 0), at(20, 10)))
                                .depth(new Length(DEPTH_M))
                                .holdsConduits("p1", "p2", "p3"));
        SortedMap<String, Double> fittings = new TreeMap<>();
        takeoff(pieces).lines().stream()
                .filter(line -> line.kind() == MaterialKind.CONDUIT_FITTING || line.kind() == MaterialKind.CONDUIT)
                .forEach(line -> fittings.put(line.key(), line.quantity().si()));
        assertEquals(Length.feet(33).metres(), fittings.remove("conduit 3/4 PVC-40"), 1e-9);
        assertEquals(
                new TreeMap<>(Map.of(
                        "sweep 90 3/4 PVC-40", 3.0,
                        // two between the pieces, one at the corner, two at the rises, two joints of stock
                        "conduit coupling 3/4 PVC-40", 7.0,
                        "conduit terminal adapter 3/4 PVC-40", 2.0)),
                fittings);
    }

    private SortedMap<String, Double> sums(MaterialKind kind, Phase phase) {
        SortedMap<String, Double> sums = new TreeMap<>();
        takeoff.lines().stream()
                .filter(line -> line.kind() == kind && line.phase() == phase)
                .forEach(line -> sums.put(line.key(), line.quantity().si()));
        return sums;
    }
}
