package leat.calc.wiring;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.US;
import static leat.model.plan.Parts.amps;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.cable;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.valveWires;
import static leat.model.plan.Parts.watts;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import leat.calc.Progress;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Ledger;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.Id;
import leat.model.id.OutletId;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.power.Conduit;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.WireGroup;
import leat.model.quantity.Quantity;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is found when something is wrong, one thing at a time; and figures against their ledgers. */
class WiringReviewTest {

    private static final List<String> LEFT_TO_OTHERS = List.of("power.disconnect", "power.electrode", "power.permit");

    private static WiringResult review(Site site) {
        return WiringReview.run(site, WiringReviewParameters.defaults(), Progress.NONE);
    }

    /** Each as rule and subject, without what is left to licensed people whatever the plan says. */
    private static List<String> findings(Site site) {
        return review(site).findings().stream()
                .filter(finding -> !LEFT_TO_OTHERS.contains(finding.rule().id()))
                .map(finding -> finding.rule().id() + ": " + finding.subject())
                .sorted()
                .toList();
    }

    private static Site damaged(UnaryOperator<PowerCable> cables, UnaryOperator<Conduit> conduits) {
        Site site = WiredYard.wired();
        PowerSystem power = site.yard().power();
        PowerSystem changed = power.with(
                power.circuits(),
                power.loads().toList(),
                power.conduits().stream().map(conduits).toList(),
                power.powerCables().stream().map(cables).toList(),
                power.valveCables());
        return site.with(site.yard().withPower(changed));
    }

    @Test
    void whatIsPlannedIsInOrder() {
        assertEquals(List.of(), findings(WiredYard.wired()));
        assertEquals(
                LEFT_TO_OTHERS,
                review(WiredYard.wired()).findings().stream()
                        .map(finding -> finding.rule().id())
                        .sorted()
                        .toList());
    }

    @Test
    void aThinWireMayNotHaveItsBreaker() {
        var thin = new CableId("house to court");
        Site site = damaged(one -> one.id().equals(thin) ? one.withConductor(Optional.of("14")) : one, one -> one);
        assertEquals(List.of("power.breaker: cable house to court, conductor"), findings(site));
    }

    @Test
    void aDuctThatIsTooFullIsFound() {
        var duct = new ConduitId("old duct");
        Site site = damaged(one -> one, one -> one.id().equals(duct) ? with(one, new WireGroup("1/0", 1)) : one);
        assertEquals(List.of("power.fill.more: conduit old duct"), findings(site));
    }

    private static Conduit with(Conduit one, WireGroup wires) {
        return new Conduit(
                one.id(), one.route(), one.series(), one.size(), one.existing(), List.of(wires), one.phase());
    }

    @Test
    void aFullDuctIsLeftAlone() {
        Site site = WiredYard.site();
        PowerSystem power = site.yard().power();
        PowerSystem full = power.with(
                power.circuits(),
                power.loads().toList(),
                power.conduits().stream()
                        .map(one -> with(one, new WireGroup("1/0", 1)))
                        .toList(),
                power.powerCables(),
                power.valveCables());
        Site before = site.with(site.yard().withPower(full));
        Site wired = before.with(
                Wiring.run(before, WiringParameters.defaults(), Progress.NONE).yard());
        assertTrue(wired.yard().power().cablesIn(new ConduitId("old duct")).isEmpty());
        assertEquals(List.of(), findings(wired));
    }

