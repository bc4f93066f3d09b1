package leat.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import leat.model.quantity.Length;
import leat.model.quantity.UnitSystem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Source: the inch is a twelfth of a foot, and a builder's tape is marked in eighths of it. */
@Tag("reference")
class TapeWordsTest {

    @Test
    void feetInchesAndEighths() {
        assertEquals("12' 4 1/8\"", TapeWords.feetAndInches(Length.feet(12 + (4 + 1 / 8.0) / 12)));
        assertEquals("3' 0\"", TapeWords.feetAndInches(Length.feet(2.9999)));
        assertEquals("0' 7 3/4\"", TapeWords.feetAndInches(Length.inches(7.76)));
        assertEquals("1' 11 1/2\"", TapeWords.feetAndInches(Length.inches(23.5)));
        assertEquals(
                "3.765",
                TapeWords.tape(Length.metres(3.7649), UnitSystem.METRIC).text());
        assertEquals(
                "0.00", TapeWords.coordinate(Length.feet(-0.001), UnitSystem.US).text());
    }
}
