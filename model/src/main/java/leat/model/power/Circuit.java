package leat.model.power;

import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.id.CircuitId;
import leat.model.id.SupplyId;
import leat.model.id.TransformerId;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/**
 * A circuit from its breaker in a panel, or from a tap of a transformer, to all that it feeds.
 *
 * @param supply      the panel or the transformer that it starts from
 * @param breaker     the current at which it is cut off; from a transformer, by its fuse or by the transformer itself
 * @param voltage     across the load
 * @param liveWires   conductors that carry current: 2, or 3 for two poles with a neutral or three phases
 * @param groundFault whether it is protected at its origin against current that leaks to ground
 */
public record Circuit(
        CircuitId id,
        SupplyId supply,
        Current breaker,
        Voltage voltage,
        int liveWires,
        boolean groundFault,
        WiringMethod method,
        Phase phase) {

    public Circuit {
        Require.present("circuit", "id", id);
        String thing = "circuit " + id;
        Require.present(thing, "supply", supply);
        Require.moreThan(thing, "breaker", breaker, Current.ZERO);
        Require.moreThan(thing, "voltage", voltage, Voltage.ZERO);
        if (liveWires != 2 && liveWires != 3) {
            throw new InvalidValueException(thing, "liveWires", String.valueOf(liveWires), "2 or 3");
        }
        if (supply instanceof TransformerId && liveWires != 2) {
            throw new InvalidValueException(thing, "liveWires", String.valueOf(liveWires), "2 from a transformer");
        }
        Require.present(thing, "method", method);
        Require.present(thing, "phase", phase);
    }

    /** Whether it starts from a transformer. */
    public boolean isLowVoltage() {
        return supply instanceof TransformerId;
    }

    /** The same through another tap. */
    public Circuit withTap(Voltage tap, Current newBreaker) {
        return new Circuit(id, supply, newBreaker, tap, liveWires, groundFault, method, phase);
    }
}
