package leat.calc.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.id.ControllerId;
import leat.model.id.ManifoldId;
import leat.model.plan.Yard;
import leat.model.power.Ahead;
import leat.model.power.Controller;
import leat.model.power.ValveCable;
import leat.model.site.Phase;
import leat.model.water.Manifold;
import leat.model.water.Zone;

/** Which controller works which manifold, with how many wires, from when on. */
final class ValveRoutes {

    private final Yard yard;
    private final WiringParameters parameters;
    private final SortedMap<ControllerId, List<Manifold>> served = new TreeMap<>();
    private final List<Reason> reasons = new ArrayList<>();

    ValveRoutes(Yard yard, List<ValveCable> given, WiringParameters parameters) {
        this.yard = yard;
        this.parameters = parameters;
        SortedMap<ControllerId, Integer> left = new TreeMap<>();
        for (Controller controller : yard.power().controllers()) {
            left.put(controller.id(), controller.stations());
            served.put(controller.id(), new ArrayList<>());
        }
        SortedSet<ManifoldId> wired = new TreeSet<>();
        for (ValveCable cable : given) {
            manifold(cable.to())
                    .filter(one -> wired.add(one.id()))
                    .ifPresent(one -> left.merge(cable.from(), -one.valves().size(), Integer::sum));
        }
        for (Manifold manifold : yard.water().manifolds()) {
            if (!wired.contains(manifold.id()) && !manifold.valves().isEmpty()) {
                assign(manifold, left);
            }
        }
    }

    private Optional<Manifold> manifold(ManifoldId id) {
        return yard.water().manifolds().stream()
                .filter(one -> one.id().equals(id))
                .findFirst();
    }

    /** The nearest controller with stations left; where none has enough, the nearest of all. */
    private void assign(Manifold manifold, SortedMap<ControllerId, Integer> left) {
        int valves = manifold.valves().size();
        Optional<Controller> best = yard.power().controllers().stream()
                .min(Comparator.comparing((Controller one) -> left.getOrDefault(one.id(), 0) < valves)
                        .thenComparing(one -> one.phase() == Phase.LATER && phase(manifold) == Phase.NOW)
                        .thenComparingDouble(one -> one.at().distanceM(manifold.at()))
                        .thenComparing(Controller::id));
        if (best.isEmpty()) {
            reasons.add(new Reason(Subject.of(manifold.id()), "there is no controller that could work its valves"));
            return;
        }
        left.merge(best.get().id(), -valves, Integer::sum);
        served.getOrDefault(best.get().id(), new ArrayList<>()).add(manifold);
    }

    /** A manifold is needed when the first of its zones is; one without zones at once. */
    private Phase phase(Manifold manifold) {
        List<Zone> zones = yard.water().zones().stream()
                .filter(zone ->
                        manifold.valves().stream().anyMatch(valve -> valve.id().equals(zone.valve())))
                .toList();
        boolean later = !zones.isEmpty() && zones.stream().allMatch(zone -> zone.phase() == Phase.LATER);
        return later ? Phase.LATER : Phase.NOW;
    }

    List<Manifold> servedBy(ControllerId controller) {
        return served.getOrDefault(controller, List.of());
    }

    /** Wires to a manifold of now go in now, also when their controller comes later but wants them now. */
    Ahead laidNow(Controller controller, Manifold manifold) {
        if (phase(manifold) == Phase.LATER) {
            return Ahead.NOTHING;
        }
        return controller.phase() == Phase.NOW ? Ahead.WIRES : controller.ahead();
    }

    /** One for each valve, spare ones included, a common one, and spares. */
    int strands(Manifold manifold) {
        int valves = manifold.valves().size();
        int each = (int) parameters.valvesASpare().value();
        return valves + 1 + (valves + each - 1) / each;
    }

    static WireEnd end(Manifold manifold) {
        return new WireEnd(manifold.id(), manifold.at(), Phase.NOW);
    }

    static WireEnd end(Controller controller) {
        return new WireEnd(controller.id(), controller.at(), controller.phase());
    }

    List<Reason> reasons() {
        return reasons;
    }
}