    /** A yard of which every part is stated: nothing is planned. */
    private static Site drawn(Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                panel("house", at(0, 0)).spareWays(1),
                circuit("garden").from("house").breaker(amps(20)).groundFault(),
                outlet("gate", at(50, 0)).on("garden"),
                conduit("new duct", polyline(at(0, 0), at(50, 0))).size("3/4"),
                cable("feed", polyline(at(0, 0), at(50, 0)))
                        .circuit("garden")
                        .from("house")
                        .to("gate")
                        .through("new duct")
                        .conductor("12"),
                trench("T1", polyline(at(0, 0), at(50, 0))).depth(inches(21)).holdsConduits("new duct")));
        parts.addAll(List.of(more));
        return WiredYard.siteOf(yard("Plot").units(US).with(parts.toArray(Part[]::new)));
    }

    @Test
    void whatIsDrawnWellIsInOrder() {
        assertEquals(List.of(), findings(drawn()));
    }

    @Test
    void powerInTheConduitOfValveWiresIsFound() {
        Site site = drawn(
                controller("clock").at(at(0, 1)).on("garden").stations(2),
                manifold("box", at(50, 1)).valves("V1", "V2"),
                valveWires("valves", polyline(at(0, 1), at(50, 1)))
                        .from("clock")
                        .to("box")
                        .through("new duct")
                        .conductor("18")
                        .strands(5));
        assertEquals(List.of("power.mixed: conduit new duct"), findings(site));
    }

    @Test
    void aControllerWithTooFewStationsAndTooFewWiresIsFound() {
        Site site = drawn(
                controller("clock").at(at(0, 1)).on("garden").stations(2),
                manifold("box", at(50, 9)).valves("V1", "V2", "V3"),
                valveWires("valves", polyline(at(0, 1), at(50, 9)))
                        .from("clock")
                        .to("box")
                        .conductor("18")
                        .strands(3));
        assertEquals(
                List.of("power.stations: controller clock, stations", "power.strands: cable valves, strands"),
                findings(site));
    }

    @Test
    void whatLeadsNowhereAndWhatIsNotFinishedIsFound() {
        Site site = drawn(
                outlet("lonely", at(20, 20)),
                outlet("dark", at(20, 30)).on("garden"),
                cable("astray", polyline(at(50, 0), at(50, 20)))
                        .circuit("garden")
                        .from("gate")
                        .to("gate 2"),
                outlet("gate 2", at(50, 30)).on("garden"));
        assertEquals(
                List.of(
                        "power.cable: outlet dark",
                        "power.circuit: outlet lonely",
                        "power.size: cable astray, conductor",
                        "power.touch: cable astray, to"),
                findings(site));
    }

    @Test
    void tooManyCircuitsForThePanelAreFound() {
        Site site = drawn(circuit("second").from("house").breaker(amps(20)));
        assertEquals(List.of("power.ways: panel house, spareWays"), findings(site));
    }

    @Test
    void outletsWithoutProtectionAndShallowConduitsAreFound() {
        Site site = WiredYard.siteOf(yard("Plot")
                .units(US)
                .with(
                        panel("house", at(0, 0)).spareWays(1),
                        circuit("garden").from("house").breaker(amps(20)),
                        outlet("gate", at(50, 0)).on("garden"),
                        outlet("shed", at(50, 1)).on("garden").groundFault(),
                        conduit("duct", polyline(at(0, 0), at(50, 0))).size("3/4"),
                        cable("feed", polyline(at(0, 0), at(50, 0)))
                                .circuit("garden")
                                .from("house")
                                .to("gate")
                                .through("duct")
                                .conductor("12"),
                        trench("T1", polyline(at(0, 0), at(50, 0)))
                                .depth(inches(14))
                                .holdsConduits("duct")));
        // Unprotected at its origin the circuit needs 18 in of cover; protected, 12 in would do (NEC table 300.5).
        assertEquals(
                List.of("power.cover: trench segment T1, depth", "power.ground-fault: outlet gate, groundFault"),
                findings(site));
    }

    @Test
    void aLongThinCableLosesTooMuch() {
        Site site = WiredYard.siteOf(yard("Plot")
                .units(US)
                .with(
                        panel("house", at(0, 0)).spareWays(1),
                        circuit("garden").from("house").breaker(amps(20)).groundFault(),
                        outlet("far", at(300, 0)).on("garden").draws(watts(1200)),
                        cable("feed", polyline(at(0, 0), at(300, 0)))
                                .circuit("garden")
                                .from("house")
                                .to("far")
                                .conductor("12")));
        assertEquals(List.of("power.drop.branch: outlet far, drop"), findings(site));
    }

    @Test
    void tooMuchLoadForTheBreakerIsFound() {
        Site site = drawn(outlet("heater", at(50, 1)).on("garden").draws(watts(2400)));
        assertEquals(
                List.of("power.load: circuit garden"),
                findings(site).stream()
                        .filter(one -> one.startsWith("power.load"))
                        .toList());
    }

    @Test
    @Tag("law")
    void ledgersEndWithTheFigure() {
        Site site = WiredYard.wired();
        WiringResult result = review(site);
        for (CircuitFigures one : result.circuits()) {
            assertLast(site, one.id(), "current", one.current());
            one.ampacity().ifPresent(figure -> assertLast(site, one.id(), "ampacity", figure));
        }
        for (CableFigures one : result.cables()) {
            one.current().ifPresent(figure -> assertLast(site, one.id(), "current", figure));
            one.lost().ifPresent(figure -> assertLast(site, one.id(), "drop", figure));
            one.ampacity().ifPresent(figure -> assertLast(site, one.id(), "ampacity", figure));
        }
        for (LoadFigures one : result.loads()) {
            assertLast(site, one.id(), "current", one.current());
            one.drop().ifPresent(figure -> assertLast(site, one.id(), "drop", figure));
        }
        for (ConduitFigures one : result.conduits()) {
            one.fill().ifPresent(figure -> assertLast(site, one.id(), "fill", figure));
        }
        assertEquals(9, result.cables().size());
    }

    private static void assertLast(Site site, Id id, String figure, Quantity expected) {
        Ledger ledger = WiringReview.why(site, WiringReviewParameters.defaults(), id, figure);
        assertEquals(expected, ledger.value(), () -> figure + " of " + id.kind() + " " + id.name());
    }

    @Test
    void askingForAFigureThatIsNotThereIsRefused() {
        Site site = drawn(outlet("lonely", at(20, 20)));
        var parameters = WiringReviewParameters.defaults();
        assertEquals(
                "outlet lonely: drop is not known; it must be planned first, with its circuit and its sizes",
                assertThrows(
                                InvalidValueException.class,
                                () -> WiringReview.why(site, parameters, new OutletId("lonely"), "drop"))
                        .getMessage());
        assertEquals(
                "circuit garden: figure is 'fill'; it must be one of load, current, reckoned, drop, ampacity",
                assertThrows(
                                InvalidValueException.class,
                                () -> WiringReview.why(site, parameters, new CircuitId("garden"), "fill"))
                        .getMessage());
    }

    @Test
    void theOtherFamilyHasItsOwnRules() {
        Site site = WiredYard.siteOf(yard("Plot")
                .units(METRIC)
                .with(
                        structure("house", rectangle(at(0, 0), metres(10), metres(8))),
                        panel("house", at(9, 4)).spareWays(3).inside("house"),
                        outlet("court", at(20, 4)),
                        luminaires("path", at(14, 10), at(18, 12)),
                        controller("clock").inside("house"),
                        manifold("box", at(22, 8)).valves("V1", "V2")));
        Site wired = site.with(
                Wiring.run(site, WiringParameters.defaults(), Progress.NONE).yard());
        assertEquals(
                List.of(),
                findings(wired).stream().filter(one -> !one.contains("permit")).toList());
        assertTrue(wired.yard().power().circuits().stream().allMatch(one -> one.groundFault()));
        assertEquals(
                List.of("10 A", "16 A"),
                wired.yard().power().circuits().stream()
                        .map(one -> one.breaker().toString())
                        .sorted()
                        .toList());
    }
}
