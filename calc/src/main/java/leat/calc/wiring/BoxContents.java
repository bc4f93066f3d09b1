package leat.calc.wiring;

import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.power.WireGroup;

/**
 * What is in a box.
 *
 * @param conductors that end or are spliced in it, and each that passes through, once; without grounding conductors
 * @param groundings grounding conductors, at least 0
 * @param devices    yokes with outlets or switches, at least 0
 * @param clamps     whether there is any clamp inside
 */
public record BoxContents(List<WireGroup> conductors, int groundings, int devices, boolean clamps) {

    public BoxContents {
        conductors = Require.unique("wires in a box", conductors, WireGroup::size);
        if (conductors.isEmpty()) {
            throw new InvalidValueException("box", "conductors", "none", "at least one");
        }
        Require.atLeast("box", "groundings", groundings, 0);
        Require.atLeast("box", "devices", devices, 0);
    }
}
