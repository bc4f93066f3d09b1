package leat.calc.schedule;

import java.time.Month;
import java.util.List;
import leat.model.fault.Require;
import leat.model.quantity.Length;

/**
 * What a reference of short grass uses in a month.
 *
 * @param aDay      depth of water on an average day
 * @param estimated what the climate did not say and FAO 56 has a way to do without, such as {@code wind}
 */
public record ReferenceMonth(Month month, Length aDay, EvapotranspirationMethod method, List<String> estimated) {

    public ReferenceMonth {
        Require.present("reference month", "month", month);
        Require.atLeast("reference month", "aDay", aDay, Length.ZERO);
        Require.present("reference month", "method", method);
        estimated = Require.entries("reference month", "estimated", estimated);
    }
}
