package leat.model.power;

import java.util.List;
import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.OutletId;
import leat.model.id.SurfaceId;
import leat.model.id.TransformerId;
import leat.model.quantity.Current;
import leat.model.quantity.Power;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/**
 * A transformer or other power supply that feeds lamps of low voltage. Toward the panel it is a load of its rating; the
 * circuits of low voltage start from it.
 *
 * @param inside  the structure in which it stands
 * @param rating  volt-amperes that it may give for ever
 * @param taps    voltages that it gives, lowest first, at least one
 * @param plug    the outlet that it is plugged into; it has no circuit of its own then
 * @param circuit that feeds it where it has no plug
 */
public record Transformer(
        TransformerId id,
        Point at,
        Optional<SurfaceId> inside,
        Power rating,
        List<Voltage> taps,
        Optional<OutletId> plug,
        Optional<CircuitId> circuit,
        Phase phase,
        Ahead ahead)
        implements Load, PowerSupply {

    public Transformer {
        Require.present("transformer", "id", id);
        String thing = "transformer " + id;
        Require.present(thing, "at", at);
        Require.present(thing, "inside", inside);
        Require.moreThan(thing, "rating", rating, Power.ZERO);
        taps = Require.unique("tap of " + thing, taps, tap -> tap);
        if (taps.isEmpty()) {
            throw new InvalidValueException(thing, "taps", "none", "at least one voltage");
        }
        Require.moreThan(thing, "taps", taps.get(0), Voltage.ZERO);
        Require.present(thing, "plug", plug);
        Require.present(thing, "circuit", circuit);
        if (plug.isPresent() && circuit.isPresent()) {
            throw new InvalidValueException(
                    thing, "circuit", "'" + circuit.get() + "' beside a plug", "either a circuit or a plug");
        }
        Require.present(thing, "phase", phase);
        Require.present(thing, "ahead", ahead);
    }

    /** Its rating: what it takes with all its lamps on is never more. */
    @Override
    public Power power() {
        return rating;
    }

    @Override
    public boolean isWired() {
        return plug.isEmpty();
    }

    /** What it gives at most through a tap before it is overloaded. */
    public Current mostCurrent(Voltage tap) {
        return new Current(rating.si() / tap.si());
    }

    @Override
    public Transformer withCircuit(Optional<CircuitId> newCircuit) {
        return new Transformer(id, at, inside, rating, taps, plug, newCircuit, phase, ahead);
    }
}
