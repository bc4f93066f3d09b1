package leat.model.power;

import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.id.Id;

/** Checks that whatever a part of the power system names is there. */
final class PowerReferences {

    private final SortedSet<Id> panels = new TreeSet<>();
    private final SortedSet<Id> circuits = new TreeSet<>();
    private final SortedSet<Id> switches = new TreeSet<>();
    private final SortedSet<Id> conduits = new TreeSet<>();
    private final List<Circuit> allCircuits;

    PowerReferences(List<Panel> panels, List<Circuit> circuits, List<LightSwitch> switches, List<Conduit> conduits) {
        allCircuits = circuits;
        panels.forEach(one -> this.panels.add(one.id()));
        circuits.forEach(one -> this.circuits.add(one.id()));
        switches.forEach(one -> this.switches.add(one.id()));
        conduits.forEach(one -> this.conduits.add(one.id()));
    }

    void check(
            List<Outlet> outlets,
            List<Luminaire> luminaires,
            List<StructureFeed> feeds,
            List<Controller> controllers,
            List<Transformer> transformers,
            List<PowerCable> powerCables,
            List<ValveCable> valveCables) {
        new TransformerReferences(allCircuits, transformers).check(outlets, luminaires);
        allCircuits.stream()
                .filter(circuit -> !circuit.isLowVoltage())
                .forEach(circuit -> require("circuit " + circuit.id(), "panel", circuit.supply(), panels));
        luminaires.forEach(light ->
                light.lightSwitch().ifPresent(one -> require("luminaire " + light.id(), "lightSwitch", one, switches)));
        SortedSet<Id> ends = new TreeSet<>(panels);
        ends.addAll(switches);
        Stream.<List<? extends Load>>of(outlets, luminaires, feeds, controllers, transformers)
                .flatMap(Collection::stream)
                .forEach(load -> {
                    ends.add(load.id());
                    load.circuit().ifPresent(one -> require(named(load.id()), "circuit", one, circuits));
                });
        SortedSet<Id> seen = new TreeSet<>();
        for (PowerCable cable : powerCables) {
            checkConduits(cable, seen);
            require("cable " + cable.id(), "circuit", cable.circuit(), circuits);
            require("cable " + cable.id(), "from", cable.from(), ends);
            require("cable " + cable.id(), "to", cable.to(), ends);
        }
        for (ValveCable cable : valveCables) {
            checkConduits(cable, seen);
            require("cable " + cable.id(), "from", cable.from(), ends);
        }
    }

    private void checkConduits(Cable cable, SortedSet<Id> seen) {
        if (!seen.add(cable.id())) {
            throw new InvalidValueException("cable " + cable.id(), "id", "used twice", "unique among its kind");
        }
        cable.conduits().forEach(one -> require("cable " + cable.id(), "conduits", one, conduits));
    }

    private static String named(Id id) {
        return id.kind() + " " + id.name();
    }

    static void require(String thing, String field, Id id, SortedSet<? extends Id> known) {
        if (!known.contains(id)) {
            List<String> names = known.stream()
                    .filter(one -> one.kind().equals(id.kind()))
                    .map(Id::name)
                    .toList();
            throw new InvalidValueException(
                    thing,
                    field,
                    "'" + id.name() + "', which is not there",
                    "the name of a " + id.kind() + Nearest.hint(id.name(), names));
        }
    }
}
