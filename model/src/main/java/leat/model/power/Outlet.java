package leat.model.power;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.OutletId;
import leat.model.quantity.Power;
import leat.model.site.Phase;

/**
 * An outlet for plugs.
 *
 * @param groundFault whether it is protected itself against current that leaks to ground
 * @param power       what the plan reckons with for whatever is plugged in
 */
public record Outlet(
        OutletId id, Point at, boolean groundFault, Power power, Optional<CircuitId> circuit, Phase phase, Ahead ahead)
        implements Load {

    public Outlet {
        Require.present("outlet", "id", id);
        String thing = "outlet " + id;
        Require.present(thing, "at", at);
        Require.moreThan(thing, "power", power, Power.ZERO);
        Require.present(thing, "circuit", circuit);
        Require.present(thing, "phase", phase);
        Require.present(thing, "ahead", ahead);
    }

    @Override
    public Outlet withCircuit(Optional<CircuitId> newCircuit) {
        return new Outlet(id, at, groundFault, power, newCircuit, phase, ahead);
    }
}
