package leat.calc.wiring;

import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;

/** What wires are for, as far as they must not share a conduit with others. */
enum WireKind {
    POWER,
    LAMPS,
    VALVES;

    static WireKind of(Circuit circuit) {
        return circuit.isLowVoltage() ? LAMPS : POWER;
    }

    static WireKind of(PowerSystem power, Cable cable) {
        if (cable instanceof ValveCable) {
            return VALVES;
        }
        return power.isFromPanel(cable) ? POWER : LAMPS;
    }
}
