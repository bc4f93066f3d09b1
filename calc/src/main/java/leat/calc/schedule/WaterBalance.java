package leat.calc.schedule;

import leat.model.fault.Require;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;

/**
 * Depths of water on the ground of a zone, on an average day unless said otherwise.
 *
 * @param reference   that the grass reference uses
 * @param coefficient of the planting where it stands
 * @param use         reference times coefficient
 * @param held        that the soil holds for the plants before they suffer; in all, not a day
 * @param rain        of the month that the plants can use; 0 in a dry week
 * @param net         use less rain, 0 or more
 * @param gross       to be thrown, with what unevenness asks for
 * @param interval    whole days that the held water lasts, at least 1
 */
public record WaterBalance(
        Length reference,
        Ratio coefficient,
        Length use,
        Length held,
        Length rain,
        Length net,
        Length gross,
        Count interval) {

    public WaterBalance {
        Require.present("water balance", "reference", reference);
        Require.present("water balance", "coefficient", coefficient);
        Require.present("water balance", "use", use);
        Require.present("water balance", "held", held);
        Require.present("water balance", "rain", rain);
        Require.atLeast("water balance", "net", net, Length.ZERO);
        Require.atLeast("water balance", "gross", gross, Length.ZERO);
        Require.atLeast("water balance", "interval", interval, Count.of(1));
    }
}
