package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.catalog.CableSpec;
import leat.model.catalog.ConductorSpec;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;
import leat.model.power.WireGroup;
import leat.model.power.WiringMethod;

/** What lies in conduits, as wires and cables with their areas, and how conductors lie in them. */
final class ConduitContents {

    private final ElectricalCode code;
    private final PowerSystem power;

    /** @param power with the sizes that are known */
    ConduitContents(ElectricalCode code, PowerSystem power) {
        this.code = code;
        this.power = power;
    }

    /** What is in a conduit; empty while a cable in it has no size yet. */
    Optional<List<ConduitContent>> of(Conduit conduit) {
        List<ConduitContent> contents = new ArrayList<>();
        for (WireGroup wires : conduit.occupied()) {
            contents.add(ConduitContent.of(code.conductor(wires.size()), wires.count()));
        }
        for (Cable cable : power.cablesIn(conduit.id())) {
            if (cable.conductor().isEmpty()) {
                return Optional.empty();
            }
            ConductorSpec conductor = code.conductor(cable.conductor().get());
            if (cable instanceof PowerCable one) {
                power.circuit(one.circuit()).ifPresent(circuit -> addPower(contents, circuit, conductor));
            } else if (cable instanceof ValveCable one) {
                addControl(contents, one, conductor);
            }
        }
        return Optional.of(contents);
    }

    private void addPower(List<ConduitContent> contents, Circuit circuit, ConductorSpec conductor) {
        Optional<CableSpec> sheathed = circuit.method() == WiringMethod.BURIED_CABLE
                ? new CircuitWires(code, circuit).sheathed(conductor)
                : Optional.empty();
        if (sheathed.isPresent()) {
            contents.add(ConduitContent.of(sheathed.get()));
            return;
        }
        contents.add(ConduitContent.of(conductor, circuit.liveWires()));
        if (!circuit.isLowVoltage()) {
            contents.add(ConduitContent.of(grounding(circuit, conductor), 1));
        }
    }

    private void addControl(List<ConduitContent> contents, ValveCable cable, ConductorSpec conductor) {
        Optional<CableSpec> made = code.controlCable(conductor, cable.strands());
        contents.add(made.map(ConduitContent::of).orElseGet(() -> ConduitContent.of(conductor, cable.strands())));
    }

    /** The grounding conductor of a circuit whose live ones have that size. */
    ConductorSpec grounding(Circuit circuit, ConductorSpec chosen) {
        ConductorSpec least = code.conductorFor(circuit.breaker(), Laying.usual(circuit.method(), loaded(circuit)))
                .map(Answer::value)
                .filter(one -> one.metal().area().compareTo(chosen.metal().area()) <= 0)
                .orElse(chosen);
        return code.groundingConductor(circuit.breaker(), least, chosen).value();
    }

    private static int loaded(Circuit circuit) {
        return circuit.liveWires();
    }

    /** How the conductors of a cable lie where it is most crowded; wires that were there before count as loaded. */
    Laying laying(PowerCable cable, Circuit circuit) {
        int most = loaded(circuit);
        for (var id : cable.conduits()) {
            int count = power.conduit(id).stream()
                    .flatMap(one -> one.occupied().stream())
                    .mapToInt(WireGroup::count)
                    .sum();
            for (Cable other : power.cablesIn(id)) {
                if (other instanceof PowerCable one) {
                    count += power.circuit(one.circuit())
                            .map(ConduitContents::loaded)
                            .orElse(0);
                }
            }
            most = Math.max(most, count);
        }
        return Laying.usual(circuit.method(), most);
    }

    static int count(List<ConduitContent> contents) {
        return contents.stream().mapToInt(ConduitContent::count).sum();
    }
}
