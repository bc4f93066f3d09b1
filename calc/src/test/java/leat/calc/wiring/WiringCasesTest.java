package leat.calc.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import leat.model.catalog.ConductorSpec;
import leat.model.power.WiringMethod;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Power;
import leat.model.quantity.Voltage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single cases that the tables of checks do not have; sources at each test. */
@Tag("reference")
class WiringCasesTest {

    /** Source: NEC 240.4(D): 15, 20 and 30 A for 14, 12 and 10 AWG copper, also at terminals for 75 °C; public reprint. */
    @ParameterizedTest
    @CsvSource({"14, 15", "12, 20", "10, 30", "8, 50", "6, 60"})
    void smallConductorsHaveSmallBreakersWhateverTheyCarry(String size, double breakerA) {
        Laying marked = Laying.usual(WiringMethod.IN_CONDUIT, 2).withTerminals(75);
        assertEquals(
                new Current(breakerA),
                Codes.NFPA.mostBreaker(Codes.NFPA.conductor(size), marked).value());
    }

    /** Source: sum of phasors a third of a turn apart; U between two phases is lost by the difference of their currents. */
    @Test
    void threePhasesLoseByTheDifferenceOfTwoCurrents() {
        Length way = new Length(40);
        double current = 16;
        for (ConductorSpec size : Codes.IEC.powerConductors()) {
            double oneWayOhm = Codes.IEC.loopResistance(size, way, 2).value().si() / 2;
            double realV = oneWayOhm * current * (1 - Math.cos(2 * Math.PI / 3));
            double imaginaryV = oneWayOhm * current * Math.sin(2 * Math.PI / 3);
            double dropV =
                    Codes.IEC.drop(new Current(current), way, 3, size).value().si();
            assertEquals(Math.hypot(realV, imaginaryV), dropV, 1e-12 * dropV);
        }
    }

    /** Source: three phases of 230 V to neutral, so 398.4 V between them, give three times the power of one. */
    @Test
    void threePhasesCarryAThirdOfThePowerEach() {
        double each = Codes.IEC
                .loadCurrent(new Power(3 * 2_300), new Voltage(230 * Math.sqrt(3)), 3)
                .value()
                .si();
        assertEquals(10, each, 1e-12);
        assertEquals(
                20,
                Codes.NFPA
                        .loadCurrent(new Power(4_800), new Voltage(240), 3)
                        .value()
                        .si());
    }

    /** Source: IEC 60364-5-54, table 54.2; from memory, not confirmed. */
    @ParameterizedTest
    @CsvSource({"2.5, 2.5", "16, 16", "25, 16", "35, 16", "50, 25", "70, 35", "95, 50"})
    void protectiveConductorsFollowTheOthers(String live, String protective) {
        ConductorSpec chosen = Codes.IEC.conductor(live);
        assertEquals(
                protective,
                Codes.IEC
                        .groundingConductor(new Current(16), chosen, chosen)
                        .value()
                        .size());
    }
}
