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
        "LENGTH, 3/4 in, 0.063 ft, 0.019 m",
        "AREA, 1000 ft2, 1000 ft2, 92.9 m2",
        "PRESSURE, 62 psi, 62.0 psi, 427 kPa",
        "FLOW, 14 gpm, 14.00 gpm, 53.0 L/min",
        "VELOCITY, 5 ft/s, 5.0 ft/s, 1.52 m/s",
        "PRECIPITATION, 1.5 in/h, 1.50 in/h, 38.1 mm/h",
        "ANGLE, 89.6 deg, 90 deg, 90 deg",
        "RATIO, 0.125, 12.5 %, 12.5 %",
        "COUNT, 12, 12, 12",
        "PRESSURE, 0.0126 psi, 0.013 psi, 0.087 kPa",
        "PRESSURE, -0.04 psi, -0.04 psi, -0.28 kPa",
        "RESISTANCE, 0.00521 ohm, 0.0052 ohm, 0.0052 ohm",
        "VOLTAGE, 2.45 V, 2.5 V, 2.5 V",
        "VOLUME, 0.004 yd3, 0.004 yd3, 0.0031 m3",
        "WATER, 18246.6 gal, 18247 gal, 69071 L",
        "WATER, 1.5 gal, 1.5 gal, 5.7 L",
        "TIME, 0.25 min, 0.25 min, 0.25 min",
        "LENGTH, 0 ft, 0.0 ft, 0.00 m",
        "LENGTH, 0.0000000001 ft, 0.0 ft, 0.00 m"
    })
    void shownInBothSystems(Dimension dimension, String text, String us, String metric) {
        Quantity quantity = Units.parse(dimension, text);
        assertEquals(us, Units.show(quantity, UnitSystem.US));
        assertEquals(metric, Units.show(quantity, UnitSystem.METRIC));
    }

    /** A ledger shows bores, depths and sections of wires in units of their size, and ratios as pure numbers. */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 0.824 in, 0.824 in, 20.9 mm",
        "LENGTH, 20.95 in, 20.95 in, 532.1 mm",
        "LENGTH, 99.58 ft, 99.58 ft, 30.352 m",
        "AREA, 3.31 mm2, 0.00513 in2, 3.31 mm2",
        "AREA, 0.832 in2, 0.8320 in2, 536.8 mm2",
        "AREA, 1191 ft2, 1191 ft2, 110.6 m2",
        "PRESSURE, 0.42 psi, 0.42 psi, 2.9 kPa",
        "PRESSURE, 46.4 psi, 46.4 psi, 320 kPa",
        "RESISTANCE, 0.1419 ohm, 0.142 ohm, 0.142 ohm",
        "VOLTAGE, 10.053 V, 10.1 V, 10.1 V",
        "RATIO, 0.81552, 0.81552, 0.81552",
        "WATER, 70 gal, 70 gal, 265 L"
    })
    void shownInALedger(Dimension dimension, String text, String us, String metric) {
        Quantity quantity = Units.parse(dimension, text);
        assertEquals(us, Units.fine(quantity, UnitSystem.US));
        assertEquals(metric, Units.fine(quantity, UnitSystem.METRIC));
    }
}
