package leat.model.plan;

import static leat.model.plan.Parts.amps;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.transformer;
import static leat.model.plan.Parts.volts;
import static leat.model.plan.Parts.watts;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.UnfinishedException;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.LuminaireId;
import leat.model.id.OutletId;
import leat.model.id.TransformerId;
import leat.model.power.Circuit;
import leat.model.power.LampSupply;
import leat.model.power.Transformer;
import leat.model.power.WiringMethod;
import leat.model.quantity.Current;
import leat.model.quantity.Power;
import leat.model.quantity.Voltage;
import org.junit.jupiter.api.Test;

class TransformerPartsTest {

    private static final TransformerId WALK = new TransformerId("walk");

    private static Yard with(Part... parts) {
        return yard("Plot")
                .with(
                        panel("house", at(0, 0)).spareWays(2),
                        outlet("porch", at(3, 0)).groundFault())
                .with(parts);
    }

    @Test
    void aTransformerStandsAtItsOutletAndGivesTwelveVolts() {
        Transformer made = with(transformer("walk").rating(watts(150)).pluggedInto("porch"))
                .power()
                .transformer(WALK)
                .orElseThrow();
        assertEquals(Point.at(feet(3), feet(0)), made.at());
        assertEquals(Optional.of(new OutletId("porch")), made.plug());
        assertEquals(List.of(new Voltage(12)), made.taps());
        assertEquals(new Power(150), made.power());
    }

    @Test
    void aTransformerStandsInTheMiddleOfItsStructure() {
        Transformer made = with(
                        structure("shed", rectangle(at(10, 10), feet(6), feet(4))),
                        transformer("walk").rating(watts(150)).inside("shed"))
                .power()
                .transformer(WALK)
                .orElseThrow();
        assertEquals(0, Point.at(feet(13), feet(12)).distanceM(made.at()), 1e-9);
    }

    @Test
    void lampsWorkFromNineTenthsToFiveFourthsOfTheLowestTapUnlessStated() {
        Yard plot = with(
                luminaires("path", at(6, 0)).from("walk"),
                luminaires("pond", at(6, 5)).from("walk").works(volts(9), volts(15)),
                transformer("walk")
                        .rating(watts(150))
                        .taps(volts(15), volts(12))
                        .pluggedInto("porch"));
        assertEquals(Optional.of(new LampSupply(WALK, new Voltage(12 * 0.9), new Voltage(15))), lamp(plot, "path 1"));
        assertEquals(Optional.of(new LampSupply(WALK, new Voltage(9), new Voltage(15))), lamp(plot, "pond 1"));
    }

    private static Optional<LampSupply> lamp(Yard plot, String name) {
        return plot.power().luminaires().stream()
                .filter(one -> one.id().equals(new LuminaireId(name)))
                .findFirst()
                .orElseThrow()
                .lamp();
    }

    @Test
    void aCircuitBehindATransformerIsACableFromItsLowestTap() {
        Circuit run = with(
                        transformer("walk")
                                .rating(watts(150))
                                .taps(volts(12), volts(15))
                                .pluggedInto("porch"),
                        circuit("run").from("walk"))
                .power()
                .circuit(new CircuitId("run"))
                .orElseThrow();
        assertTrue(run.isLowVoltage());
        assertEquals(new Voltage(12), run.voltage());
        assertEquals(new Current(12.5), run.breaker());
        assertEquals(WiringMethod.BURIED_CABLE, run.method());
    }

    @Test
    void whatIsNotThereIsNamedWithTheNearestName() {
        assertEquals(
                List.of("luminaires path: from is 'wlak'; no transformer has that name; perhaps 'walk'"),
                assertThrows(
                                UnfinishedException.class,
                                () -> with(
                                        transformer("walk").rating(watts(150)).pluggedInto("porch"),
                                        luminaires("path", at(6, 0)).from("wlak")))
                        .complaints());
        assertEquals(
                List.of("transformer walk: pluggedInto is 'proch'; no outlet has that name; perhaps 'porch'"),
                assertThrows(
                                UnfinishedException.class,
                                () -> with(
                                        transformer("walk").rating(watts(150)).pluggedInto("proch")))
                        .complaints());
    }

    @Test
    void whatATransformerLacksIsSaid() {
        assertEquals(
                List.of("transformer walk: missing rating"),
                assertThrows(
                                UnfinishedException.class,
                                () -> with(transformer("walk").at(at(1, 1))))
                        .complaints());
        assertEquals(
                List.of("transformer walk: missing a place, an outlet or a structure"),
                assertThrows(
                                UnfinishedException.class,
                                () -> with(transformer("walk").rating(watts(100))))
                        .complaints());
        assertEquals(
                List.of("circuit run: missing breaker"),
                assertThrows(
                                UnfinishedException.class,
                                () -> with(circuit("run").from("house")))
                        .complaints());
    }

    @Test
    void figuresWithoutMeaningAreRefused() {
        assertRefused(
                "transformer walk: rating is -150 W; it must be more than 0 W",
                transformer("walk").at(at(1, 1)).rating(watts(-150)));
        assertRefused(
                "transformer walk: taps is 0 V; it must be more than 0 V",
                transformer("walk").at(at(1, 1)).rating(watts(150)).taps(volts(12), volts(0)));
        assertRefused(
                "circuit run: voltage is 13 V; it must be a tap of transformer walk: 12 V, 15 V",
                transformer("walk").at(at(1, 1)).rating(watts(150)).taps(volts(12), volts(15)),
                circuit("run").from("walk").voltage(volts(13)));
        assertRefused(
                "luminaires path, lamp: most voltage is 11 V; it must be more than 12 V",
                transformer("walk").at(at(1, 1)).rating(watts(150)),
                luminaires("path", at(6, 0)).from("walk").works(volts(12), volts(11)));
        assertRefused(
                "luminaire path 1: circuit is 'garden', which starts elsewhere; it must be a circuit from transformer"
                        + " walk",
                transformer("walk").at(at(1, 1)).rating(watts(150)),
                circuit("garden").from("house").breaker(amps(15)),
                luminaires("path", at(6, 0)).from("walk").on("garden"));
        assertRefused(
                "transformer second: circuit is 'run', which starts from a transformer; it must be a circuit of a panel",
                transformer("walk").at(at(1, 1)).rating(watts(150)),
                circuit("run").from("walk"),
                transformer("second").at(at(1, 1)).rating(watts(60)).on("run"));
    }

    private static void assertRefused(String message, Part... parts) {
        assertEquals(
                message,
                assertThrows(InvalidValueException.class, () -> with(parts)).getMessage());
    }
}
