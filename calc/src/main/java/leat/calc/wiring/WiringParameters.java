package leat.calc.wiring;

import java.util.Optional;
import leat.calc.TrenchChoices;
import leat.model.fault.Require;
import leat.model.power.WiringMethod;
import leat.model.quantity.Count;
import leat.model.quantity.Current;

/**
 * What the designer may choose about power and control. Limits are rules, and the yard may state its own.
 *
 * @param trenches      what digging costs and what trenches keep off, as for pipes
 * @param method        of new circuits; default in conduit
 * @param valveWires    how valve wires are laid; default bare, as cable made for it is
 * @param breaker      usual rating of new circuits; the next one that is made is taken, or more where the load asks for it;
 *     default 16 A: 16 A or 20 A by the code, common practice, no source
 * @param lightBreaker the same where there is nothing but luminaires; default 10 A: 10 A or 15 A by the code
 * @param series        of new conduits; empty for the usual one of the yard's code
 * @param valvesASpare  a spare valve wire for so many valves or part of them; default one for 4, common practice, no
 *     source
 */
public record WiringParameters(
        TrenchChoices trenches,
        WiringMethod method,
        WiringMethod valveWires,
        Current breaker,
        Current lightBreaker,
        Optional<String> series,
        Count valvesASpare) {

    public WiringParameters {
        Require.present("wiring", "trenches", trenches);
        Require.present("wiring", "method", method);
        Require.present("wiring", "valveWires", valveWires);
        Require.moreThan("wiring", "breaker", breaker, Current.ZERO);
        Require.moreThan("wiring", "lightBreaker", lightBreaker, Current.ZERO);
        Require.present("wiring", "series", series);
        Require.atLeast("wiring", "valvesASpare", valvesASpare, Count.of(1));
    }

    public static WiringParameters defaults() {
        return new WiringParameters(
                TrenchChoices.defaults(),
                WiringMethod.IN_CONDUIT,
                WiringMethod.BURIED_CABLE,
                new Current(16),
                new Current(10),
                Optional.empty(),
                Count.of(4));
    }

    public WiringParameters withTrenches(TrenchChoices choices) {
        return new WiringParameters(choices, method, valveWires, breaker, lightBreaker, series, valvesASpare);
    }

    public WiringParameters withMethod(WiringMethod one) {
        return new WiringParameters(trenches, one, valveWires, breaker, lightBreaker, series, valvesASpare);
    }

    public WiringParameters withValveWires(WiringMethod one) {
        return new WiringParameters(trenches, method, one, breaker, lightBreaker, series, valvesASpare);
    }

    public WiringParameters withBreaker(Current rating) {
        return new WiringParameters(trenches, method, valveWires, rating, lightBreaker, series, valvesASpare);
    }

    public WiringParameters withLightBreaker(Current rating) {
        return new WiringParameters(trenches, method, valveWires, breaker, rating, series, valvesASpare);
    }

    public WiringParameters withSeries(String name) {
        return new WiringParameters(
                trenches, method, valveWires, breaker, lightBreaker, Optional.of(name), valvesASpare);
    }

    public WiringParameters withValvesASpare(Count valves) {
        return new WiringParameters(trenches, method, valveWires, breaker, lightBreaker, series, valves);
    }
}
