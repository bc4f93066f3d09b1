package leat.model.power;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import leat.model.fault.Require;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.ControllerId;
import leat.model.id.LoadId;
import leat.model.id.PanelId;
import leat.model.id.SupplyId;
import leat.model.id.SwitchId;
import leat.model.id.TransformerId;

/**
 * All that carries current. Each list is kept sorted by id, and each name that is used exists. An unfinished system is
 * legal: loads without a circuit, circuits without cables, cables without a size.
 *
 * @param code the family of codes; empty to go by the units of the yard
 */
public record PowerSystem(
        Optional<CodeFamily> code,
        List<Panel> panels,
        List<Circuit> circuits,
        List<Outlet> outlets,
        List<Luminaire> luminaires,
        List<LightSwitch> switches,
        List<StructureFeed> feeds,
        List<Controller> controllers,
        List<Transformer> transformers,
        List<Conduit> conduits,
        List<PowerCable> powerCables,
        List<ValveCable> valveCables) {

    public static final PowerSystem EMPTY = new PowerSystem(
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());

    public PowerSystem {
        Require.present("power", "code", code);
        panels = Require.unique("panel", panels, Panel::id);
        circuits = Require.unique("circuit", circuits, Circuit::id);
        outlets = Require.unique("outlet", outlets, Outlet::id);
        luminaires = Require.unique("luminaire", luminaires, Luminaire::id);
        switches = Require.unique("switch", switches, LightSwitch::id);
        feeds = Require.unique("structure feed", feeds, StructureFeed::id);
        controllers = Require.unique("controller", controllers, Controller::id);
        transformers = Require.unique("transformer", transformers, Transformer::id);
        conduits = Require.unique("conduit", conduits, Conduit::id);
        powerCables = Require.unique("cable", powerCables, PowerCable::id);
        valveCables = Require.unique("cable", valveCables, ValveCable::id);
        new PowerReferences(panels, circuits, switches, conduits)
                .check(outlets, luminaires, feeds, controllers, transformers, powerCables, valveCables);
    }

    public boolean isEmpty() {
        return equals(EMPTY);
    }

    /** Outlets, luminaires, structure feeds, controllers, transformers. */
    public Stream<Load> loads() {
        return Stream.<List<? extends Load>>of(outlets, luminaires, feeds, controllers, transformers)
                .flatMap(Collection::stream);
    }

    /** Power cables, then valve cables. */
    public Stream<Cable> cables() {
        return Stream.<List<? extends Cable>>of(powerCables, valveCables).flatMap(Collection::stream);
    }

    public Optional<Panel> panel(PanelId id) {
        return find(panels, Panel::id, id);
    }

    public Optional<Transformer> transformer(TransformerId id) {
        return find(transformers, Transformer::id, id);
    }

    /** What a circuit starts from. */
    public PowerSupply supplyOf(Circuit circuit) {
        return Stream.<List<? extends PowerSupply>>of(panels, transformers)
                .flatMap(Collection::stream)
                .filter(one -> one.id().equals(circuit.supply()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(circuit.supply() + " is named but not there"));
    }

    /** The circuits that start from a panel or a transformer. */
    public List<Circuit> circuitsFrom(SupplyId supply) {
        return circuits.stream().filter(one -> one.supply().equals(supply)).toList();
    }

    public Optional<Circuit> circuit(CircuitId id) {
        return find(circuits, Circuit::id, id);
    }

    public Optional<LightSwitch> lightSwitch(SwitchId id) {
        return find(switches, LightSwitch::id, id);
    }

    public Optional<Controller> controller(ControllerId id) {
        return find(controllers, Controller::id, id);
    }

    public Optional<Conduit> conduit(ConduitId id) {
        return find(conduits, Conduit::id, id);
    }

    public Optional<Load> load(LoadId id) {
        return loads().filter(load -> load.id().equals(id)).findFirst();
    }

    public Optional<Cable> cable(CableId id) {
        return cables().filter(cable -> cable.id().equals(id)).findFirst();
    }

    /** Whether conductors of a panel lie in it; else valve wires, or wires to lamps of low voltage. */
    public boolean isFromPanel(Cable cable) {
        return cable instanceof PowerCable one
                && circuit(one.circuit()).filter(Circuit::isLowVoltage).isEmpty();
    }

    /** What passes through that conduit, sorted: power cables first. */
    public List<Cable> cablesIn(ConduitId conduit) {
        return cables().filter(cable -> cable.conduits().contains(conduit)).toList();
    }

    public List<Load> loadsOf(CircuitId circuit) {
        return loads().filter(load -> load.circuit().filter(circuit::equals).isPresent())
                .toList();
    }

    public List<PowerCable> cablesOf(CircuitId circuit) {
        return powerCables.stream()
                .filter(cable -> cable.circuit().equals(circuit))
                .toList();
    }

    private static <T, I> Optional<T> find(List<T> things, Function<T, I> id, I wanted) {
        return things.stream().filter(one -> id.apply(one).equals(wanted)).findFirst();
    }

    /** Circuits with their cables change together with the loads, since they name each other. */
    public PowerSystem with(
            List<Circuit> newCircuits,
            List<Load> newLoads,
            List<Conduit> newConduits,
            List<PowerCable> newPowerCables,
            List<ValveCable> newValveCables) {
        return new PowerSystem(
                code,
                panels,
                newCircuits,
                only(newLoads, Outlet.class),
                only(newLoads, Luminaire.class),
                switches,
                only(newLoads, StructureFeed.class),
                only(newLoads, Controller.class),
                only(newLoads, Transformer.class),
                newConduits,
                newPowerCables,
                newValveCables);
    }

    private static <T> List<T> only(List<Load> loads, Class<T> type) {
        return loads.stream().filter(type::isInstance).map(type::cast).toList();
    }
}
