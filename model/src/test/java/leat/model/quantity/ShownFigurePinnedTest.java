package leat.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our own choice of digits for people on site, looked at once. */
@Tag("pinned")
class ShownFigurePinnedTest {

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 12 ft 6 in, 12.5 ft, 3.81 m",
        "LENGTH, 3/4 in, 0.1 ft, 0.02 m",
        "AREA, 1000 ft2, 1000 ft2, 92.9 m2",
        "PRESSURE, 62 psi, 62.0 psi, 427 kPa",
        "FLOW, 14 gpm, 14.00 gpm, 53.0 L/min",
        "VELOCITY, 5 ft/s, 5.0 ft/s, 1.52 m/s",
        "PRECIPITATION, 1.5 in/h, 1.50 in/h, 38.1 mm/h",
        "ANGLE, 89.6 deg, 90 deg, 90 deg",
        "RATIO, 0.125, 12.5 %, 12.5 %",
        "COUNT, 12, 12, 12"
    })
    void shownInBothSystems(Dimension dimension, String text, String us, String metric) {
        Quantity quantity = Units.parse(dimension, text);
        assertEquals(us, Units.show(quantity, UnitSystem.US));
        assertEquals(metric, Units.show(quantity, UnitSystem.METRIC));
    }
}
