package leat.model.power;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.FeedId;
import leat.model.id.SurfaceId;
import leat.model.quantity.Power;
import leat.model.site.Phase;

/**
 * The end of the supply of a structure: its own small panel, or the first box of the circuit that serves it.
 *
 * @param power what the structure draws at most
 */
public record StructureFeed(
        FeedId id, Point at, SurfaceId structure, Power power, Optional<CircuitId> circuit, Phase phase, Ahead ahead)
        implements Load {

    public StructureFeed {
        Require.present("structure feed", "id", id);
        String thing = "structure feed " + id;
        Require.present(thing, "at", at);
        Require.present(thing, "structure", structure);
        Require.moreThan(thing, "power", power, Power.ZERO);
        Require.present(thing, "circuit", circuit);
        Require.present(thing, "phase", phase);
        Require.present(thing, "ahead", ahead);
    }

    @Override
    public StructureFeed withCircuit(Optional<CircuitId> newCircuit) {
        return new StructureFeed(id, at, structure, power, newCircuit, phase, ahead);
    }
}
