package leat.calc.schedule;

import java.time.Month;
import leat.model.fault.Require;
import leat.model.quantity.WaterVolume;

/**
 * A zone in a month.
 *
 * @param volume of water in the whole month
 */
public record ZoneMonth(Month month, WaterBalance balance, ZoneSetting setting, WaterVolume volume) {

    public ZoneMonth {
        Require.present("zone month", "month", month);
        Require.present("zone month", "balance", balance);
        Require.present("zone month", "setting", setting);
        Require.atLeast("zone month", "volume", volume, WaterVolume.ZERO);
    }
}
