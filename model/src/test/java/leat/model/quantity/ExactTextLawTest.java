package leat.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Reading what was written gives the same quantity to the last bit, and writing that again the same text. */
@Tag("law")
class ExactTextLawTest {

    private static final int CASES = 4_000;

    static Stream<Arguments> dimensionsAndSystems() {
        return Stream.of(Dimension.values())
                .flatMap(dimension -> Stream.of(UnitSystem.values()).map(system -> Arguments.of(dimension, system)));
    }

    private static void keepsEveryBit(Quantity quantity, UnitSystem system) {
        String text = Units.write(quantity, system);
        Quantity read = Units.parse(quantity.dimension(), text);
        assertEquals(quantity, read, text);
        assertEquals(text, Units.write(read, system));
    }

    private static Quantity of(Dimension dimension, double si) {
        return dimension.of(dimension == Dimension.COUNT ? Math.rint(si) : si);
    }

    @ParameterizedTest
    @MethodSource("dimensionsAndSystems")
    void anyBitsAtAll(Dimension dimension, UnitSystem system) {
        Random random = new Random(dimension.ordinal() * 2L + system.ordinal());
        for (int i = 0; i < CASES; i++) {
            double si = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(si)) {
                keepsEveryBit(of(dimension, si), system);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("dimensionsAndSystems")
    void figuresOfTheSizeOfYards(Dimension dimension, UnitSystem system) {
        Random random = new Random(100 + dimension.ordinal() * 2L + system.ordinal());
        double unit = Unit.usual(dimension, system).factor();
        for (int i = 0; i < CASES; i++) {
            keepsEveryBit(of(dimension, (random.nextDouble() - 0.5) * 400 * unit), system);
        }
    }

    @ParameterizedTest
    @MethodSource("dimensionsAndSystems")
    void theEndsOfTheRange(Dimension dimension, UnitSystem system) {
        double[] ends = {
            0,
            -0.0,
            Double.MIN_VALUE,
            -Double.MIN_VALUE,
            Double.MIN_NORMAL,
            1e-18,
            1e-19,
            1e18,
            1e19,
            1e22,
            Double.MAX_VALUE,
            -Double.MAX_VALUE,
            Math.nextUp(1.0),
            Math.nextDown(1.0),
            0.1,
            1 / 3.0
        };
        for (double end : ends) {
            keepsEveryBit(of(dimension, end), system);
        }
    }

    /** What a user wrote with up to 12 digits in the yard's own unit comes out as it was written. */
    @ParameterizedTest
    @MethodSource("dimensionsAndSystems")
    void shortDecimalsStayAsTheyWereWritten(Dimension dimension, UnitSystem system) {
        Random random = new Random(200 + dimension.ordinal() * 2L + system.ordinal());
        Unit unit = Unit.usual(dimension, system);
        for (int i = 0; i < CASES; i++) {
            int whole = random.nextInt(1_000_000) + 1;
            int decimals = dimension == Dimension.COUNT ? 0 : random.nextInt(7);
            String number =
                    BigDecimal.valueOf(whole, decimals).stripTrailingZeros().toPlainString();
            String text = unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
            assertEquals(text, Units.write(Units.parse(dimension, text), system));
        }
    }
}
