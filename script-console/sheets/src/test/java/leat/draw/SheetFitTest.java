package leat.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("law")
class SheetFitTest {

    @Test
    void aSmallYardGetsASmallSheetAndALargeScale() {
        SheetFit fit = SheetFit.choose(false, 0, 0, 7, 7);
        assertEquals(Paper.A4, fit.paper());
        assertEquals("1:50", fit.scale().text());
    }

    @Test
    void aUsualUsLotGetsAnEngineersScale() {
        SheetFit fit = SheetFit.choose(true, 0, 0, 29, 36);
        assertTrue(Paper.ANSI.contains(fit.paper()));
        assertTrue(fit.scale().ratio() <= 120, fit.scale().text());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 12, 40, 90, 400, 5_000, 1e9})
    void theGroundStandsInsideTheField(double sizeM) {
        for (boolean us : new boolean[] {true, false}) {
            SheetFit fit = SheetFit.choose(us, 100, -50, 100 + sizeM, -50 + sizeM / 2);
            View view = fit.view();
            Box ground = new Box(view.x(100), view.y(-50 + sizeM / 2), view.x(100 + sizeM), view.y(-50));
            assertTrue(fit.field().contains(ground));
            assertTrue(fit.frame().contains(fit.field()) && fit.frame().contains(fit.column()));
        }
    }

    /** Source: ISO 216, every sheet is half of the next, sides rounded down to whole millimetres. */
    @Test
    @Tag("reference")
    void isoSheetsAreHalvesOfEachOther() {
        for (int i = 1; i < Paper.ISO.size(); i++) {
            Paper small = Paper.ISO.get(i - 1);
            Paper large = Paper.ISO.get(i);
            assertEquals(large.widthMm(), small.heightMm());
            assertEquals(Math.floor(large.heightMm() / 2), small.widthMm());
        }
    }

    @Test
    void lettersTooSmallToCopyAreRefused() {
        var fault = assertThrows(IllegalArgumentException.class, () -> Lettering.of(1.8));
        assertEquals("lettering: capitals are 1.8 mm; they must be at least 2.2 mm", fault.getMessage());
    }

    @Test
    void textWrapsWithinItsWidthAndLosesNothing() {
        String text = "Ask the one-call service to mark buried lines several working days before any digging";
        Lettering small = Lettering.small();
        var lines = TextBlock.wrap(text, 40, small);
        assertTrue(lines.size() > 1);
        lines.forEach(line -> assertTrue(small.widthMm(line) <= 40, line));
        assertEquals(text, String.join(" ", lines));
        assertTrue(small.widthMm(TextBlock.cut(text, 40, small)) <= 40);
        assertEquals("short", TextBlock.cut("short", 40, small));
    }
}
