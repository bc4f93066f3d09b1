package leat.calc.wiring;

import java.util.List;
import java.util.Optional;
import leat.model.catalog.CableSpec;
import leat.model.catalog.ConductorSpec;
import leat.model.power.Circuit;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Resistance;
import leat.model.quantity.Voltage;

/** What the code says about the conductors of one circuit: those of a panel, or those for lamps behind a transformer. */
final class CircuitWires {

    private final ElectricalCode code;
    private final Circuit circuit;

    CircuitWires(ElectricalCode code, Circuit circuit) {
        this.code = code;
        this.circuit = circuit;
    }

    /** Sizes that it may have, finest first. */
    List<ConductorSpec> sizes() {
        return circuit.isLowVoltage() ? code.lampConductors() : code.powerConductors();
    }

    Optional<CableSpec> sheathed(ConductorSpec size) {
        return circuit.isLowVoltage() ? code.lampCable(size) : code.powerCable(size, circuit.liveWires());
    }

    Answer<Resistance> loop(ConductorSpec size, Length oneWay) {
        return circuit.isLowVoltage()
                ? code.lampLoopResistance(size, oneWay)
                : code.loopResistance(size, oneWay, circuit.liveWires());
    }

    Answer<Voltage> drop(Current current, Length oneWay, ConductorSpec size) {
        return Steps.drop(current, loop(size, oneWay));
    }

    Answer<Current> ampacity(ConductorSpec size, Laying laying) {
        return circuit.isLowVoltage() ? code.lampAmpacity(size) : code.ampacity(size, laying);
    }

    /** What may cut it off at most; behind a transformer there are more ratings than those of breakers. */
    Answer<Current> mostBreaker(ConductorSpec size, Laying laying) {
        return circuit.isLowVoltage() ? code.lampAmpacity(size) : code.mostBreaker(size, laying);
    }

    /** The finest size that its breaker protects. */
    Optional<ConductorSpec> thickEnough(Laying laying) {
        if (!circuit.isLowVoltage()) {
            return code.conductorFor(circuit.breaker(), laying).map(Answer::value);
        }
        return code.lampConductors().stream()
                .filter(size -> code.lampAmpacity(size).value().compareTo(circuit.breaker()) >= 0)
                .findFirst();
    }
}
