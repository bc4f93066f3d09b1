package leat.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class SheetFurnitureTest {

    private static Drawing furnished() {
        SheetFit fit = SheetFit.choose(true, 0, 0, 29, 36);
        Canvas canvas = new Canvas();
        Frame.draw(canvas, fit);
        Box column = fit.column();
        NorthArrow.draw(canvas, column.left() + 10, column.top() + 4);
        ScaleBar.draw(canvas, true, fit.scale(), column.left() + 20, column.top() + 6, 60);
        Legend legend = new Legend();
        legend.add(
                "2",
                "main, irrigation side",
                (c, box) -> c.shape(
                        PenPath.line(box.left(), box.centreY(), box.right(), box.centreY()),
                        Style.line(LineWidth.W070, Palette.GREEN).withDash(Dash.LONG_DASHED)));
        legend.add(
                "1",
                "a rotor, and the arc that it wets",
                (c, box) -> c.shape(
                        PenPath.circle(box.centreX(), box.centreY(), 1.2), Style.line(LineWidth.W025, Palette.BLACK)));
        legend.add("1", "never drawn", (c, box) -> {});
        double y = legend.draw(canvas, column.left() + 4, column.top() + 28, column.width() - 8);
        Keynotes notes = new Keynotes();
        notes.number("Dig by hand within the root zone.");
        notes.draw(canvas, column.left() + 4, y + 4, column.width() - 8);
        new TitleBlock(
                        "Tern Hill",
                        "Water plan",
                        List.of(new TitleBlock.Line("Scale", fit.scale().text())),
                        List.of("True scale only when printed at 100 %."))
                .draw(canvas, column);
        return canvas.drawing("Tern Hill", "", fit.widthMm(), fit.heightMm());
    }

    @Test
    void everyLetterStandsInsideTheBorder() {
        Drawing drawing = furnished();
        Box frame = SheetFit.choose(true, 0, 0, 29, 36).frame();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Text text) {
                double width = text.lettering().widthMm(text.text());
                double left = text.lettering().anchor() == Lettering.Anchor.MIDDLE ? text.x() - width / 2 : text.x();
                assertTrue(
                        frame.contains(new Box(left, text.y() - text.lettering().capitalMm(), left + width, text.y())),
                        text.text());
            }
        }
    }

    @Test
    void theLegendHoldsEachSymbolOnceInTheOrderOfItsKeys() {
        List<String> texts = furnished().marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).text())
                .toList();
        assertTrue(texts.indexOf("a rotor, and the arc that it wets") < texts.indexOf("main, irrigation side"));
        assertTrue(!texts.contains("never drawn"));
    }

    @Test
    void theSameNoteHasOneNumber() {
        Keynotes notes = new Keynotes();
        assertEquals(1, notes.number("a"));
        assertEquals(2, notes.number("b"));
        assertEquals(1, notes.number("a"));
    }

    /** Leaves a sheet in the build folder to look at. */
    @Test
    void theSheetCanBeLookedAt() throws Exception {
        Path target = Path.of("target", "furniture.svg");
        Files.createDirectories(target.toAbsolutePath().getParent());
        Files.write(target, SvgWriter.file(furnished()));
        assertTrue(Files.size(target) > 1000);
    }
}
