package leat.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import leat.model.fault.InvalidValueException;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("law")
class QuantityLawTest {

    private static <Q> void thereAndBack(double figure, DoubleFunction<Q> factory, ToDoubleFunction<Q> reader) {
        assertEquals(figure, reader.applyAsDouble(factory.apply(figure)), 4 * Math.ulp(figure));
    }

    @RepeatedTest(500)
    void aFigureComesBackFromItsUnit(RepetitionInfo turn) {
        double figure = (new Random(turn.getCurrentRepetition()).nextDouble() - 0.5) * 2_000;
        thereAndBack(figure, Length::feet, Length::inFeet);
        thereAndBack(figure, Length::inches, Length::inInches);
        thereAndBack(figure, Length::millimetres, Length::inMillimetres);
        thereAndBack(figure, Area::squareFeet, Area::inSquareFeet);
        thereAndBack(figure, Pressure::psi, Pressure::inPsi);
        thereAndBack(figure, Pressure::bar, Pressure::inBar);
        thereAndBack(figure, Pressure::kilopascals, Pressure::inKilopascals);
        thereAndBack(figure, Flow::gpm, Flow::inGpm);
        thereAndBack(figure, Flow::litresPerMinute, Flow::inLitresPerMinute);
        thereAndBack(figure, Flow::litresPerSecond, Flow::inLitresPerSecond);
        thereAndBack(figure, Velocity::feetPerSecond, Velocity::inFeetPerSecond);
        thereAndBack(figure, PrecipitationRate::inchesPerHour, PrecipitationRate::inInchesPerHour);
        thereAndBack(figure, PrecipitationRate::millimetresPerHour, PrecipitationRate::inMillimetresPerHour);
        thereAndBack(figure, Ratio::percent, Ratio::inPercent);
        thereAndBack(figure, Angle::radians, Angle::inRadians);
    }

    @Test
    void factoriesAndTextsHaveTheSameFactors() {
        assertEquals(Length.feet(7), Length.parse("7 ft"));
        assertEquals(Length.inches(7), Length.parse("7 in"));
        assertEquals(Length.millimetres(7), Length.parse("7 mm"));
        assertEquals(Area.squareFeet(7), Area.parse("7 ft2"));
        assertEquals(WaterVolume.gallons(7), WaterVolume.parse("7 gal"));
        assertEquals(WaterVolume.litres(7), WaterVolume.parse("7 L"));
        assertEquals(Pressure.psi(7), Pressure.parse("7 psi"));
        assertEquals(Pressure.bar(7), Pressure.parse("7 bar"));
        assertEquals(Pressure.kilopascals(7), Pressure.parse("7 kPa"));
        assertEquals(Flow.gpm(7), Flow.parse("7 gpm"));
        assertEquals(Flow.litresPerMinute(7), Flow.parse("7 L/min"));
        assertEquals(Flow.litresPerSecond(7), Flow.parse("7 L/s"));
        assertEquals(Velocity.feetPerSecond(7), Velocity.parse("7 ft/s"));
        assertEquals(PrecipitationRate.inchesPerHour(7), PrecipitationRate.parse("7 in/h"));
        assertEquals(PrecipitationRate.millimetresPerHour(7), PrecipitationRate.parse("7 mm/h"));
        assertEquals(Ratio.percent(7), Ratio.parse("7 %"));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void noQuantityHoldsWhatIsNoNumber(Dimension dimension) {
        for (double figure : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThrows(InvalidValueException.class, () -> dimension.of(figure));
        }
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void minusZeroIsZero(Dimension dimension) {
        assertEquals(dimension.of(0.0), dimension.of(-0.0));
        assertFalse(dimension.of(-0.0).toString().startsWith("-"));
        assertEquals(dimension, dimension.of(1).dimension());
    }

    /** Shown figures never read "-0", whatever is rounded away. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void roundingShowsNoMinusZero(Dimension dimension) {
        Random random = new Random(dimension.ordinal());
        for (int i = 0; i < 5_000; i++) {
            double si = dimension == Dimension.COUNT
                    ? -random.nextInt(3)
                    : -random.nextDouble() * Math.pow(10, -random.nextInt(9));
            for (UnitSystem system : UnitSystem.values()) {
                String shown = Units.number(dimension.of(si), system);
                assertFalse(shown.startsWith("-") && Double.parseDouble(shown) == 0, shown);
            }
        }
    }

    /** Half of the second digit at most is lost; far below what is tried here lies only the rounding of sums. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void whatIsNotZeroNeverReadsZero(Dimension dimension) {
        Random random = new Random(dimension.ordinal());
        for (int i = 0; i < 5_000; i++) {
            double si = dimension == Dimension.COUNT
                    ? 1 + random.nextInt(1_000)
                    : (1 + 9 * random.nextDouble()) * Math.pow(10, random.nextInt(10) - 4);
            for (UnitSystem system : UnitSystem.values()) {
                String number = Units.number(dimension.of(si), system);
                double read = Double.parseDouble(number)
                        * Unit.usual(dimension, system).factor();
                assertEquals(si, read, 0.0501 * si, number);
                String fine = Units.fine(dimension.of(si), system).split(" ")[0];
                assertTrue(Double.parseDouble(fine) > 0, fine);
            }
        }
    }

    @RepeatedTest(200)
    void orderAndSumsAreThoseOfTheFigures(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double a = random.nextDouble() * 100;
        double b = random.nextDouble() * 100;
        assertEquals(Double.compare(a, b), Length.metres(a).compareTo(Length.metres(b)));
        assertEquals(Pressure.pascals(a + b), Pressure.pascals(a).plus(Pressure.pascals(b)));
        assertEquals(
                Flow.cubicMetresPerSecond(a - b), Flow.cubicMetresPerSecond(a).minus(Flow.cubicMetresPerSecond(b)));
        assertEquals(Area.squareMetres(a * b), Area.squareMetres(a).times(b));
    }

    @RepeatedTest(300)
    void aTurnedAngleIsTheSameDirectionInOneCircle(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double degrees = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 6);
        double turned = Angle.degrees(degrees).turned().degrees();
        assertTrue(turned >= 0 && turned < 360, degrees + " gives " + turned);
        double sine = Math.sin(Math.toRadians(degrees));
        assertEquals(sine, Math.sin(Math.toRadians(turned)), 1e-9 * Math.max(1, Math.abs(degrees)));
    }

    @Test
    void aHairBelowNorthIsNorth() {
        assertEquals(Angle.ZERO, Angle.degrees(-1e-20).turned());
        assertEquals(Angle.ZERO, Angle.degrees(360).turned());
        assertEquals(Angle.ZERO, Angle.degrees(-720).turned());
    }
}
