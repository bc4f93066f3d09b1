package leat.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import leat.calc.coverage.SurfaceCoverage;
import leat.model.finding.Ledger;
import leat.model.id.HeadId;
import leat.model.id.SurfaceId;
import leat.model.id.ZoneId;
import leat.model.quantity.Figure;
import leat.model.quantity.Pressure;
import leat.model.quantity.Ratio;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class FirstLawnTest {

    private static Example first;

    @BeforeAll
    static void run() {
        first = Example.run("first/first.js");
    }

    /** Checked by hand against the figures of the standing tables: 3.7266 gpm at full circle and 30 psi, four quarters. */
    @Tag("pinned")
    @Test
    void fourQuartersDrawWhatOneFullCircleDraws() {
        double reference = 3.7266;
        Ledger pressure = first.assessment().why("S3", "pressure");
        assertEquals(53.83, ((Pressure) pressure.value()).inPsi(), 0.005);
        double expected = reference * Math.sqrt(53.83 / 30);
        assertEquals(
                expected,
                first.assessment()
                        .hydraulics()
                        .zones()
                        .get(new ZoneId("Z1"))
                        .flow()
                        .inGpm(),
                0.02);
    }

    @Tag("law")
    @Test
    void theLedgerEndsWithTheFigureToTheLastBit() {
        for (String head : List.of("S1", "S2", "S3", "S4")) {
            var got = first.assessment().hydraulics().head(new HeadId(head)).orElseThrow();
            Figure pressure = first.assessment().why(head, "pressure").value();
            Figure flow = first.assessment().why(head, "flow").value();
            assertEquals(got.pressure(), pressure);
            assertEquals(got.flow(), flow);
        }
    }

    @Tag("law")
    @Test
    void headToHeadSpraysReachEachSpotTwice() {
        Map<SurfaceId, SurfaceCoverage> surfaces = first.assessment().coverage().surfaces();
        assertEquals(Ratio.of(1), surfaces.get(new SurfaceId("lawn")).reachedByTwo());
    }

    @Tag("pinned")
    @Test
    void onlyTheSoilSetsALimit() {
        assertEquals(
                List.of("coverage.intake"),
                first.assessment().findings().stream()
                        .map(finding -> finding.rule().id())
                        .toList());
        assertTrue(
                first.printed().get(0).startsWith("note: surface lawn"),
                first.printed().get(0));
    }
}
