package leat.calc.wiring;

import static leat.calc.wiring.LampYard.again;
import static leat.calc.wiring.LampYard.broken;
import static leat.calc.wiring.LampYard.lamps;
import static leat.calc.wiring.LampYard.review;
import static leat.calc.wiring.LampYard.transformer150;
import static leat.calc.wiring.LampYard.voltage;
import static leat.calc.wiring.LampYard.wired;
import static leat.model.plan.Parts.amps;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.cable;
import static leat.model.plan.Parts.circle;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.pond;
import static leat.model.plan.Parts.transformer;
import static leat.model.plan.Parts.valveWires;
import static leat.model.plan.Parts.volts;
import static leat.model.plan.Parts.watts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leat.calc.Progress;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Severity;
import leat.model.finding.Status;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.LuminaireId;
import leat.model.id.TransformerId;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.power.Circuit;
import leat.model.power.CodeFamily;
import leat.model.quantity.Quantity;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LampTest {

    private static final TransformerId WALK = new TransformerId("walk");

    @ParameterizedTest
    @EnumSource
    void lampsAreWiredBehindTheirTransformer(CodeFamily family) {
        Site site = wired(family, transformer150(), lamps(8, 5));
        Circuit circuit =
                site.yard().power().circuit(new CircuitId("walk lamps")).orElseThrow();
        assertEquals(WALK, circuit.supply());
        assertEquals(8, site.yard().power().cablesOf(circuit.id()).size());
        assertEquals(
                Optional.empty(),
                site.yard().power().transformer(WALK).orElseThrow().circuit());
        assertEquals(List.of(), bad(site));
    }

    /** Breaches and cautions; what is left to others is a note. */
    private static List<String> bad(Site site) {
        return review(site).findings().stream()
                .filter(one -> one.severity() != Severity.NOTE)
                .map(one -> one.rule().id() + " " + one.subject())
                .toList();
    }

    @Test
    void theFinestCableAndTheLowestTapThatDoAreTaken() {
        Site few = wired(transformer150(), lamps(2, 4));
        assertEquals(new Voltage(15), tap(few)); // 12.5 A at 12 V are too much for 16 AWG, 10 A at 15 V are not
        assertEquals("16", conductor(few, "walk to lamp 1"));
        Site many = wired(transformer("walk").rating(watts(150)).pluggedInto("porch"), lamps(8, 5));
        assertEquals(new Voltage(12), tap(many));
        assertEquals("12", conductor(many, "walk to lamp 1"));
    }

    private static Voltage tap(Site site) {
        return site.yard()
                .power()
                .circuit(new CircuitId("walk lamps"))
                .orElseThrow()
                .voltage();
    }

    private static String conductor(Site site, String cable) {
        return site.yard()
                .power()
                .cable(new CableId(cable))
                .orElseThrow()
                .conductor()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource
    void planningAgainChangesNothing(CodeFamily family) {
        Site once = wired(family, transformer150(), lamps(6, 5));
        assertEquals(once.yard(), again(once).yard());
    }

    @Test
    void cablesOfLowVoltageLieShallow() {
        Site site = wired(transformer150(), lamps(1, 5));
        assertEquals(
                feet(0.5).metres(),
                review(site).covers().get(new CableId("walk to lamp 1")).metres(),
                1e-9);
    }

    @Test
    void theWayToAFigureEndsInIt() {
        Site site = wired(transformer150(), lamps(5, 6));
        WiringResult result = review(site);
        assertEquals(voltage(result, "lamp 5"), last(site, new LuminaireId("lamp 5"), "voltage"));
        assertEquals(
                result.load(new LuminaireId("lamp 5")).orElseThrow().current(),
                last(site, new LuminaireId("lamp 5"), "current"));
        assertEquals(result.transformer(WALK).orElseThrow().loaded(), last(site, WALK, "load"));
        assertEquals(
                result.circuit(new CircuitId("walk lamps")).orElseThrow().current(),
                last(site, new CircuitId("walk lamps"), "current"));
    }

    private static Quantity last(Site site, leat.model.id.Id id, String figure) {
        Ledger ledger = WiringReview.why(site, WiringReviewParameters.defaults(), id, figure);
        return ledger.steps().get(ledger.steps().size() - 1).value();
    }

    @Test
    void aTransformerWithoutAPlugGetsACircuitOfThePanel() {
        Site site = wired(transformer("walk").at(at(19, 16)).rating(watts(100)), lamps(2, 5));
        assertEquals(
                Optional.of(new CircuitId("outlets")),
                site.yard().power().transformer(WALK).orElseThrow().circuit());
        assertTrue(site.yard().power().powerCables().stream()
                .anyMatch(one -> one.to().equals(WALK)));
    }

    @Test
    void moreLampsThanACircuitBearsGetSeveral() {
        Site site = wired(transformer("walk").rating(watts(900)).pluggedInto("porch"), lamps(11, 50));
        assertEquals(3, site.yard().power().circuitsFrom(WALK).size());
    }

    // Damage

    @Test
    void thinCableStarvesTheLastLamp() {
        Finding found = finding(
                review(wired(
                        transformer150(),
                        lamps(2, 40),
                        circuit("run").from("walk").breaker(amps(10)),
                        luminaires("far", at(180, 12))
                                .draws(watts(40))
                                .from("walk")
                                .on("run")
                                .works(volts(10.8), volts(15)),
                        cable("thin", polyline(at(19, 12), at(180, 12)))
                                .circuit("run")
                                .from("walk")
                                .to("far 1")
                                .conductor("16"))),
                "power.lamp.least");
        assertEquals("luminaire far 1, voltage", found.subject().toString());
        assertEquals(new Voltage(10.8), found.limit());
        assertTrue(((Voltage) found.measured()).compareTo(new Voltage(10.8)) < 0);
        assertEquals(Severity.BREACH, found.severity());
    }

    private static Finding finding(WiringResult result, String rule) {
        return result.findings().stream()
                .filter(one -> one.rule().id().equals(rule))
                .findFirst()
                .orElseThrow(() -> new AssertionError(broken(result)));
    }

    @Test
    void aTapThatIsTooHighIsSaid() {
        Finding found = finding(
                review(wired(
                        transformer150(),
                        circuit("run").from("walk").voltage(volts(15)),
                        luminaires("old", at(25, 12))
                                .draws(watts(20))
                                .from("walk")
                                .on("run")
                                .works(volts(10.8), volts(12)))),
                "power.lamp.most");
        assertEquals(new Voltage(12), found.limit());
    }

    @Test
    void lampsOfLaterDoNotSaveThoseOfNowFromTooMuch() {
        Part now = luminaires("now", at(60, 12))
                .draws(watts(5))
                .from("walk")
                .on("run")
                .works(volts(9), volts(14));
        Part later = luminaires("later", at(64, 12))
                .draws(watts(60))
                .from("walk")
                .on("run")
                .works(volts(9), volts(14))
                .wiresNow();
        WiringResult result = review(wired(
                transformer150(),
                circuit("run").from("walk").voltage(volts(15)),
                now,
                later,
                cable("thin", polyline(at(19, 12), at(60, 12)))
                        .circuit("run")
                        .from("walk")
                        .to("now 1")
                        .conductor("14")));
        assertTrue(voltage(result, "now 1").compareTo(new Voltage(14)) < 0);
        assertEquals(
                "luminaire now 1, voltage",
                finding(result, "power.lamp.most").subject().toString());
    }

    @Test
    void anOverloadedTransformerIsSaid() {
        assertEquals(
                Severity.CAUTION,
                finding(review(wired(transformer150(), lamps(3, 42))), "power.transformer.load")
                        .severity());
        assertEquals(
                Severity.BREACH,
                finding(review(wired(transformer150(), lamps(4, 42))), "power.transformer.rating")
                        .severity());
    }

    @Test
    void anOutletIsReckonedWithForItsTransformers() {
        WiringResult result = review(wired(
                transformer("walk")
                        .rating(watts(900))
                        .taps(volts(12))
                        .pluggedInto("porch")
                        .at(at(19, 30)),
                lamps(2, 5)));
        assertEquals(
                "outlet porch, power",
                finding(result, "power.transformer.outlet").subject().toString());
        assertEquals(
                "transformer walk, at",
                finding(result, "power.transformer.cord").subject().toString());
    }

    @Test
    void wiresOfAnotherKindInTheSameConduitAreSaid() {
        Part duct = conduit("duct", polyline(at(19, 12), at(60, 12)));
        Part lamp = luminaires("lamp", at(60, 12)).draws(watts(5)).from("walk").on("run");
        Part run = circuit("run").from("walk");
        Part wires = cable("low", polyline(at(19, 12), at(60, 12)))
                .circuit("run")
                .from("walk")
                .to("lamp 1")
                .through("duct");
        Site valves = wired(
                transformer150(),
                duct,
                run,
                lamp,
                wires,
                controller("clock").at(at(19, 12)),
                manifold("box", at(60, 12)).valves("V1"),
                valveWires("valves", polyline(at(19, 12), at(60, 12)))
                        .from("clock")
                        .to("box")
                        .strands(2)
                        .through("duct"));
        assertEquals(
                "conduit duct", finding(review(valves), "power.mixed").subject().toString());
        Site mains = wired(
                transformer150(),
                duct,
                run,
                lamp,
                wires,
                circuit("mains").from("house").breaker(amps(15)),
                cable("mains", polyline(at(19, 12), at(60, 12)))
                        .circuit("mains")
                        .from("porch")
                        .to("house")
                        .through("duct"));
        assertEquals(
                "conduit duct", finding(review(mains), "power.mixed").subject().toString());
    }

    @Test
    void planningKeepsLampsOutOfConduitsOfOthers() {
        Site site = wired(
                transformer150(),
                lamps(1, 5),
                conduit("old duct", polyline(at(19, 12), at(34, 12)))
                        .existing()
                        .size("3/4")
                        .occupied("12", 3));
        assertEquals(
                List.of(),
                site.yard()
                        .power()
                        .cable(new CableId("walk to lamp 1"))
                        .orElseThrow()
                        .conduits());
        Site free = wired(
                transformer150(),
                lamps(1, 5),
                conduit("old duct", polyline(at(19, 12), at(34, 12))).existing().size("3/4"));
        assertEquals(
                List.of(new ConduitId("old duct")),
                free.yard()
                        .power()
                        .cable(new CableId("walk to lamp 1"))
                        .orElseThrow()
                        .conduits());
    }

    @Test
    void lampsAtTheWaterAndTooMuchVoltageAndCurrentAreSaid() {
        WiringResult result = review(wired(
                pond("pond", circle(at(60, 12), feet(4))),
                transformer("walk").rating(watts(1500)).taps(volts(36)).pluggedInto("porch"),
                circuit("run").from("walk"),
                luminaires("lamp", at(52, 12)).draws(watts(5)).from("walk").on("run")));
        assertEquals(feet(10), finding(result, "power.lamp.water").limit());
        assertEquals(new Voltage(36), finding(result, "power.lamp.voltage").measured());
        assertEquals(
                "circuit run, breaker",
                finding(result, "power.lamp.current").subject().toString());
    }

    @Test
    void whatNoCableCanDoIsAReason() {
        Site site = LampYard.site(
                CodeFamily.NFPA_70,
                transformer("walk").rating(watts(200)).pluggedInto("porch"),
                luminaires("far", at(190, 12)).draws(watts(150)).from("walk"));
        var proposal = Wiring.run(site, WiringParameters.defaults(), Progress.NONE);
        assertEquals(Status.PARTIAL, proposal.status());
        assertTrue(proposal.reasons().get(0).text().startsWith("no cable of the tables"), proposal.reasons()::toString);
    }

    // Phases

    @Test
    void wiresForLaterLampsAreLaidNow() {
        Site site = wired(transformer150(), lamps(2, 5).wiresNow());
        assertEquals(
                Phase.NOW,
                site.yard()
                        .power()
                        .cable(new CableId("lamp 1 to lamp 2"))
                        .orElseThrow()
                        .phase());
        Site later = wired(transformer150(), lamps(2, 5).phase(Phase.LATER));
        assertEquals(
                Phase.LATER,
                later.yard()
                        .power()
                        .cable(new CableId("lamp 1 to lamp 2"))
                        .orElseThrow()
                        .phase());
        assertFalse(bad(later).contains("power.cable"));
    }
}
