package leat.calc.wiring;

import leat.model.catalog.CableSpec;
import leat.model.catalog.ConductorSpec;
import leat.model.fault.Require;
import leat.model.quantity.Area;

/**
 * Equal wires or cables in a conduit.
 *
 * @param what  what they are, for people
 * @param each  area that one takes
 * @param count at least 1; a cable of several strands counts once
 */
public record ConduitContent(String what, Area each, int count) {

    public ConduitContent {
        Require.present("conduit content", "what", what);
        Require.moreThan("conduit content", "each", each, Area.ZERO);
        Require.atLeast("conduit content", "count", count, 1);
    }

    public static ConduitContent of(ConductorSpec conductor, int count) {
        return new ConduitContent(conductor.label(), conductor.insulated(), count);
    }

    public static ConduitContent of(CableSpec cable) {
        return new ConduitContent(cable.title(), cable.fill(), 1);
    }
}
