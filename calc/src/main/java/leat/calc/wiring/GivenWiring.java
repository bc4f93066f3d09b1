package leat.calc.wiring;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.GivenTrenches;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.plan.Aspect;
import leat.model.plan.Yard;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.Load;
import leat.model.power.PowerCable;
import leat.model.power.ValveCable;
import leat.model.trench.TrenchSegment;

/** What of the power the stage leaves as it is. */
final class GivenWiring {

    private final Yard yard;
    private final List<PowerCable> powerCables;
    private final List<ValveCable> valveCables;
    private final List<Conduit> conduits;
    private final List<Circuit> circuits;

    GivenWiring(Yard yard) {
        this.yard = yard;
        powerCables = yard.power().powerCables().stream().filter(this::isGiven).toList();
        valveCables = yard.power().valveCables().stream().filter(this::isGiven).toList();
        SortedSet<ConduitId> used = new TreeSet<>();
        powerCables.forEach(one -> used.addAll(one.conduits()));
        valveCables.forEach(one -> used.addAll(one.conduits()));
        conduits = yard.power().conduits().stream()
                .filter(one -> one.existing() || !yard.isPlanned(one.id(), Aspect.ROUTE) || used.contains(one.id()))
                .toList();
        SortedSet<CircuitId> named = new TreeSet<>();
        powerCables.forEach(one -> named.add(one.circuit()));
        yard.power().loads().filter(this::isStated).forEach(one -> one.circuit().ifPresent(named::add));
        circuits = yard.power().circuits().stream()
                .filter(one -> !yard.isPlanned(one.id(), Aspect.CIRCUIT) || named.contains(one.id()))
                .toList();
    }

    private boolean isGiven(Cable cable) {
        return cable.existing() || !yard.isPlanned(cable.id(), Aspect.ROUTE);
    }

    /** With what was stated to lie in them. */
    List<TrenchSegment> trenches() {
        return GivenTrenches.of(yard);
    }

    /** The conductor that was stated for a cable of that name whose route is planned. */
    Optional<String> statedConductor(CableId id) {
        return yard.power()
                .cable(id)
                .filter(one -> !yard.isPlanned(id, Aspect.SIZE))
                .flatMap(Cable::conductor);
    }

    /** The trade size that was stated for a conduit of that name whose route is planned. */
    Optional<String> statedSize(ConduitId id, String series) {
        return yard.power()
                .conduit(id)
                .filter(one -> !yard.isPlanned(id, Aspect.SIZE) && one.series().equals(series))
                .flatMap(Conduit::size);
    }

    /** Whether the stage chooses its conductor; what is there has one, known or not. */
    boolean isFree(Cable cable) {
        return !cable.existing() && (cable.conductor().isEmpty() || yard.isPlanned(cable.id(), Aspect.SIZE));
    }

    /** Whether the stage chooses its trade size; what is there has one, known or not. */
    boolean isFree(Conduit conduit) {
        return !conduit.existing() && (conduit.size().isEmpty() || yard.isPlanned(conduit.id(), Aspect.SIZE));
    }

    /** Whether it keeps its circuit: one that was stated, or one that stays anyway. */
    boolean hasCircuit(Load load) {
        return isStated(load)
                || circuits.stream()
                        .anyMatch(one -> load.circuit().filter(one.id()::equals).isPresent());
    }

    private boolean isStated(Load load) {
        return load.circuit().isPresent() && !yard.isPlanned(load.id(), Aspect.CIRCUIT);
    }

    List<Circuit> circuits() {
        return circuits;
    }

    List<Conduit> conduits() {
        return conduits;
    }

    List<PowerCable> powerCables() {
        return powerCables;
    }

    List<ValveCable> valveCables() {
        return valveCables;
    }
}
