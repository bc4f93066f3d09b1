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
import leat.model.id.LoadId;
import leat.model.id.WireEndId;
import leat.model.power.Circuit;
import leat.model.power.Load;
import leat.model.power.PowerCable;
import leat.model.power.PowerSupply;
import leat.model.power.PowerSystem;

/**
 * How the cables of a circuit branch out from its panel or transformer. A thing within reach of one that is wired, with no cable of its
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
        PowerSupply supply = power.supplyOf(circuit);
        places.put(supply.id(), supply.at());
        power.switches().forEach(one -> places.put(one.id(), one.at()));
        power.panels().forEach(one -> places.putIfAbsent(one.id(), one.at()));
        power.loads().forEach(one -> places.put(one.id(), one.at()));
        grow(cables);
    }

    private void grow(List<PowerCable> cables) {
        Deque<WireEndId> waiting = new ArrayDeque<>(List.of(circuit.supply()));
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

    /** The things on the way from the panel to one, both included; it must be reached. */
    List<WireEndId> way(WireEndId to) {
        List<WireEndId> way = new ArrayList<>(List.of(to));
        Optional<WireEndId> here = before(to);
        while (here.isPresent()) {
            way.add(0, here.get());
            here = before(here.get());
        }
        return way;
    }

    /** All that is reached, what feeds before what is fed; the panel first. */
    List<WireEndId> order() {
        return List.copyOf(order);
    }

    /** The cable that ends at a thing on the way from the panel; empty at the panel, and beside what is wired. */
    Optional<PowerCable> feeding(WireEndId end) {
        return Optional.ofNullable(feeding.get(end));
    }

    /** What a thing takes its current from; empty at the panel. */
    Optional<WireEndId> before(WireEndId end) {
        PowerCable cable = feeding.get(end);
        if (cable == null) {
            return Optional.ofNullable(beside.get(end));
        }
        return Optional.of(cable.from().equals(end) ? cable.to() : cable.from());
    }

    /** Loads of the circuit that no cable leads to. */
    List<LoadId> unreached() {
        return loads.stream().map(Load::id).filter(id -> !reaches(id)).toList();
    }
}
