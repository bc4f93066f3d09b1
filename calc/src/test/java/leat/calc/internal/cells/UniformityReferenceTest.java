package leat.calc.internal.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

/** Source: catch-can and precipitation-rate examples, each named in checks/coverage.json with its standing. */
@Tag("reference")
class UniformityReferenceTest {

    /** Exact: the US gallon is 231 cubic inches, the inch 0.0254 m. */
    private static final double M3_PER_S_PER_GPM = 231 * 0.0254 * 0.0254 * 0.0254 / 60;

    private static final double M2_PER_FT2 = 0.3048 * 0.3048;
    private static final double M_PER_S_PER_IN_PER_H = 0.0254 / 3600;

    @TestFactory
    Stream<DynamicTest> christiansensCoefficient() {
        return Checks.startingWith("un-grabow-cu", "un-nmsu-cu").stream()
                .map(check ->
                        named(check, "cu_percent", 100 * Uniformity.christiansen(Checks.inputs(check, "catch_mL"))));
    }

    /** The source took half of 15 cans as 8. */
    @Test
    void lowHalfOfFifteenCans() {
        JsonNode check = Checks.named("un-grabow-dulh");
        compare(check, "du_percent", 100 * Uniformity.low(Checks.inputs(check, "catch_mL"), 8));
    }

    @Test
    void lowQuarterOfSixteenCans() {
        JsonNode check = Checks.named("un-du-multiple4");
        compare(check, "du_percent", 100 * Uniformity.lowQuarter(Checks.inputs(check, "catch_mL")));
    }

    @TestFactory
    Stream<DynamicTest> precipitationRateOfAFlowOnAnArea() {
        return Checks.startingWith("un-nmsu-pr", "un-kpud", "un-60x15").stream().map(check -> {
            double rateMPerS = Uniformity.precipitationRateMPerS(
                    Checks.input(check, "flow_gpm") * M3_PER_S_PER_GPM, Checks.input(check, "area_ft2") * M2_PER_FT2);
            return named(check, "rate_in_h", rateMPerS / M_PER_S_PER_IN_PER_H);
        });
    }

    @TestFactory
    Stream<DynamicTest> precipitationRateOfASector() {
        return Checks.startingWith("un-matched").stream().map(check -> {
            var heads = new HeadArrays(1);
            heads.radius(0, Checks.input(check, "radius_ft") * 0.3048);
            heads.arc(0, 1, Math.toRadians(Checks.input(check, "arc_deg")));
            heads.flow(0, Checks.input(check, "flow_gpm") * M3_PER_S_PER_GPM);
            return named(check, "rate_in_h", heads.meanRateMPerS(0) / M_PER_S_PER_IN_PER_H);
        });
    }

    @Test
    void constantOfThePrecipitationRate() {
        double rateMPerS = Uniformity.precipitationRateMPerS(M3_PER_S_PER_GPM, M2_PER_FT2);
        compare(Checks.named("un-constant-9625"), "constant", rateMPerS / M_PER_S_PER_IN_PER_H);
    }

    private static DynamicTest named(JsonNode check, String name, double actual) {
        return DynamicTest.dynamicTest(check.get("id").asString(), () -> compare(check, name, actual));
    }

    private static void compare(JsonNode check, String name, double actual) {
        assertEquals(
                Checks.expected(check, name),
                actual,
                Checks.tolerance(check, name),
                check.get("quantity").asString());
    }
}
