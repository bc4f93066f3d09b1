package leat.calc.wiring;

import java.util.Optional;
import leat.model.catalog.BuriedAs;
import leat.model.catalog.ConduitSpec;
import leat.model.fault.Require;
import leat.model.power.Circuit;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;

/**
 * What lies in the ground, as far as its cover depends on it.
 *
 * @param as          in a conduit or without
 * @param breaker     before it; for control, what its supply gives at most
 * @param groundFault whether it is protected at its origin against current that leaks to ground
 */
public record Burial(BuriedAs as, Voltage voltage, Current breaker, boolean groundFault) {

    /** Of valve wires; far below the limits of what counts as low. */
    private static final Voltage CONTROL_VOLTAGE = new Voltage(24);

    public Burial {
        Require.present("burial", "as", as);
        Require.moreThan("burial", "voltage", voltage, Voltage.ZERO);
        Require.atLeast("burial", "breaker", breaker, Current.ZERO);
    }

    /** The conductors of a circuit, in that conduit or without one. */
    public static Burial of(Circuit circuit, Optional<ConduitSpec> conduit) {
        return new Burial(as(conduit), circuit.voltage(), circuit.breaker(), circuit.groundFault());
    }

    /** Valve wires, in that conduit or without one. */
    public static Burial ofControl(Optional<ConduitSpec> conduit) {
        return new Burial(as(conduit), CONTROL_VOLTAGE, Current.ZERO, false);
    }

    private static BuriedAs as(Optional<ConduitSpec> conduit) {
        return conduit.map(ConduitSpec::buriedAs).orElse(BuriedAs.CABLE);
    }
}
