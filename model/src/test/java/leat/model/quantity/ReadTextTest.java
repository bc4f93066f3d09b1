package leat.model.quantity;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import leat.model.fault.InvalidValueException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadTextTest {

    @Tag("law")
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "12' 6\"        | 150",
                "12'6\"         | 150",
                "12 ft 6 in     | 150",
                "12ft6in        | 150",
                "12 ft          | 144",
                "3/4 in         | 0.75",
                "1 1/2 in       | 1.5",
                "5 ft 1 1/2 in  | 61.5",
                "5' 1/2\"       | 60.5",
                "-3 ft 6 in     | -42",
                "-3' 6\"        | -42",
                "-0 ft 6 in     | -6",
                "-1 1/2 in      | -1.5",
                "-0 1/2 in      | -0.5",
                "+2 ft          | 24",
                ".5 in          | 0.5",
                "6. in          | 6",
                "1e2 in         | 100",
                "1.5E-1 in      | 0.15",
                "25.4 mm        | 1",
                "0.0254m        | 1",
                "` 7   in  `    | 7"
            })
    void lengthsAsTheTradeWritesThem(String text, double inches) {
        assertEquals(inches, Length.parse(text).inInches(), 1e-12 * Math.max(1, Math.abs(inches)));
    }

    @Tag("law")
    @Test
    void everyUnitIsReadByEachOfItsSymbols() {
        for (Unit unit : Unit.values()) {
            String text = "3 " + unit.symbol();
            assertEquals(3 * unit.factor(), Units.parse(unit.dimension(), text).si(), text);
        }
        assertEquals(Area.squareFeet(3), Area.parse("3 ft²"));
        assertEquals(Area.squareMetres(3), Area.parse("3m²"));
        assertEquals(Area.squareMetres(3), Area.parse("3m2"));
        assertEquals(Flow.cubicMetresPerSecond(3), Flow.parse("3 m³/s"));
        assertEquals(Angle.degrees(3), Angle.parse("3°"));
        assertEquals(Velocity.metresPerSecond(2), Velocity.parse("2 m/s"));
        assertEquals(PrecipitationRate.metresPerSecond(2), PrecipitationRate.parse("2 m/s"));
        assertEquals(Ratio.of(0.75), Ratio.parse("3/4"));
        assertEquals(Count.of(4), Count.parse("4"));
    }

    @Tag("law")
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "ft",
                "12",
                "12 psi",
                "12 FT",
                "12 feet",
                "twelve ft",
                "NaN m",
                "Infinity m",
                "-Infinity ft",
                "1e999 m",
                "1e1000 m",
                "1e m",
                "0x10 m",
                "1/0 in",
                "1 1/0 in",
                "1/2/3 in",
                "1//2 in",
                "1 2 in",
                "--3 ft",
                "- 3 ft",
                "3 ft -6 in",
                "3 ft +6 in",
                "3 ft 6",
                "3 ft 4 ft",
                "6 in 3 ft",
                "3 m 6 in",
                "3 ft 6 in 2 in",
                "3 ft 6 in x",
                "3,5 m",
                "1'000 mm",
                "3 ft; 4",
                "m 3",
                "3 m\u00a0",
                "\u0663 m",
                "3 m\n4",
                "3\u0000m",
                "1 1/2",
                "9 ft2",
                "3 ft 6 psi"
            })
    void whatIsNoLengthIsRefused(String text) {
        assertThrows(InvalidValueException.class, () -> Length.parse(text));
    }

    @Tag("law")
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void noDimensionReadsWhatIsNoNumber(Dimension dimension) {
        for (String text : new String[] {"NaN", "Infinity", "-Infinity", "1e999", "x", "", "-", ".", "1.2.3"}) {
            String symbol = Unit.base(dimension).symbol();
            assertThrows(InvalidValueException.class, () -> Units.parse(dimension, text + " " + symbol), text);
        }
    }

    @Tag("law")
    @Test
    void longDigitsAreReadAndNotWaitedFor() {
        assertEquals(Length.metres(0.1), Length.parse("0.1" + "0".repeat(100_000) + " m"));
        assertThrows(InvalidValueException.class, () -> Length.parse("9".repeat(400) + " m"));
        assertThrows(InvalidValueException.class, () -> Length.parse("1" + " ".repeat(100_000) + "x 2"));
    }

    @Tag("pinned")
    @Test
    void refusalsSayWhatIsAllowed() {
        refused(
                "length: text is '12 psi'; it must be a number with one of these units: m, mm, ft, in",
                () -> Length.parse("12 psi"));
        refused("angle: text is '12 ft'; it must be a number with the unit deg", () -> Angle.parse("12 ft"));
        refused("ratio: text is 'half'; it must be a number, alone or with %", () -> Ratio.parse("half"));
        refused("count: text is 'two'; it must be a whole number", () -> Count.parse("two"));
        refused("count: value is 2.5; it must be a whole number", () -> Count.parse("2.5"));
        refused("length: text is missing; it must be given", () -> Length.parse(null));
        refused("pressure: pascals is NaN; it must be a finite number", () -> Pressure.pascals(Double.NaN));
    }
}
