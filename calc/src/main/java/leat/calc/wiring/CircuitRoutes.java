package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.internal.routes.RouteSearch;
import leat.model.id.ControllerId;
import leat.model.id.LuminaireId;
import leat.model.id.PanelId;
import leat.model.id.SwitchId;
import leat.model.id.TransformerId;
import leat.model.id.WireEndId;
import leat.model.power.Circuit;
import leat.model.power.LightSwitch;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.PowerCable;
import leat.model.power.PowerSupply;
import leat.model.power.PowerSystem;

/** Leads the wires of one circuit from its panel or transformer to all that it feeds, lights through their switch. */
final class CircuitRoutes {

    private final PowerSystem power;
    private final List<PowerCable> givenCables;
    private final Circuit circuit;
    private final PowerSupply supply;
    private final SortedMap<WireEndId, WireEnd> ends = new TreeMap<>();
    private final SortedMap<LuminaireId, SwitchId> switches = new TreeMap<>();

    /** @param power with the circuits of all loads chosen */
    CircuitRoutes(PowerSystem power, List<PowerCable> givenCables, Circuit circuit) {
        this.power = power;
        this.givenCables = givenCables.stream()
                .filter(one -> one.circuit().equals(circuit.id()))
                .toList();
        this.circuit = circuit;
        this.supply = power.supplyOf(circuit);
        ends.put(supply.id(), new WireEnd(supply.id(), supply.at(), supply.phase()));
        power.loadsOf(circuit.id()).forEach(this::add);
        for (PowerCable cable : this.givenCables) {
            for (WireEndId end : List.of(cable.from(), cable.to())) {
                end(end).ifPresent(one -> ends.putIfAbsent(end, one));
            }
        }
    }

    private void add(Load load) {
        ends.put(load.id(), new WireEnd(load.id(), load.at(), load.phase()));
        if (load instanceof Luminaire light && light.lightSwitch().isPresent()) {
            LightSwitch one = power.lightSwitch(light.lightSwitch().get()).orElseThrow();
            switches.put(light.id(), one.id());
            ends.put(one.id(), new WireEnd(one.id(), one.at(), one.phase()));
        }
    }

    /** A thing of another circuit through which a given cable passes. */
    private Optional<WireEnd> end(WireEndId id) {
        if (id instanceof PanelId one) {
            return power.panel(one).map(it -> new WireEnd(id, it.at(), it.phase()));
        }
        if (id instanceof SwitchId one) {
            return power.lightSwitch(one).map(it -> new WireEnd(id, it.at(), it.phase()));
        }
        return power.loads()
                .filter(load -> load.id().equals(id))
                .map(load -> new WireEnd(id, load.at(), load.phase()))
                .findFirst();
    }

    List<WireEnd> ends() {
        return List.copyOf(ends.values());
    }

    /** The start of the circuit and all that given cables reach from it. */
    SortedSet<WireEndId> reached() {
        SortedSet<WireEndId> reached = new TreeSet<>(List.of(supply.id()));
        boolean grew = true;
        while (grew) {
            grew = false;
            for (PowerCable cable : givenCables) {
                grew |= reached.contains(cable.from()) && ends.containsKey(cable.to()) && reached.add(cable.to());
            }
        }
        return reached;
    }

    /** What no given cable reaches. */
    List<WireEnd> wanted() {
        SortedSet<WireEndId> reached = reached();
        return ends.values().stream().filter(end -> !reached.contains(end.id())).toList();
    }

    /** Whether nothing is left to be wired. */
    boolean isDone() {
        return wanted().isEmpty();
    }

    /** Wires to all that can be reached; what stands where something wired stands needs none. */
    List<Wire> join(WireSearch search, RouteSearch.Found found) {
        SortedSet<WireEndId> reached = reached();
        SortedSet<Integer> springs = search.placesOf(reached);
        var tree = new WireTree(reached, this::mayFeed, (from, to) -> {
            List<Integer> path = found.tree().path(search.place(from), search.place(to));
            return path.isEmpty() || WireSearch.jumps(path, springs)
                    ? Double.POSITIVE_INFINITY
                    : search.legs(path).stream().mapToDouble(WireLeg::lengthM).sum();
        });
        List<WireEnd> wanted = wanted().stream()
                .filter(end -> !found.missed().contains(search.place(end.id())))
                .toList();
        List<Wire> wires = new ArrayList<>();
        for (WireTree.Step step : tree.join(wanted)) {
            List<Integer> path = found.tree().path(search.place(step.from()), search.place(step.to()));
            if (path.size() > 1) {
                wires.add(new Wire(step.from(), step.to(), search.legs(path)));
            }
        }
        return wires;
    }

    /** Lights hang behind their switch and behind each other; behind a controller or a transformer hangs nothing else. */
    private boolean mayFeed(WireEndId from, WireEndId to) {
        Optional<SwitchId> ofTo = switchOf(to);
        Optional<SwitchId> ofFrom = switchOf(from);
        if (ofTo.isPresent()) {
            return from.equals(ofTo.get()) || ofFrom.equals(ofTo);
        }
        boolean isEnd = from instanceof ControllerId || from instanceof TransformerId && !from.equals(supply.id());
        return ofFrom.isEmpty() && !isEnd;
    }

    private Optional<SwitchId> switchOf(WireEndId end) {
        return end instanceof LuminaireId light ? Optional.ofNullable(switches.get(light)) : Optional.empty();
    }

    Circuit circuit() {
        return circuit;
    }

    WireEndId root() {
        return supply.id();
    }
}
