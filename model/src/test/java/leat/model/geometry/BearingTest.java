package leat.model.geometry;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import leat.model.fault.InvalidValueException;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BearingTest {

    /** Source: the definition of a quadrant bearing in any surveying text; arithmetic by hand. */
    @Tag("reference")
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "N 4°10' E           | 4.166666666666667",
                "S 82°30' E          | 97.5",
                "S 82 deg 30' 15\" W | 262.5041666666667",
                "N 19°46'00\" W      | 340.2333333333333",
                "N4 10' E            | 4.166666666666667",
                "N 4° 30\" E         | 4.008333333333334",
                "S 0° E              | 180",
                "N 90° W             | 270",
                "N 0° W              | 0",
                "N 4°10′30″ E        | 4.175",
                "176.5°              | 176.5",
                "176.5               | 176.5",
                "360                 | 0",
                "0                   | 0",
                "359°59'59\"         | 359.99972222222223",
                "N 12.25 deg E       | 12.25"
            })
    void asDeedsWriteThem(String text, double degrees) {
        assertEquals(degrees, Bearing.parse(text).degrees(), 1e-12 * 360);
    }

    @Tag("law")
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "N",
                "N E",
                "N 91° E",
                "N 89°60' E",
                "N 90°00'01\" E",
                "N 4°10'60\" E",
                "n 4° e",
                "E 4° N",
                "N 4°10'",
                "361",
                "360°00'01\"",
                "-4",
                "4.5°30'",
                "N 456' E",
                "N 4°10' E N",
                "NaN",
                "N NaN E",
                "1e2",
                "N 4°10'10' E"
            })
    void whatIsNoBearingIsRefused(String text) {
        assertThrows(InvalidValueException.class, () -> Bearing.parse(text));
    }

    @Tag("law")
    @RepeatedTest(500)
    void whatIsShownIsTheSameToHalfAMinute(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        Angle bearing = Angle.degrees(random.nextDouble() * 360);
        String shown = Bearing.show(bearing);
        double off = Math.abs(Bearing.parse(shown).degrees() - bearing.degrees());
        assertTrue(Math.min(off, 360 - off) <= 0.5 / 60 + 1e-9, shown);
        assertFalse(shown.contains("60'"), shown);
    }

    @Tag("pinned")
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "0          | N 0°00' E",
                "4.99999    | N 5°00' E",
                "89.9999    | N 90°00' E",
                "90         | N 90°00' E",
                "90.0001    | S 90°00' E",
                "97.5       | S 82°30' E",
                "180        | S 0°00' E",
                "269.999999 | S 90°00' W",
                "270        | N 90°00' W",
                "340.2333   | N 19°46' W",
                "359.9999   | N 0°00' W",
                "-10        | N 10°00' W",
                "44.9917    | N 45°00' E"
            })
    void shownToTheMinute(double degrees, String text) {
        assertEquals(text, Bearing.show(Angle.degrees(degrees)));
    }

    @Tag("pinned")
    @Test
    void refusals() {
        refused(
                "bearing: text is 'up'; it must be such as N 4°10' E (0 to 90 degrees) or an azimuth such as 176.5°",
                () -> Bearing.parse("up"));
        refused("bearing: text is missing; it must be given", () -> Bearing.parse(null));
    }

    @Tag("law")
    @RepeatedTest(200)
    void movingThereAndMeasuringBackAgree(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        Point here = new Point(random.nextDouble() * 100, random.nextDouble() * 100);
        Angle bearing = Angle.degrees(random.nextDouble() * 360);
        Length distance = Length.metres(0.1 + random.nextDouble() * 100);
        Point there = here.moved(bearing, distance);
        assertEquals(distance.metres(), here.distanceM(there), 1e-9);
        double off = Math.abs(here.bearingTo(there).degrees() - bearing.degrees());
        assertTrue(Math.min(off, 360 - off) < 1e-9);
    }
}
