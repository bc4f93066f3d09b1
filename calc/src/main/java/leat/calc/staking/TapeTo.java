package leat.calc.staking;

import leat.model.fault.Require;
import leat.model.quantity.Length;

/**
 * A tape from a mark to a stake.
 *
 * @param level    distance with the tape held level, as on the plan: this one is taped
 * @param straight distance with the tape held straight from ground to ground, for slopes too steep to hold it level
 */
public record TapeTo(TapeMark mark, Length level, Length straight) {

    public TapeTo {
        Require.present("tape", "mark", mark);
        Require.atLeast("tape from " + mark.name(), "level", level, Length.ZERO);
        Require.atLeast("tape from " + mark.name(), "straight", straight, level);
    }
}
