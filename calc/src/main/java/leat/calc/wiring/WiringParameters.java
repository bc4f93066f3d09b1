package leat.calc.wiring;

import java.util.Optional;
import leat.calc.TrenchChoices;
import leat.model.fault.Require;
import leat.model.power.WiringMethod;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Ratio;

/**
 * What the designer may choose about power and control. Limits are rules, and the yard may state its own.
 *
 * @param trenches      what digging costs and what trenches keep off, as for pipes
 * @param conduit       what conduit and wires cost a metre, as a multiple of digging in lawn; default 0.4, common practice,
 *     no source
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
        Ratio conduit,
        WiringMethod method,
        WiringMethod valveWires,
        Current breaker,
        Current lightBreaker,
        Optional<String> series,
        Count valvesASpare) {

    public WiringParameters {
        Require.present("wiring", "trenches", trenches);
        Require.atLeast("wiring", "conduit", conduit, Ratio.ZERO);
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
                Ratio.of(0.4),
                WiringMethod.IN_CONDUIT,
                WiringMethod.BURIED_CABLE,
                new Current(16),
                new Current(10),
                Optional.empty(),
                Count.of(4));
    }

    public WiringParameters withTrenches(TrenchChoices choices) {
        return new WiringParameters(choices, conduit, method, valveWires, breaker, lightBreaker, series, valvesASpare);
    }

    public WiringParameters withConduit(Ratio cost) {
        return new WiringParameters(trenches, cost, method, valveWires, breaker, lightBreaker, series, valvesASpare);
    }

    /**
     * The choices for the search of ways. It weighs a shared trench against one that is dug; conduit and wires are paid for
     * in both.
     */
    TrenchChoices search() {
        double shared = trenches.digging().sharedTrench().value();
        return trenches.withSharedTrench(Ratio.of((shared + conduit.value()) / (1 + conduit.value())));
    }

    public WiringParameters withMethod(WiringMethod one) {
        return new WiringParameters(trenches, conduit, one, valveWires, breaker, lightBreaker, series, valvesASpare);
    }

    public WiringParameters withValveWires(WiringMethod one) {
        return new WiringParameters(trenches, conduit, method, one, breaker, lightBreaker, series, valvesASpare);
    }

    public WiringParameters withBreaker(Current rating) {
        return new WiringParameters(trenches, conduit, method, valveWires, rating, lightBreaker, series, valvesASpare);
    }

    public WiringParameters withLightBreaker(Current rating) {
        return new WiringParameters(trenches, conduit, method, valveWires, breaker, rating, series, valvesASpare);
    }

    public WiringParameters withSeries(String name) {
        return new WiringParameters(
                trenches, conduit, method, valveWires, breaker, lightBreaker, Optional.of(name), valvesASpare);
    }

    public WiringParameters withValvesASpare(Count valves) {
        return new WiringParameters(trenches, conduit, method, valveWires, breaker, lightBreaker, series, valves);
    }
}
