package leat.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leat.model.Checks;
import leat.model.Checks.Check;
import leat.model.geometry.Point;
import leat.model.id.SourceId;
import leat.model.water.Tank;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Source: NIST Special Publication 811 (2008), appendix B, as each record of checks/units.json says; the water columns
 * from a plumbing code's worked example and a training manual's chart. Units that Leat does not have are put together
 * from those that it has, so that every factor is held against more than one printed figure.
 */
@Tag("reference")
class UnitReferenceTest {

    private static final double STANDARD_GRAVITY = 9.80665;
    private static final double FOOT_M = Length.feet(1).metres();
    private static final double INCH_M = Length.inches(1).metres();
    private static final double POUND_FORCE_N = Pressure.psi(1).pascals() * INCH_M * INCH_M;

    private static final Map<String, Double> OURS = Map.ofEntries(
            Map.entry("gpm", Flow.gpm(1).cubicMetresPerSecond()),
            Map.entry("gal", Flow.gpm(1).cubicMetresPerSecond() * 60),
            Map.entry("psi", Pressure.psi(1).pascals()),
            Map.entry("ft", FOOT_M),
            Map.entry("acre", Area.squareFeet(43_560).squareMetres()),
            Map.entry("ftH2O", FOOT_M * STANDARD_GRAVITY * 1_000),
            Map.entry("inHg", INCH_M * STANDARD_GRAVITY * 13_595.1),
            Map.entry("cfs", Math.pow(FOOT_M, 3)),
            Map.entry("yd3", 27 * Math.pow(FOOT_M, 3)),
            Map.entry("lb", POUND_FORCE_N / STANDARD_GRAVITY),
            Map.entry("hp", 550 * FOOT_M * POUND_FORCE_N),
            Map.entry("kgf_cm2", Pressure.kilopascals(STANDARD_GRAVITY * 10).pascals()));

    static Stream<Check> units() {
        return Checks.of("units", "pf-unit-");
    }

    @ParameterizedTest
    @MethodSource("units")
    void unitsAgreeWithThePrint(Check check) {
        Double ours = OURS.get(check.inputs().required("unit").asString());
        check.expect(
                check.json().required("expected").propertyNames().iterator().next(), ours);
    }

    private static Pressure under(Length waterLevel) {
        return new Tank(new SourceId("butt"), new Point(0, 0), waterLevel, Optional.empty()).staticPressure();
    }

    @Test
    void twentyFeetOfWater() {
        Checks.one("units", "pf-hydrostatic-0433")
                .expect("pressure_psi", under(Length.feet(20)).inPsi());
    }

    @Test
    void onePoundOfPressureIsThatMuchWater() {
        Checks.one("units", "pf-hydrostatic-231")
                .expect("head_ft", 1 / under(Length.feet(1)).inPsi());
    }

    @Test
    void oneMetreOfWater() {
        Checks.one("units", "pf-hydrostatic-kpa")
                .expect("pressure_kPa", under(Length.metres(1)).inKilopascals());
    }

    /** Source: the definition of the US gallon, 231 cubic inches; printed in several public manuals as 96.25. */
    @Test
    void gallonsAMinuteOverSquareFeetAreInchesAnHour() {
        double depth = Flow.gpm(1).cubicMetresPerSecond() / Area.squareFeet(1).squareMetres();
        Checks.one("nozzles", "un-constant-9625")
                .expect("constant", PrecipitationRate.metresPerSecond(depth).inInchesPerHour());
    }

    @ParameterizedTest
    @MethodSource("rates")
    void precipitationRates(Check check) {
        double depth = Flow.gpm(check.input("flow_gpm")).cubicMetresPerSecond()
                / Area.squareFeet(check.input("area_ft2")).squareMetres();
        check.expect("rate_in_h", new PrecipitationRate(depth).inInchesPerHour());
    }

    static Stream<Check> rates() {
        return Checks.of("nozzles", "un-").filter(check -> check.inputs().has("flow_gpm"));
    }

    /** Source: the definition of the bar, 100 kPa; standard atmosphere 101 325 Pa is 14.696 psi in any handbook. */
    @Test
    void barAndAtmosphere() {
        assertEquals(100, Pressure.bar(1).inKilopascals(), 0);
        assertEquals(14.696, Pressure.pascals(101_325).inPsi(), 0.0005);
    }
}
