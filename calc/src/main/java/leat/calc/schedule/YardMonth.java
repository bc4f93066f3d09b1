package leat.calc.schedule;

import leat.model.fault.Require;
import leat.model.quantity.TimeSpan;
import leat.model.quantity.WaterVolume;

/**
 * The whole yard in a month.
 *
 * @param week   time that valves are open in a week, all zones together
 * @param volume of water in the whole month
 */
public record YardMonth(ReferenceMonth reference, TimeSpan week, WaterVolume volume) {

    public YardMonth {
        Require.present("yard month", "reference", reference);
        Require.atLeast("yard month", "week", week, TimeSpan.ZERO);
        Require.atLeast("yard month", "volume", volume, WaterVolume.ZERO);
    }
}
