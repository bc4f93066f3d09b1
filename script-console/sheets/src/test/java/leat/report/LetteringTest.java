package leat.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.calc.assess.Assessor;
import leat.document.StandingData;
import leat.draw.Box;
import leat.draw.Lettering;
import leat.draw.Mark;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is lettered can be read. */
@Tag("law")
class LetteringTest {

    private record Word(String text, Box box) {}

    @Test
    void noWordOfAPlanCoversAnother() {
        List<Sheet> sheets =
                SheetList.of(Assessor.run(StandingData.load("leat-1").siteOf(TernHill.yardByHand()), Progress.NONE));
        assertTrue(sheets.size() > 2);
        for (Sheet sheet : sheets) {
            List<Word> words = words(sheet);
            assertFalse(words.isEmpty(), sheet.id());
            for (int i = 0; i < words.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertFalse(
                            words.get(i).box().overlaps(words.get(j).box()),
                            sheet.id() + ": " + words.get(i) + " on " + words.get(j));
                }
            }
        }
    }

    private static List<Word> words(Sheet sheet) {
        List<Word> words = new ArrayList<>();
        for (Mark mark : sheet.drawing().marks()) {
            if (mark instanceof Mark.Text text && text.lettering().turnDegrees() == 0) {
                words.add(new Word(text.text(), box(text)));
            }
        }
        return words;
    }

    private static Box box(Mark.Text text) {
        Lettering lettering = text.lettering();
        double widthMm = lettering.widthMm(text.text());
        double left = switch (lettering.anchor()) {
            case START -> text.x();
            case MIDDLE -> text.x() - widthMm / 2;
            case END -> text.x() - widthMm;
        };
        return new Box(left, text.y() - lettering.capitalMm(), left + widthMm, text.y());
    }

    @Test
    void aLetterStandsInTheMiddleOfItsShareOrAsNearAsThereIsRoom() {
        double[] line = {0, 0, 70, 0, 70, 50};
        List<double[]> free = LetteredLine.places(line, at -> true);
        assertEquals(List.of(20.0, 60.0, 70.0), free.stream().map(at -> at[0]).toList());
        assertEquals(30, free.get(2)[1]);
        List<double[]> aside = LetteredLine.places(line, at -> Math.abs(at[0] - 20) > 2.5);
        assertEquals(23, aside.get(0)[0]);
        assertEquals(List.of(), LetteredLine.places(line, at -> false));
        assertEquals(List.of(), LetteredLine.places(new double[] {0, 0, 15, 0}, at -> true));
    }

    @Test
    void numbersThatFollowEachOtherAreARun() {
        assertEquals(
                "4, 7–12, north, 20, 21",
                Words.runs(List.of("4", "7", "8", "9", "10", "11", "12", "north", "20", "21")));
        assertEquals("", Words.runs(List.of()));
        assertEquals("007, 008, 009", Words.runs(List.of("007", "008", "009")));
    }
}
