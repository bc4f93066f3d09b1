package leat.calc.staking;

import leat.model.fault.Require;
import leat.model.geometry.Point;

/**
 * A fixed place to hold the end of a tape at.
 *
 * @param name such as {@code house, NE corner} or {@code lot corner 1}
 */
public record TapeMark(String name, Point at) {

    public TapeMark {
        Require.present("tape mark", "name", name);
        Require.present("tape mark " + name, "at", at);
    }
}
