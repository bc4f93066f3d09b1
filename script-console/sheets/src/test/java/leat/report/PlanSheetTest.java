package leat.report;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import leat.draw.SvgWriter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class PlanSheetTest {

    /** Leaves the sheet in the build folder to look at. */
    @Test
    void thePlanCanBeLookedAt() throws Exception {
        byte[] svg = SvgWriter.file(PlanSheet.draw(TernHill.yardByHand(), new WaterPlan(TernHill.yardByHand()), "1 of 1"));
        Files.write(Path.of("target", "plan.svg"), svg);
        assertTrue(svg.length > 1000);
    }
}
