package leat.model.power;

import java.util.List;
import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.geometry.Polyline;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.ManifoldId;
import leat.model.id.WireEndId;
import leat.model.site.Phase;

/**
 * The live, neutral and grounding conductors of a circuit from one thing to the next. How many there are the circuit
 * says, and whether they are single wires or a sheathed cable.
 *
 * @param from      the panel or the transformer of the circuit, or a load or a switch on the way
 * @param conductor size of its live conductors; the grounding conductor follows from it
 */
public record PowerCable(
        CableId id,
        CircuitId circuit,
        WireEndId from,
        WireEndId to,
        Polyline route,
        List<ConduitId> conduits,
        Optional<String> conductor,
        boolean existing,
        Phase phase)
        implements Cable {

    public PowerCable {
        Require.present("cable", "id", id);
        String thing = "cable " + id;
        Require.present(thing, "circuit", circuit);
        Require.present(thing, "from", from);
        Require.present(thing, "to", to);
        if (from instanceof ManifoldId || to instanceof ManifoldId) {
            throw new InvalidValueException(thing, "end", "a manifold", "a panel, a switch or a load");
        }
        if (from.equals(to)) {
            throw new InvalidValueException(thing, "to", "where it starts", "another thing");
        }
        Require.present(thing, "route", route);
        conduits = Require.entries(thing, "conduits", conduits);
        Require.present(thing, "conductor", conductor);
        conductor.ifPresent(one -> Require.name(thing, "conductor", one));
        Require.present(thing, "phase", phase);
    }

    @Override
    public PowerCable withConductor(Optional<String> newConductor) {
        return new PowerCable(id, circuit, from, to, route, conduits, newConductor, existing, phase);
    }

    @Override
    public PowerCable withConduits(List<ConduitId> newConduits) {
        return new PowerCable(id, circuit, from, to, route, newConduits, conductor, existing, phase);
    }
}
