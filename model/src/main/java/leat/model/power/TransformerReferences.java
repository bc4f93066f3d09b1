package leat.model.power;

import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.fault.InvalidValueException;
import leat.model.id.CircuitId;
import leat.model.id.OutletId;
import leat.model.id.SupplyId;
import leat.model.id.TransformerId;
import leat.model.quantity.Voltage;

/** Checks what names transformers and what they name: taps, plugs, lamps. */
final class TransformerReferences {

    private final SortedMap<TransformerId, Transformer> transformers = new TreeMap<>();
    private final SortedMap<CircuitId, SupplyId> starts = new TreeMap<>();
    private final List<Circuit> circuits;

    TransformerReferences(List<Circuit> circuits, List<Transformer> transformers) {
        this.circuits = circuits;
        circuits.forEach(one -> starts.put(one.id(), one.supply()));
        transformers.forEach(one -> this.transformers.put(one.id(), one));
    }

    void check(List<Outlet> outlets, List<Luminaire> luminaires) {
        circuits.stream().filter(Circuit::isLowVoltage).forEach(this::checkTap);
        SortedSet<OutletId> plugs = new TreeSet<>();
        outlets.forEach(one -> plugs.add(one.id()));
        for (Transformer transformer : transformers.values()) {
            String thing = "transformer " + transformer.id();
            transformer.plug().ifPresent(one -> PowerReferences.require(thing, "plug", one, plugs));
            transformer.circuit().ifPresent(one -> {
                if (starts.get(one) instanceof TransformerId) {
                    throw new InvalidValueException(
                            thing, "circuit", "'" + one + "', which starts from a transformer", "a circuit of a panel");
                }
            });
        }
        luminaires.forEach(this::checkLamp);
    }

    private void checkTap(Circuit circuit) {
        String thing = "circuit " + circuit.id();
        PowerReferences.require(thing, "transformer", circuit.supply(), names());
        List<Voltage> taps = transformers.values().stream()
                .filter(one -> one.id().equals(circuit.supply()))
                .flatMap(one -> one.taps().stream())
                .toList();
        if (!taps.contains(circuit.voltage())) {
            throw new InvalidValueException(
                    thing,
                    "voltage",
                    circuit.voltage().toString(),
                    "a tap of transformer " + circuit.supply() + ": "
                            + String.join(
                                    ", ", taps.stream().map(Voltage::toString).toList()));
        }
    }

    private void checkLamp(Luminaire luminaire) {
        luminaire.lamp().ifPresent(lamp -> {
            String thing = "luminaire " + luminaire.id();
            PowerReferences.require(thing, "transformer", lamp.transformer(), names());
            luminaire.circuit().ifPresent(one -> {
                SupplyId start = starts.get(one);
                if (start != null && !start.equals(lamp.transformer())) {
                    throw new InvalidValueException(
                            thing,
                            "circuit",
                            "'" + one + "', which starts elsewhere",
                            "a circuit from transformer " + lamp.transformer());
                }
            });
        });
    }

    private SortedSet<TransformerId> names() {
        return new TreeSet<>(transformers.keySet());
    }
}
