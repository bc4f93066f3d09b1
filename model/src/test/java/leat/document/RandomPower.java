package leat.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.ControllerId;
import leat.model.id.FeedId;
import leat.model.id.LoadId;
import leat.model.id.LuminaireId;
import leat.model.id.OutletId;
import leat.model.id.PanelId;
import leat.model.id.SurfaceId;
import leat.model.id.SwitchId;
import leat.model.id.TransformerId;
import leat.model.id.WireEndId;
import leat.model.power.Ahead;
import leat.model.power.Circuit;
import leat.model.power.CodeFamily;
import leat.model.power.Conduit;
import leat.model.power.Controller;
import leat.model.power.LampSupply;
import leat.model.power.LightSwitch;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.Panel;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.StructureFeed;
import leat.model.power.Transformer;
import leat.model.power.ValveCable;
import leat.model.power.WireGroup;
import leat.model.power.WiringMethod;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Power;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;
import leat.model.water.Manifold;
import leat.model.water.WaterSystem;

/** Power systems of all kinds of part, finished or not, in which every name that is used exists. */
final class RandomPower {

    private final RandomYards random;

    RandomPower(RandomYards random) {
        this.random = random;
    }

    PowerSystem system(WaterSystem water) {
        List<Panel> panels = random.list(i -> panel());
        List<Circuit> circuits = new ArrayList<>(
                panels.isEmpty()
                        ? List.of()
                        : random.list(i -> circuit(random.one(panels).id())));
        List<LightSwitch> switches =
                random.list(i -> new LightSwitch(new SwitchId(random.name()), random.point(), random.any(Phase.class)));
        List<Outlet> outlets = random.list(i -> new Outlet(
                new OutletId(random.name()),
                random.point(),
                random.coin(),
                power(),
                on(circuits),
                random.any(Phase.class),
                random.any(Ahead.class)));
        List<Transformer> transformers = transformers(outlets, List.copyOf(circuits));
        if (!transformers.isEmpty()) {
            circuits.addAll(random.list(i -> lowVoltage(i, random.one(transformers))));
        }
        List<Luminaire> luminaires = random.list(i -> new Luminaire(
                new LuminaireId(random.name()),
                random.point(),
                switches.isEmpty()
                        ? Optional.empty()
                        : Optional.of(random.one(switches).id()),
                power(),
                transformers.isEmpty() ? Optional.empty() : random.maybe(() -> lamp(random.one(transformers))),
                Optional.empty(),
                random.any(Phase.class),
                random.any(Ahead.class)));
        List<StructureFeed> feeds = random.list(i -> new StructureFeed(
                new FeedId(random.name()),
                random.point(),
                new SurfaceId(random.name()),
                power(),
                on(circuits),
                random.any(Phase.class),
                random.any(Ahead.class)));
        List<Controller> controllers = random.list(i -> new Controller(
                new ControllerId(random.name()),
                random.point(),
                random.maybe(() -> new SurfaceId(random.name())),
                1 + i,
                power(),
                on(circuits),
                random.any(Phase.class),
                random.any(Ahead.class)));
        List<Conduit> conduits = random.list(i -> conduit());
        List<WireEndId> ends = new ArrayList<>();
        panels.forEach(one -> ends.add(one.id()));
        switches.forEach(one -> ends.add(one.id()));
        List<LoadId> loads = new ArrayList<>();
        outlets.forEach(one -> loads.add(one.id()));
        luminaires.forEach(one -> loads.add(one.id()));
        feeds.forEach(one -> loads.add(one.id()));
        controllers.forEach(one -> loads.add(one.id()));
        transformers.forEach(one -> loads.add(one.id()));
        ends.addAll(loads);
        List<PowerCable> powerCables = circuits.isEmpty() || ends.size() < 2
                ? List.of()
                : random.list(i -> powerCable(random.one(circuits).id(), ends, conduits));
        List<ValveCable> valveCables = controllers.isEmpty()
                        || water.manifolds().isEmpty()
                ? List.of()
                : random.list(i -> valveCable(random.one(controllers), random.one(water.manifolds()), conduits));
        return new PowerSystem(
                random.maybe(() -> random.any(CodeFamily.class)),
                panels,
                circuits,
                outlets,
                luminaires,
                switches,
                feeds,
                controllers,
                transformers,
                conduits,
                powerCables,
                valveCables);
    }

