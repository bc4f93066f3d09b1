package leat.calc.staking;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;

/**
 * How a stake is found with two tapes.
 *
 * @param side     of the line from the first mark to the second
 * @param crossing angle between the tapes at the stake; the nearer to 90°, the surer the place
 * @param check    a third tape that must fit as well; empty where no third mark can be seen
 * @param accuracy how far off the place may be, from what a tape is off and how they cross
 */
public record TwoTapeTie(
        TapeTo first, TapeTo second, TieSide side, Angle crossing, Optional<TapeTo> check, Length accuracy) {

    public TwoTapeTie {
        Require.present("tie", "first", first);
        Require.present("tie", "second", second);
        Require.present("tie", "side", side);
        Require.present("tie", "crossing", crossing);
        Require.present("tie", "check", check);
        Require.present("tie", "accuracy", accuracy);
    }
}
