package leat.calc.schedule;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.List;
import leat.model.fault.Require;
import leat.model.quantity.TimeSpan;
import leat.model.quantity.WaterVolume;

/**
 * The week of the year that asks for most: one without rain in the month in which the yard uses most.
 *
 * @param runs    every opening of a valve, in order of day, start and zone
 * @param busiest the day on which it takes longest until the last valve has closed
 * @param needed  how long that is, soaking included
 * @param allowed the hours of a day
 * @param least   what all water of the week would take at the safe flow, spread evenly over the allowed days; no plan of
 *     valves does with less. 0 where no safe flow is known
 * @param volume  of water in the week
 */
public record PeakWeek(
        Month month,
        List<ValveRun> runs,
        DayOfWeek busiest,
        TimeSpan needed,
        TimeSpan allowed,
        TimeSpan least,
        WaterVolume volume) {

    public PeakWeek {
        Require.present("peak week", "month", month);
        Require.present("peak week", "busiest", busiest);
        Require.present("peak week", "needed", needed);
        Require.present("peak week", "allowed", allowed);
        Require.present("peak week", "least", least);
        Require.present("peak week", "volume", volume);
        runs = Require.entries("peak week", "runs", runs);
    }

    public boolean fits() {
        return needed.compareTo(allowed) <= 0;
    }
}
