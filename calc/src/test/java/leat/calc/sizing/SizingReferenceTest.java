package leat.calc.sizing;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.feetPerSecond;
import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.limit;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.util.stream.Stream;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.id.PipeId;
import leat.model.plan.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A pipe takes a size just below the flow at which its velocity reaches the limit, and the next size just above. Source:
 * checks/sizing.json names it for each of the five records, ten cases; four of them are geometry (circular). No more
 * records of the collection speak of a choice of size by velocity, save one for a bore from the least wall, which the
 * catalogue does not use.
 */
@Tag("reference")
class SizingReferenceTest {

    static Stream<JsonNode> records() throws IOException {
        try (InputStream in = SizingReferenceTest.class.getResourceAsStream("/checks/sizing.json")) {
            return JsonMapper.shared().readTree(in).valueStream().toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("records")
    void theSizeChangesAtThePublishedFlow(JsonNode check) {
        double flowGpm = check.get("flow_gpm").asDouble();
        double slack = check.get("tolerance_rel").asDouble();
        assertEquals(check.get("size").asString(), chosen(check, flowGpm * (1 - slack)));
        assertEquals(check.get("next_size").asString(), chosen(check, flowGpm * (1 + slack)));
    }

    /** Pressure to spare and two feet of pipe, so that only the velocity decides. */
    private static String chosen(JsonNode check, double flowGpm) {
        Yard open = yard("Bench")
                .with(
                        mains("street", at(0, 0)).staticPressure(psi(78)),
                        pipe("main", polyline(at(0, 0), at(2, 0)))
                                .from("street")
                                .series(check.get("series").asString()),
                        bib("tap", at(2, 0)).on("main").draws(gpm(flowGpm)),
                        limit(
                                "hydraulics.velocity",
                                feetPerSecond(check.get("velocity_ft_s").asDouble())));
        Yard sized = Sizing.run(
                        StandingData.load(Yard.EDITION).siteOf(open), SizingParameters.defaults(), Progress.NONE)
                .yard();
        return sized.water().pipe(new PipeId("main")).orElseThrow().size().orElseThrow();
    }
}
