package leat.calc.wiring;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.yard;
import static leat.model.quantity.UnitSystem.US;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.model.finding.Status;
import leat.model.geometry.Point;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.ControllerId;
import leat.model.id.LuminaireId;
import leat.model.plan.Aspect;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.power.Cable;
import leat.model.power.Conduit;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;
import leat.model.site.Phase;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class WiringTest {

    private final Site wired = WiredYard.wired();
    private final PowerSystem power = wired.yard().power();

    @Test
    void everyLoadHasItsCircuit() {
        assertEquals(
                List.of("lights", "outlets", "summer house"),
                power.circuits().stream().map(one -> one.id().name()).toList());
        assertTrue(power.loads().allMatch(load -> load.circuit().isPresent()));
        assertEquals(
                Optional.of(new CircuitId("outlets")),
                power.load(new ControllerId("clock")).orElseThrow().circuit());
    }

    @Test
    void theOldDuctIsPutToUse() {
        Cable cable = power.cable(new CableId("house to clock")).orElseThrow();
        assertEquals(List.of(new ConduitId("old duct")), cable.conduits());
        boolean dug = wired.yard().trenches().stream()
                .anyMatch(trench -> trench.contents().contains(new ConduitId("old duct")));
        assertTrue(!dug, "it lies there already");
    }

    @Test
    void lightsHangBehindTheirSwitch() {
        Cable toFirst = power.powerCables().stream()
                .filter(cable -> cable.to().equals(new LuminaireId("terrace 3")))
                .findFirst()
                .orElseThrow();
        assertEquals("terrace", toFirst.from().name());
    }

    @Test
    void conduitForLaterThingsIsLaidNow() {
        assertEquals(
                Phase.LATER,
                power.cable(new CableId("house to summer house")).orElseThrow().phase());
        assertEquals(
                Phase.NOW,
                power.conduit(new ConduitId("house to summer house"))
                        .orElseThrow()
                        .phase());
        assertEquals(
                Phase.NOW,
                power.cable(new CableId("terrace to terrace 3")).orElseThrow().phase());
    }

    @Test
    void valveWiresAreOneEachACommonOneAndSpares() {
        ValveCable cable = power.valveCables().get(0);
        assertEquals(3 + 1 + 1, cable.strands());
        assertEquals(List.of(), cable.conduits());
        assertTrue(
                wired.yard().trenches().stream().anyMatch(one -> one.contents().contains(cable.id())));
    }

    @Test
    void trenchesStayOutOfBuildings() {
        for (var trench : wired.yard().trenches()) {
            for (Point point : trench.route().points()) {
                wired.yard().terrain().surfaces().stream()
                        .filter(one -> one.id().name().equals("house"))
                        .forEach(house -> assertTrue(
                                !house.region().contains(point) || isOnWall(point), () -> point + " is indoors"));
            }
        }
    }

    /** The panel hangs at the far corner of the house: the wire runs indoors to the wall that the outlet is at, and is hardly dug in. */
    @Test
    @Tag("law")
    void wiresLeaveTheBuildingWhereTheyAreWanted() {
        List<Part> parts = WiredYard.ground();
        parts.add(panel("house", at(12, 12)).spareWays(1).inside("house"));
        parts.add(outlet("porch", at(46, 41)));
        Yard yard = yard("Plot").units(US).with(parts.toArray(Part[]::new));
        Yard wiredYard = Wiring.run(WiredYard.siteOf(yard), WiringParameters.defaults(), Progress.NONE)
                .yard();
        Cable cable = wiredYard.power().powerCables().stream()
                .filter(one -> one.to().name().equals("porch"))
                .findFirst()
                .orElseThrow();
        double dugM = cable.conduits().stream()
                .mapToDouble(id ->
                        wiredYard.power().conduit(id).orElseThrow().route().lengthM())
                .sum();
        assertTrue(dugM < 1, () -> cable + " is " + dugM + " m in conduits");
    }

    private static boolean isOnWall(Point point) {
        double east = feet(50).metres();
        double north = feet(40).metres();
        return Math.abs(point.xM() - east) < 1e-6 || Math.abs(point.yM() - north) < 1e-6;
    }

    @Test
    void whatCannotBeReachedIsSaid() {
        Site walled = WiredYard.site(
                outlet("island", at(90, 60)),
                leat.model.plan.Parts.noDig(
                        "ring",
                        leat.model.plan.Parts.rectangle(at(80, 50), feet(19), feet(20))
                                .without(leat.model.plan.Parts.rectangle(at(85, 55), feet(10), feet(10)))));
        Proposal proposal = Wiring.run(walled, WiringParameters.defaults(), Progress.NONE);
        assertEquals(Status.PARTIAL, proposal.status());
        assertEquals(
                "no wire may reach it from the panel", proposal.reasons().get(0).text());
    }

    @Test
    @Tag("law")
    void planningAgainChangesNothing() {
        Yard again =
                Wiring.run(wired, WiringParameters.defaults(), Progress.NONE).yard();
        assertEquals(wired.yard(), again);
    }

    @Test
    @Tag("law")
    void whatIsGivenStays() {
        Conduit conduit = power.conduit(new ConduitId("house to court")).orElseThrow();
        Cable cable = power.cable(new CableId("house to court")).orElseThrow();
        Yard pinned = wired.yard().pin(cable.id(), Aspect.ROUTE).pin(new CircuitId("outlets"), Aspect.CIRCUIT);
        Yard again = Wiring.run(wired.with(pinned), WiringParameters.defaults(), Progress.NONE)
                .yard();
        assertEquals(
                Optional.of(conduit.route()),
                again.power().conduit(conduit.id()).map(Conduit::route));
        assertEquals(Optional.of(cable), again.power().cable(cable.id()));
        assertEquals(power.loads().toList(), again.power().loads().toList());
        assertEquals(power.circuit(new CircuitId("outlets")), again.power().circuit(new CircuitId("outlets")));
    }
}
