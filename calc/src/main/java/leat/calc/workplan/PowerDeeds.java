package leat.calc.workplan;

import java.util.List;
import java.util.Optional;
import leat.calc.workplan.StepGraph.Deed;
import leat.model.id.Id;
import leat.model.id.LaidId;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.Controller;
import leat.model.power.Load;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;
import leat.model.site.Phase;
import leat.model.water.Zone;

/** Deeds on conduits, cables and circuits. What carries power is looked at while it is open, and is dead until it is done. */
final class PowerDeeds {

    private final StepGraph graph;
    private final PhaseWorks works;
    private final GroundDeeds ground;
    private final PowerSystem power;

    PowerDeeds(StepGraph graph, PhaseWorks works, GroundDeeds ground) {
        this.graph = graph;
        this.works = works;
        this.ground = ground;
        this.power = works.yard.power();
    }

    void add() {
        power.conduits().stream()
                .filter(one -> isBuilt(one.existing(), one.phase()))
                .forEach(one -> lay(one.id(), carriesPower(one)));
        power.cables().filter(one -> isBuilt(one.existing(), one.phase())).forEach(this::addCable);
        power.circuits().forEach(this::addCircuit);
        power.valveCables().stream()
                .filter(one -> isBuilt(one.existing(), one.phase()))
                .forEach(this::addValveWires);
    }

    private boolean isBuilt(boolean existing, Phase phase) {
        return !existing && phase == works.phase;
    }

    /** A spare conduit may carry power one day, so it is looked at as well. */
    private boolean carriesPower(Conduit conduit) {
        List<Cable> cables = power.cablesIn(conduit.id());
        return cables.isEmpty() || cables.stream().anyMatch(power::isFromPanel);
    }

    private Deed lay(LaidId id, boolean isPower) {
        Deed lay = graph.add(isPower ? WorkKind.LAY_POWER : WorkKind.LAY_CONTROL, "", id);
        ground.laid(id, lay);
        if (isPower) {
            Deed seen = graph.add(WorkKind.INSPECT, "", id);
            graph.order(lay, seen);
            ground.proved(id, seen);
        }
        return lay;
    }

    private void addCable(Cable cable) {
        boolean isPower = power.isFromPanel(cable);
        if (cable.conduits().isEmpty()) {
            lay(cable.id(), isPower);
            return;
        }
        Deed pull = graph.add(WorkKind.PULL, "", cable.id());
        for (var conduit : cable.conduits()) {
            ground.laying(conduit).ifPresent(lay -> graph.order(lay, pull));
            ground.whenFilled(conduit, pull);
        }
    }

    /** Of those that feed something of this phase. */
    private void addCircuit(Circuit circuit) {
        List<Load> loads = power.loadsOf(circuit.id()).stream()
                .filter(load -> load.phase() == works.phase)
                .toList();
        if (loads.isEmpty()) {
            return;
        }
        if (!circuit.isLowVoltage()) {
            graph.add(WorkKind.PERMIT, "", circuit.id());
        }
        Deed connect = graph.add(WorkKind.CONNECT_POWER, circuit.id().name(), circuit.id());
        loads.forEach(load -> graph.add(WorkKind.CONNECT_POWER, circuit.id().name(), List.of(circuit.id(), load.id())));
        for (PowerCable cable : power.cablesOf(circuit.id())) {
            deedsOn(cable.id()).forEach(deed -> graph.order(deed, connect));
            cable.conduits().forEach(one -> deedsOn(one).forEach(deed -> graph.order(deed, connect)));
        }
        graph.order(connect, graph.add(WorkKind.LABEL, "", circuit.id()));
    }

    /** Laying, pulling and looking at one thing. */
    private List<Deed> deedsOn(Id id) {
        String key = id.kind() + " " + id.name();
        return List.of(WorkKind.LAY_POWER, WorkKind.LAY_CONTROL, WorkKind.PULL, WorkKind.INSPECT).stream()
                .flatMap(kind -> graph.of(kind).stream())
                .filter(deed -> deed.key().equals(key))
                .toList();
    }

    private void addValveWires(ValveCable cable) {
        Deed join = graph.add(WorkKind.CONNECT_VALVES, "", List.of(cable.id(), cable.to(), cable.from()));
        deedsOn(cable.id()).forEach(deed -> graph.order(deed, join));
        graph.of(WorkKind.VALVES).stream()
                .filter(build -> build.part().equals(cable.to().name()))
                .forEach(build -> graph.order(build, join));
        Optional<Deed> supply = power.controller(cable.from())
                .flatMap(Controller::circuit)
                .flatMap(circuit -> graph.of(WorkKind.CONNECT_POWER).stream()
                        .filter(connect -> connect.part().equals(circuit.name()))
                        .findFirst());
        for (Zone zone : works.yard.water().zones()) {
            boolean served = works.yard.water().manifolds().stream()
                    .anyMatch(manifold -> manifold.id().equals(cable.to())
                            && manifold.valves().stream()
                                    .anyMatch(valve -> valve.id().equals(zone.valve())));
            graph.of(WorkKind.TUNE).stream()
                    .filter(tune -> served && tune.part().equals(zone.id().name()))
                    .forEach(tune -> {
                        graph.order(join, tune);
                        supply.ifPresent(connect -> graph.order(connect, tune));
                    });
        }
    }
}
