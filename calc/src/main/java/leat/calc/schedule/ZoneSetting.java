package leat.calc.schedule;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.model.fault.Require;
import leat.model.quantity.Count;
import leat.model.quantity.TimeSpan;

/**
 * What is set at the controller for a zone.
 *
 * @param days   on which it runs; none when it need not run
 * @param cycles in which it runs on each of them
 * @param cycle  length of one, in whole minutes
 * @param soak   least time between two, in whole minutes
 * @param week   that the valve is open in a week: days times cycles times cycle
 */
public record ZoneSetting(SortedSet<DayOfWeek> days, Count cycles, TimeSpan cycle, TimeSpan soak, TimeSpan week) {

    /** It does not run. */
    public static final ZoneSetting OFF =
            new ZoneSetting(Collections.emptySortedSet(), Count.ZERO, TimeSpan.ZERO, TimeSpan.ZERO, TimeSpan.ZERO);

    public ZoneSetting {
        days = Collections.unmodifiableSortedSet(new TreeSet<>(days));
        Require.atLeast("zone setting", "cycles", cycles, Count.ZERO);
        Require.atLeast("zone setting", "cycle", cycle, TimeSpan.ZERO);
        Require.atLeast("zone setting", "soak", soak, TimeSpan.ZERO);
        Require.atLeast("zone setting", "week", week, TimeSpan.ZERO);
    }

    public boolean runs() {
        return !days.isEmpty();
    }
}
