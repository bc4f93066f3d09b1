package leat.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Widths of single characters in thousandths of the font size.
 * Source: Adobe Core 14 font metrics, files Helvetica.afm and Helvetica-Bold.afm (figures from memory).
 */
@Tag("reference")
class TypefaceReferenceTest {

    @ParameterizedTest
    @CsvSource({
        "A, 667, 722", "W, 944, 944", "M, 833, 833", "i, 222, 278", "a, 556, 556", "0, 556, 556", "%, 889, 889",
        "-, 333, 333", "., 278, 278", "@, 1015, 975", "m, 833, 889", "é, 556, 556", "°, 400, 400", "½, 834, 834",
        "I, 278, 278", "f, 278, 333"
    })
    void oneCharacter(String character, double regular, double bold) {
        // Printed to whole thousandths, the table to 1/2048.
        assertEquals(regular, Typeface.sans().width(character, 1000, false), 0.75);
        assertEquals(bold, Typeface.sans().width(character, 1000, true), 0.75);
    }

    /** 722 + 556 + 222 + 222 + 556 ("Hello") at a size of 10. */
    @ParameterizedTest
    @CsvSource("Hello, 22.78")
    void aWordIsTheSumOfItsLetters(String word, double width) {
        assertEquals(width, Typeface.sans().width(word, 10, false), 0.02);
    }
}
