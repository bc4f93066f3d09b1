package leat.model.power;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.ControllerId;
import leat.model.id.SurfaceId;
import leat.model.quantity.Power;
import leat.model.site.Phase;

/**
 * The clock that opens the zone valves, through wires of low voltage.
 *
 * @param inside   the structure in which it hangs
 * @param stations valves that it can serve
 * @param power    of its transformer
 */
public record Controller(
        ControllerId id,
        Point at,
        Optional<SurfaceId> inside,
        int stations,
        Power power,
        Optional<CircuitId> circuit,
        Phase phase,
        Ahead ahead)
        implements Load {

    public Controller {
        Require.present("controller", "id", id);
        String thing = "controller " + id;
        Require.present(thing, "at", at);
        Require.present(thing, "inside", inside);
        Require.atLeast(thing, "stations", stations, 1);
        Require.moreThan(thing, "power", power, Power.ZERO);
        Require.present(thing, "circuit", circuit);
        Require.present(thing, "phase", phase);
        Require.present(thing, "ahead", ahead);
    }

    @Override
    public Controller withCircuit(Optional<CircuitId> newCircuit) {
        return new Controller(id, at, inside, stations, power, newCircuit, phase, ahead);
    }
}
