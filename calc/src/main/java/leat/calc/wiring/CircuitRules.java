package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.Panel;
import leat.model.power.Transformer;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;

/** Chooses breaker and voltage of whole circuits. */
final class CircuitRules {

    /** Above that a feed takes two poles, where that is possible; common practice, no source. */
    private static final double MOST_ON_ONE_POLE_A = 30;

    /** Where live to neutral is less, two poles give twice as much. */
    private static final double LEAST_SINGLE_V = 200;

    /** Of what a circuit of lamps may carry; common practice, no source. */
    private static final double LAMP_SHARE = 0.8;

    private final ElectricalCode code;
    private final WiringParameters parameters;

    CircuitRules(ElectricalCode code, WiringParameters parameters) {
        this.code = code;
        this.parameters = parameters;
    }

    /** What a circuit has at its origin. */
    record Supply(Current breaker, Voltage voltage, int liveWires) {}

    /** Whether the loads can share one circuit with the usual breaker. */
    boolean fits(Panel panel, List<Load> loads) {
        Current usual = usual(loads);
        return breaker(loads, panel.voltage(), 2, usual)
                .filter(breaker -> breaker.equals(atLeast(usual)))
                .isPresent();
    }

    private Current usual(List<Load> loads) {
        return loads.stream().allMatch(Luminaire.class::isInstance) ? parameters.lightBreaker() : parameters.breaker();
    }

    private Current atLeast(Current usual) {
        return code.breakers().stream()
                .filter(one -> one.compareTo(usual) >= 0)
                .findFirst()
                .orElse(usual);
    }

    /** The smallest breaker that bears the loads; the greatest made where none does. */
    Supply supply(Panel panel, List<Load> loads) {
        Optional<Current> single = breaker(loads, panel.voltage(), 2, usual(loads));
        boolean much = single.isEmpty() || single.get().si() > MOST_ON_ONE_POLE_A;
        if (much && panel.voltage().si() < LEAST_SINGLE_V) {
            var twice = new Voltage(2 * panel.voltage().si());
            Optional<Current> both = breaker(loads, twice, 3, usual(loads));
            if (both.isPresent()) {
                return new Supply(both.get(), twice, 3);
            }
        }
        List<Current> made = new ArrayList<>(code.breakers());
        return new Supply(single.orElse(made.get(made.size() - 1)), panel.voltage(), 2);
    }

    private Optional<Current> breaker(List<Load> loads, Voltage voltage, int liveWires, Current usual) {
        double drawnA = LoadCurrents.reckoned(code, loads, voltage, liveWires).si();
        return code.breakers().stream()
                .filter(one -> one.compareTo(usual) >= 0)
                .filter(one -> drawnA <= one.si() * code.loadLimit().limit().si())
                .findFirst();
    }

    /** The current at which a circuit behind a transformer is cut off: what it gives, and no more than the code allows. */
    Current lampBreaker(Transformer transformer, Voltage tap) {
        var most = new Current(code.lampCurrentLimit().limit().si());
        Current gives = transformer.mostCurrent(tap);
        return gives.compareTo(most) < 0 ? gives : most;
    }

    /** Lamps in their order, as many in a circuit as it may carry through the lowest tap with a reserve. */
    List<List<Load>> lampShares(Transformer transformer, List<Load> lamps) {
        double mostW =
                code.lampCurrentLimit().limit().si() * transformer.taps().get(0).si() * LAMP_SHARE;
        List<List<Load>> shares = new ArrayList<>();
        double sharedW = 0;
        for (Load lamp : lamps) {
            sharedW += lamp.power().si();
            if (shares.isEmpty() || sharedW > mostW) {
                shares.add(new ArrayList<>());
                sharedW = lamp.power().si();
            }
            shares.get(shares.size() - 1).add(lamp);
        }
        return shares;
    }

    boolean asksGroundFault(List<Load> loads, Supply supply) {
        return loads.stream()
                .anyMatch(load -> code.groundFault(load, supply.voltage(), supply.breaker())
                        .isPresent());
    }
}
