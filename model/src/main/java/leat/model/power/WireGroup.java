package leat.model.power;

import leat.model.fault.Require;

/**
 * Equal single wires that lie in a conduit already.
 *
 * @param size  of a conductor of the catalogue, such as {@code 12} (AWG) or {@code 2.5} (mm²)
 * @param count at least 1
 */
public record WireGroup(String size, int count) {

    public WireGroup {
        Require.name("wires", "size", size);
        Require.atLeast("wires " + size, "count", count, 1);
    }
}
