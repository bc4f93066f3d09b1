package leat.model.water;

import java.time.Month;
import java.util.Locale;
import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Velocity;

/**
 * Means of a month over many years. Temperatures must be known; for the rest there are ways to do without, less exact.
 *
 * @param lowC     mean of the least temperature of each day, °C; -90 to 60
 * @param highC    mean of the greatest one, °C; at least {@code lowC}
 * @param dewC     dew point, °C; empty when not known
 * @param humidity mean relative humidity, above 0 to 1; empty when not known. A dew point counts for more
 * @param wind     at 2 m above the ground; empty when not known
 * @param rain     of the whole month; empty when not known
 */
public record ClimateMonth(
        Month month,
        double lowC,
        double highC,
        Optional<Double> dewC,
        Optional<Ratio> humidity,
        Optional<Velocity> wind,
        Sunshine sunshine,
        Optional<Length> rain) {

    public ClimateMonth {
        Require.present("climate", "month", month);
        String thing = "climate of " + name(month);
        lowC += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
        highC += 0.0;
        within(thing, "lowC", lowC, -90, 60, "-90 to 60 °C");
        within(thing, "highC", highC, lowC, 60, "at least the low, " + lowC + ", and at most 60 °C");
        Require.present(thing, "dewC", dewC);
        dewC = dewC.map(dew -> dew + 0.0);
        double high = highC;
        dewC.ifPresent(dew -> within(thing, "dewC", dew, -90, high, "at most the high, " + high + " °C"));
        Require.present(thing, "humidity", humidity);
        humidity.ifPresent(share -> within(thing, "humidity", share.value(), 0.01, 1, "1 % to 100 %"));
        Require.present(thing, "wind", wind);
        wind.ifPresent(speed -> Require.atLeast(thing, "wind", speed, Velocity.metresPerSecond(0)));
        Require.present(thing, "sunshine", sunshine);
        Require.present(thing, "rain", rain);
        rain.ifPresent(depth -> Require.atLeast(thing, "rain", depth, Length.ZERO));
    }

    /** With temperatures alone. */
    public static ClimateMonth of(Month month, double lowC, double highC) {
        return new ClimateMonth(
                month,
                lowC,
                highC,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sunshine.UNKNOWN,
                Optional.empty());
    }

    /** As people write it, such as {@code January}. */
    public static String name(Month month) {
        return month.name().charAt(0) + month.name().substring(1).toLowerCase(Locale.ROOT);
    }

    static void within(String thing, String field, double value, double least, double most, String allowed) {
        if (!(value >= least && value <= most)) {
            throw new InvalidValueException(thing, field, String.valueOf(value), allowed);
        }
    }

    /** Half way between low and high, as FAO takes the mean. */
    public double meanC() {
        return (lowC + highC) / 2;
    }
}
