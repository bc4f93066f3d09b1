package leat.calc.wiring;

import java.util.Optional;
import leat.calc.TrenchChoices;
import leat.model.fault.Require;
import leat.model.power.WiringMethod;
import leat.model.quantity.Count;

/**
 * What the designer may choose about power and control. Limits are rules, and the yard may state its own.
 *
 * @param trenches      what digging costs and what trenches keep off, as for pipes
 * @param method        of new circuits; default in conduit
 * @param valveWires    how valve wires are laid; default bare, as cable made for it is
 * @param series        of new conduits; empty for the usual one of the yard's code
 * @param valvesASpare  a spare valve wire for so many valves or part of them; default one for 4, common practice, no
 *     source
 */
public record WiringParameters(
        TrenchChoices trenches,
        WiringMethod method,
        WiringMethod valveWires,
        Optional<String> series,
        Count valvesASpare) {

    public WiringParameters {
        Require.present("wiring", "trenches", trenches);
        Require.present("wiring", "method", method);
        Require.present("wiring", "valveWires", valveWires);
        Require.present("wiring", "series", series);
        Require.atLeast("wiring", "valvesASpare", valvesASpare, Count.of(1));
    }

    public static WiringParameters defaults() {
        return new WiringParameters(
                TrenchChoices.defaults(),
                WiringMethod.IN_CONDUIT,
                WiringMethod.BURIED_CABLE,
                Optional.empty(),
                Count.of(4));
    }

    public WiringParameters withTrenches(TrenchChoices choices) {
        return new WiringParameters(choices, method, valveWires, series, valvesASpare);
    }

    public WiringParameters withMethod(WiringMethod one) {
        return new WiringParameters(trenches, one, valveWires, series, valvesASpare);
    }

    public WiringParameters withValveWires(WiringMethod one) {
        return new WiringParameters(trenches, method, one, series, valvesASpare);
    }

    public WiringParameters withSeries(String name) {
        return new WiringParameters(trenches, method, valveWires, Optional.of(name), valvesASpare);
    }

    public WiringParameters withValvesASpare(Count valves) {
        return new WiringParameters(trenches, method, valveWires, series, valves);
    }
}
