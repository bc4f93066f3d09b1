package leat.model.water;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.quantity.Ratio;

/**
 * How much sun a day has, in whichever way it was measured; the last that is known counts.
 *
 * @param hours   of sunshine a day, 0 to 24
 * @param share   of the daylight in which the sun shone, 0 to 1
 * @param solarMj solar radiation at the ground, MJ a square metre and day, 0 to 50
 */
public record Sunshine(Optional<Double> hours, Optional<Ratio> share, Optional<Double> solarMj) {

    public static final Sunshine UNKNOWN = new Sunshine(Optional.empty(), Optional.empty(), Optional.empty());

    public Sunshine {
        Require.present("sunshine", "hours", hours);
        hours = hours.map(one -> one + 0.0); // see ClimateMonth
        hours.ifPresent(one -> ClimateMonth.within("sunshine", "hours", one, 0, 24, "0 to 24"));
        Require.present("sunshine", "share", share);
        share.ifPresent(one -> ClimateMonth.within("sunshine", "share", one.value(), 0, 1, "0 % to 100 %"));
        Require.present("sunshine", "solarMj", solarMj);
        solarMj = solarMj.map(one -> one + 0.0);
        solarMj.ifPresent(one -> ClimateMonth.within("sunshine", "solarMj", one, 0, 50, "0 to 50 MJ/m²"));
    }

    public boolean isKnown() {
        return hours.isPresent() || share.isPresent() || solarMj.isPresent();
    }
}
