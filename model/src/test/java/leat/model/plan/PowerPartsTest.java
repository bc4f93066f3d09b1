package leat.model.plan;

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
import static leat.model.plan.Parts.watts;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leat.model.fault.UnfinishedException;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.FeedId;
import leat.model.id.LuminaireId;
import leat.model.id.OutletId;
import leat.model.id.PanelId;
import leat.model.id.SwitchId;
import leat.model.power.Ahead;
import leat.model.power.CodeFamily;
import leat.model.power.Luminaire;
import leat.model.power.PowerSystem;
import leat.model.power.WireGroup;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;
import org.junit.jupiter.api.Test;

class PowerPartsTest {

    private final Yard plot = yard("Plot")
            .with(
                    structure("shed", rectangle(at(10, 10), feet(6), feet(4))),
                    panel("house", at(0, 0)).spareWays(2),
                    circuit("garden").from("house").breaker(amps(20)).groundFault(),
                    outlet("court", at(5, 0)).on("garden"),
                    luminaires("path", at(6, 0), at(8, 0)).switchAt(at(5, 1)).wiresNow(),
                    feed("shed").draws(watts(900)).conduitNow(),
                    controller("clock").inside("shed").stations(6),
                    manifold("box", at(12, 0)).valves("V1"),
                    conduit("old duct", polyline(at(0, 0), at(5, 0)))
                            .existing()
                            .size("3/4")
                            .occupied("12", 3),
                    cable("run 1", polyline(at(0, 0), at(5, 0)))
                            .circuit("garden")
                            .from("house")
                            .to("court")
                            .through("old duct"),
                    valveWires("valves", polyline(at(13, 12), at(12, 0)))
                            .from("clock")
                            .to("box")
                            .strands(4),
                    trench("T1", polyline(at(0, 0), at(5, 0))).depth(feet(1.5)).holdsCables("run 1"));

    @Test
    void partsTurnIntoThePowerSystem() {
        PowerSystem power = plot.power();
        assertEquals(
                new Voltage(120),
                power.panel(new PanelId("house")).orElseThrow().voltage());
        assertEquals(
                List.of("clock", "court", "path 1", "path 2", "shed"),
                power.loads().map(load -> load.id().name()).sorted().toList());
        Luminaire light = (Luminaire) power.load(new LuminaireId("path 2")).orElseThrow();
        assertEquals(Optional.of(new SwitchId("path")), light.lightSwitch());
        assertEquals(Phase.LATER, light.phase());
        assertEquals(Ahead.WIRES, light.ahead());
        assertEquals(
                0, power.load(new FeedId("shed")).orElseThrow().at().distanceM(Point.at(feet(13), feet(12))), 1e-9);
        assertEquals(
                List.of(new OutletId("court")),
                power.loadsOf(new CircuitId("garden")).stream()
                        .map(load -> load.id())
                        .toList());
        assertEquals(
                List.of(new WireGroup("12", 3)),
                power.conduit(new ConduitId("old duct")).orElseThrow().occupied());
        assertEquals(1, power.cablesIn(new ConduitId("old duct")).size());
        assertEquals(CodeFamily.NFPA_70, plot.codeFamily());
        assertEquals(CodeFamily.IEC_60364, plot.units(UnitSystem.METRIC).codeFamily());
    }

    @Test
    void namesThatNothingHasAreToldTogether() {
        var refused = assertThrows(
                UnfinishedException.class,
                () -> plot.with(
                        circuit("late").from("hause").breaker(amps(15)),
                        outlet("gate", at(1, 1)).on("gardn"),
                        controller("other").inside("barn"),
                        luminaires("wall"),
                        outlet("wet", at(1, 2)).stations(4)));
        String message = String.valueOf(refused.getMessage());
        assertTrue(message.contains("controller other: structure is 'barn'"), message);
        assertTrue(message.contains("luminaires wall: missing a place"), message);
        assertTrue(message.contains("outlet wet: it has no stations"), message);
        var names = assertThrows(
                UnfinishedException.class,
                () -> plot.with(
                        circuit("late").from("hause").breaker(amps(15)),
                        outlet("gate", at(1, 1)).on("gardn")));
        assertTrue(String.valueOf(names.getMessage()).contains("'hause'"), names.getMessage());
        assertTrue(String.valueOf(names.getMessage()).contains("perhaps 'garden'"), names.getMessage());
    }
}
