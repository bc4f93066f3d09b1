package leat.model.power;

import java.util.List;
import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Polyline;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.ControllerId;
import leat.model.id.ManifoldId;
import leat.model.site.Phase;

/**
 * The valve wires from a controller to a manifold: one for each valve, a common wire for all, and spares.
 *
 * @param strands all wires together, at least 2; what valves and common wire leave over is spare
 */
public record ValveCable(
        CableId id,
        ControllerId from,
        ManifoldId to,
        Polyline route,
        List<ConduitId> conduits,
        Optional<String> conductor,
        int strands,
        boolean existing,
        Phase phase)
        implements Cable {

    public ValveCable {
        Require.present("cable", "id", id);
        String thing = "cable " + id;
        Require.present(thing, "from", from);
        Require.present(thing, "to", to);
        Require.present(thing, "route", route);
        conduits = Require.entries(thing, "conduits", conduits);
        Require.present(thing, "conductor", conductor);
        conductor.ifPresent(one -> Require.name(thing, "conductor", one));
        Require.atLeast(thing, "strands", strands, 2);
        Require.present(thing, "phase", phase);
    }

    @Override
    public ValveCable withConductor(Optional<String> newConductor) {
        return new ValveCable(id, from, to, route, conduits, newConductor, strands, existing, phase);
    }

    @Override
    public ValveCable withConduits(List<ConduitId> newConduits) {
        return new ValveCable(id, from, to, route, newConduits, conductor, strands, existing, phase);
    }
}
