package leat.calc.schedule;

import java.time.DayOfWeek;
import leat.model.fault.Require;
import leat.model.id.ZoneId;
import leat.model.quantity.Count;
import leat.model.quantity.TimeSpan;

/**
 * A valve that opens once.
 *
 * @param day   on which its hours begin; past midnight the run lies in the morning after
 * @param start from the midnight in which that day begins; more than 24 h in the morning after
 * @param cycle which of the day's cycles it is, from 1
 */
public record ValveRun(DayOfWeek day, TimeSpan start, ZoneId zone, Count cycle, TimeSpan length) {

    public ValveRun {
        Require.present("valve run", "day", day);
        Require.atLeast("valve run", "start", start, TimeSpan.ZERO);
        Require.present("valve run", "zone", zone);
        Require.atLeast("valve run", "cycle", cycle, Count.of(1));
        Require.moreThan("valve run", "length", length, TimeSpan.ZERO);
    }
}
