package leat.model.power;

import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.id.CircuitId;
import leat.model.id.PanelId;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/**
 * A circuit from its breaker in a panel to all that it feeds.
 *
 * @param voltage     across the load
 * @param liveWires   conductors that carry current: 2, or 3 for two poles with a neutral or three phases
 * @param groundFault whether it is protected at its origin against current that leaks to ground
 */
public record Circuit(
        CircuitId id,
        PanelId panel,
        Current breaker,
        Voltage voltage,
        int liveWires,
        boolean groundFault,
        WiringMethod method,
        Phase phase) {

    public Circuit {
        Require.present("circuit", "id", id);
        String thing = "circuit " + id;
        Require.present(thing, "panel", panel);
        Require.moreThan(thing, "breaker", breaker, Current.ZERO);
        Require.moreThan(thing, "voltage", voltage, Voltage.ZERO);
        if (liveWires != 2 && liveWires != 3) {
            throw new InvalidValueException(thing, "liveWires", String.valueOf(liveWires), "2 or 3");
        }
        Require.present(thing, "method", method);
        Require.present(thing, "phase", phase);
    }
}
