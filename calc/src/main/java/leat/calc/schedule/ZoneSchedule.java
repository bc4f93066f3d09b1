package leat.calc.schedule;

import java.time.Month;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;

/**
 * A zone through the year.
 *
 * @param months from January on
 * @param peak   in a week without rain of the month in which the yard uses most
 */
public record ZoneSchedule(ZoneGround ground, List<ZoneMonth> months, ZoneMonth peak) {

    public ZoneSchedule {
        Require.present("zone schedule", "ground", ground);
        Require.present("zone schedule", "peak", peak);
        months = Require.entries("zone schedule", "months", months);
        if (months.size() != 12) {
            throw new InvalidValueException("zone schedule", "months", months.size() + " months", "twelve");
        }
    }

    public ZoneMonth month(Month month) {
        return months.get(month.getValue() - 1);
    }
}