    private Panel panel() {
        return new Panel(
                new PanelId(random.name()),
                random.point(),
                voltage(),
                current(),
                Count.of(random.list(i -> i).size()),
                random.maybe(() -> new SurfaceId(random.name())),
                random.coin(),
                random.any(Phase.class));
    }

    private Circuit circuit(PanelId panel) {
        return new Circuit(
                new CircuitId(random.name()),
                panel,
                current(),
                voltage(),
                random.coin() ? 2 : 3,
                random.coin(),
                random.any(WiringMethod.class),
                random.any(Phase.class));
    }

    private List<Transformer> transformers(List<Outlet> outlets, List<Circuit> fromPanels) {
        return random.list(i -> {
            boolean plugged = !outlets.isEmpty() && random.coin();
            return new Transformer(
                    new TransformerId(random.name()),
                    random.point(),
                    random.maybe(() -> new SurfaceId(random.name())),
                    power(),
                    i == 0 ? List.of(voltage()) : List.of(new Voltage(12), new Voltage(15)),
                    plugged ? Optional.of(random.one(outlets).id()) : Optional.empty(),
                    plugged ? Optional.empty() : on(fromPanels),
                    random.any(Phase.class),
                    random.any(Ahead.class));
        });
    }

    private Circuit lowVoltage(int number, Transformer transformer) {
        return new Circuit(
                new CircuitId("low voltage " + number),
                transformer.id(),
                current(),
                random.one(transformer.taps()),
                2,
                random.coin(),
                random.any(WiringMethod.class),
                random.any(Phase.class));
    }

    private LampSupply lamp(Transformer transformer) {
        Voltage least = voltage();
        return new LampSupply(transformer.id(), least, least.times(1 + number()));
    }

    private double number() {
        return 1 + random.length().metres();
    }

    private Conduit conduit() {
        return new Conduit(
                new ConduitId(random.name()),
                random.route(),
                random.name(),
                random.maybe(random::name),
                random.coin(),
                random.list(i -> new WireGroup(random.name(), 1 + i)),
                random.any(Phase.class));
    }

    private PowerCable powerCable(CircuitId circuit, List<WireEndId> ends, List<Conduit> conduits) {
        WireEndId from = random.one(ends);
        List<WireEndId> others = ends.stream().filter(one -> !one.equals(from)).toList();
        return new PowerCable(
                new CableId(random.name()),
                circuit,
                from,
                random.one(others),
                random.route(),
                random.some(conduits).stream().map(Conduit::id).toList(),
                random.maybe(random::name),
                random.coin(),
                random.any(Phase.class));
    }

    private ValveCable valveCable(Controller from, Manifold to, List<Conduit> conduits) {
        return new ValveCable(
                new CableId(random.name()),
                from.id(),
                to.id(),
                random.route(),
                random.some(conduits).stream().map(Conduit::id).toList(),
                random.maybe(random::name),
                2 + random.list(i -> i).size(),
                random.coin(),
                random.any(Phase.class));
    }

    private Optional<CircuitId> on(List<Circuit> circuits) {
        return circuits.isEmpty()
                ? Optional.empty()
                : random.maybe(() -> random.one(circuits).id());
    }

    private Power power() {
        return new Power(random.length().metres());
    }

    private Current current() {
        return new Current(random.length().metres());
    }

    private Voltage voltage() {
        return new Voltage(random.length().metres());
    }
}
