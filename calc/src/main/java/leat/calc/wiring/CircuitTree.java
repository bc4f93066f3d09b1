package leat.calc.wiring;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.geometry.Point;
import leat.model.id.CableId;
import leat.model.id.LoadId;
import leat.model.id.PanelId;
import leat.model.id.WireEndId;
import leat.model.power.Circuit;
import leat.model.power.Load;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;

/**
 * How the cables of a circuit branch out from its panel. A thing within reach of one that is wired, with no cable of its
 * own, takes its current there. Where cables close a ring, the ring is cut at its far end.
 */
final class CircuitTree {

    /** Things so near to each other are wired to each other without a cable of the plan. */
    static final double TOUCH_M = 0.5;

    private final Circuit circuit;
    private final List<Load> loads;
    private final SortedMap<WireEndId, Point> places = new TreeMap<>();
    private final SortedMap<WireEndId, PowerCable> feeding = new TreeMap<>();
    private final SortedMap<WireEndId, WireEndId> beside = new TreeMap<>();
    private final List<WireEndId> order = new ArrayList<>();

    CircuitTree(PowerSystem power, Circuit circuit) {
        this.circuit = circuit;
        loads = power.loadsOf(circuit.id());
        List<PowerCable> cables = power.cablesOf(circuit.id());
        power.panel(circuit.panel()).ifPresent(one -> places.put(one.id(), one.at()));
        power.switches().forEach(one -> places.put(one.id(), one.at()));
        power.panels().forEach(one -> places.putIfAbsent(one.id(), one.at()));
        power.loads().forEach(one -> places.put(one.id(), one.at()));
        grow(cables);
    }

    private void grow(List<PowerCable> cables) {
        Deque<WireEndId> waiting = new ArrayDeque<>(List.of(circuit.panel()));
        SortedSet<WireEndId> reached = new TreeSet<>(waiting);
        while (!waiting.isEmpty()) {
            WireEndId here = waiting.remove();
            order.add(here);
            for (PowerCable cable : cables) {
                WireEndId other = cable.from().equals(here) ? cable.to() : cable.from();
                boolean leads = cable.from().equals(here) || cable.to().equals(here);
                if (leads && reached.add(other)) {
                    feeding.put(other, cable);
                    waiting.add(other);
                }
            }
            if (waiting.isEmpty()) {
                bridge(cables, reached).ifPresent(waiting::add);
            }
        }
    }

    /** The next thing of the circuit that no cable ends at, beside one that is wired. */
    private Optional<WireEndId> bridge(List<PowerCable> cables, SortedSet<WireEndId> reached) {
        SortedSet<WireEndId> left = new TreeSet<>();
        loads.forEach(load -> left.add(load.id()));
        cables.forEach(cable -> left.addAll(List.of(cable.from(), cable.to())));
        left.removeAll(reached);
        for (WireEndId one : left) {
            Point at = places.get(one);
            Optional<WireEndId> near = order.stream()
                    .filter(wired -> at != null && distanceM(wired, at) <= TOUCH_M)
                    .findFirst();
            boolean ends = cables.stream().anyMatch(cable -> cable.to().equals(one));
            if (near.isPresent() && !ends) {
                reached.add(one);
                beside.put(one, near.get());
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    private double distanceM(WireEndId end, Point at) {
        Point place = places.get(end);
        return place == null ? Double.POSITIVE_INFINITY : place.distanceM(at);
    }

    Circuit circuit() {
        return circuit;
    }

    List<Load> loads() {
        return loads;
    }

    boolean reaches(WireEndId end) {
        return order.contains(end);
    }

    /** The cables from the panel to a thing, in the direction of the power; empty if it stands beside the panel. */
    List<PowerCable> way(WireEndId to) {
        List<PowerCable> way = new ArrayList<>();
        WireEndId here = to;
        while (!(here instanceof PanelId)) {
            PowerCable cable = feeding.get(here);
            WireEndId near = beside.get(here);
            if (cable != null) {
                way.add(0, cable);
                here = cable.from().equals(here) ? cable.to() : cable.from();
            } else if (near != null) {
                here = near;
            } else {
                return List.of();
            }
        }
        return way;
    }

    /** Power that flows through a cable when all behind it is on. */
    double throughW(CableId cable) {
        double sumW = 0;
        for (Load load : loads) {
            if (way(load.id()).stream().anyMatch(one -> one.id().equals(cable))) {
                sumW += load.power().si();
            }
        }
        return sumW;
    }

    double totalW() {
        return loads.stream().mapToDouble(load -> load.power().si()).sum();
    }

    /** Loads of the circuit that no cable leads to. */
    List<LoadId> unreached() {
        return loads.stream().map(Load::id).filter(id -> !reaches(id)).toList();
    }
}
