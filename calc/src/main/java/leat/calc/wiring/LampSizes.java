package leat.calc.wiring;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import leat.model.catalog.ConductorSpec;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.power.Circuit;
import leat.model.power.LampSupply;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.PowerSystem;
import leat.model.power.Transformer;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/**
 * Chooses cable and tap of a circuit of low voltage: the finest cable with which some tap gives each lamp a voltage that
 * it works with, and of those taps the lowest.
 */
final class LampSizes {

    private final ElectricalCode code;
    private final PowerSystem power;
    private final SortedSet<CableId> freeCables;
    private final SortedSet<CircuitId> freeTaps;
    private final CircuitRules rules;

    LampSizes(
            ElectricalCode code,
            PowerSystem power,
            SortedSet<CableId> freeCables,
            SortedSet<CircuitId> freeTaps,
            CircuitRules rules) {
        this.code = code;
        this.power = power;
        this.freeCables = freeCables;
        this.freeTaps = freeTaps;
        this.rules = rules;
    }

    record Choice(Circuit circuit, ConductorSpec size) {}

    /** Adds a reason where nothing will do; the thickest cable stands then, at the tap that the circuit has. */
    Choice choose(Circuit circuit, List<Reason> reasons) {
        List<Circuit> taps = taps(circuit);
        List<ConductorSpec> sizes = code.lampConductors();
        for (ConductorSpec size : sizes) {
            for (Circuit tap : taps) {
                boolean bears = code.lampAmpacity(size).value().compareTo(tap.breaker()) >= 0;
                if (bears && gives(tap, size)) {
                    return new Choice(tap, size);
                }
            }
        }
        reasons.add(new Reason(
                Subject.of(circuit.id()),
                "no cable of the tables gives each lamp a voltage that it works with, at no tap of the transformer"));
        return new Choice(circuit, sizes.get(sizes.size() - 1));
    }

    /** The circuit through each tap that it may have, lowest first. */
    private List<Circuit> taps(Circuit circuit) {
        if (!freeTaps.contains(circuit.id()) || !(power.supplyOf(circuit) instanceof Transformer transformer)) {
            return List.of(circuit);
        }
        return transformer.taps().stream()
                .map(tap -> circuit.withTap(tap, rules.lampBreaker(transformer, tap)))
                .toList();
    }

    private boolean gives(Circuit circuit, ConductorSpec size) {
        var tree = new CircuitTree(power, circuit);
        Drops.Sizes sizes = cable -> freeCables.contains(cable.id())
                ? Optional.of(size)
                : cable.conductor().map(code::conductor);
        var all = new Drops(code, tree, sizes);
        var now = new Drops(code, tree, sizes, load -> load.phase() == Phase.NOW);
        for (Load load : tree.loads()) {
            Optional<LampSupply> lamp = load instanceof Luminaire light ? light.lamp() : Optional.empty();
            Optional<Voltage> least = all.lost(load.id()).map(circuit.voltage()::minus);
            Optional<Voltage> most =
                    (load.phase() == Phase.NOW ? now : all).lost(load.id()).map(circuit.voltage()::minus);
            boolean tooLittle = lamp.isPresent()
                    && least.filter(one -> one.compareTo(lamp.get().least()) < 0)
                            .isPresent();
            boolean tooMuch = lamp.isPresent()
                    && most.filter(one -> one.compareTo(lamp.get().most()) > 0).isPresent();
            if (tooLittle || tooMuch) {
                return false;
            }
        }
        return true;
    }
}
