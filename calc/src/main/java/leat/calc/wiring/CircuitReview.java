package leat.calc.wiring;

import java.util.Comparator;
import java.util.Optional;
import leat.model.catalog.ConductorSpec;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.power.Circuit;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.StructureFeed;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Power;
import leat.model.quantity.Ratio;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/** Figures of one circuit, its cables and its loads, held against the rules. */
final class CircuitReview {

    private final ElectricalCode code;
    private final PowerSystem power;
    private final ConduitContents contents;
    private final Circuit circuit;
    private final CircuitTree tree;
    private final Drops drops;
    private final CircuitWires wires;

    CircuitReview(ElectricalCode code, PowerSystem power, ConduitContents contents, Circuit circuit) {
        this.code = code;
        this.power = power;
        this.contents = contents;
        this.circuit = circuit;
        tree = new CircuitTree(power, circuit);
        drops = new Drops(code, tree, this::size);
        wires = new CircuitWires(code, circuit);
    }

    private Optional<ConductorSpec> size(PowerCable cable) {
        return cable.conductor().map(code::conductor);
    }

    CircuitTree tree() {
        return tree;
    }

    Drops drops() {
        return drops;
    }

    CircuitFigures figures() {
        Current reckoned = circuit.isLowVoltage()
                ? drops.current(circuit.supply()).orElse(Current.ZERO)
                : LoadCurrents.reckoned(code, tree.loads(), circuit.voltage(), circuit.liveWires());
        Optional<Current> ampacity = weakest().flatMap(this::ampacity).map(Answer::value);
        return new CircuitFigures(
                circuit.id(),
                LoadCurrents.total(tree.loads()),
                drops.current(circuit.supply()).orElse(Current.ZERO),
                reckoned,
                circuit.breaker(),
                Ratio.of(reckoned.si() / circuit.breaker().si()),
                ampacity,
                Count.of(tree.loads().size()));
    }

    /** The cable with the least ampacity of those that have a conductor. */
    Optional<PowerCable> weakest() {
        return power.cablesOf(circuit.id()).stream()
                .filter(cable -> cable.conductor().isPresent())
                .min(Comparator.comparing(
                        cable -> ampacity(cable).map(Answer::value).orElse(Current.ZERO)));
    }

    Optional<Answer<Current>> ampacity(PowerCable cable) {
        return size(cable).map(size -> wires.ampacity(size, contents.laying(cable, circuit)));
    }

    CableFigures figures(PowerCable cable) {
        Optional<ConductorSpec> conductor = size(cable);
        Optional<Current> current = drops.current(cable.id());
        Optional<Voltage> lost = conductor.flatMap(
                size -> current.map(amps -> drop(cable, amps, size).value()));
        return new CableFigures(
                cable.id(),
                cable.route().length(),
                current,
                conductor.map(ConductorSpec::label),
                ampacity(cable).map(Answer::value),
                conductor
                        .filter(size -> !circuit.isLowVoltage())
                        .map(size -> contents.grounding(circuit, size).label()),
                lost);
    }

    Answer<Voltage> drop(PowerCable cable, Current current, ConductorSpec size) {
        return wires.drop(current, cable.route().length(), size);
    }

    /** What a load draws: behind a transformer, at the voltage that it gets. */
    Answer<Current> drawn(Load load) {
        Optional<Voltage> voltage = circuit.isLowVoltage() ? voltage(load) : Optional.empty();
        if (voltage.isEmpty()) {
            return code.loadCurrent(load.power(), circuit.voltage(), circuit.liveWires());
        }
        Current drawn = drops.drawn(load.id()).orElse(Current.ZERO);
        return Answer.of(
                drawn,
                Steps.step(
                        "current of the lamp, at the voltage that it gets",
                        "I = P / U",
                        drawn,
                        Steps.OHM,
                        Steps.input("P", load.power()),
                        Steps.input("U", voltage.get())));
    }

    /** At a load while all is on; empty if no way of known conductors leads there. */
    Optional<Voltage> voltage(Load load) {
        return drops.lost(load.id()).map(circuit.voltage()::minus);
    }

    /** At a load of now while nothing of later is on; empty if no way of known conductors leads there. */
    Optional<Voltage> voltageNow(Load load) {
        if (load.phase() == Phase.LATER) {
            return voltage(load);
        }
        return new Drops(code, tree, this::size, one -> one.phase() == Phase.NOW)
                .lost(load.id())
                .map(circuit.voltage()::minus);
    }

    /** What the circuit takes from its supply: what it feeds, and what its cables lose. */
    Power taken() {
        Current current = drops.current(circuit.supply()).orElse(Current.ZERO);
        return new Power(current.si() * circuit.voltage().si());
    }

    LoadFigures figures(Load load) {
        Optional<Voltage> lost = drops.lost(load.id());
        return new LoadFigures(
                load.id(),
                circuit.id(),
                drawn(load).value(),
                lost,
                lost.map(this::share),
                voltage(load),
                isGuarded(load));
    }

    Ratio share(Voltage lost) {
        return Ratio.of(lost.si() / circuit.voltage().si());
    }

    private boolean isGuarded(Load load) {
        return circuit.groundFault() || load instanceof Outlet outlet && outlet.groundFault();
    }

    void look(Looks looks) {
        CircuitFigures all = figures();
        looks.hold(
                code.loadLimit(),
                Subject.of(circuit.id()),
                all.loaded(),
                "put fewer loads on it, or choose a greater breaker and thicker conductors");
        power.cablesOf(circuit.id()).forEach(cable -> look(cable, looks));
        if (circuit.isLowVoltage()) {
            new LampReview(code, this, looks).look();
        } else {
            tree.loads().forEach(load -> look(load, looks));
        }
    }

    private void look(PowerCable cable, Looks looks) {
        if (cable.conductor().isEmpty()) {
            return;
        }
        ConductorSpec conductor = code.conductor(cable.conductor().get());
        Current most =
                wires.mostBreaker(conductor, contents.laying(cable, circuit)).value();
        Current ampacity = ampacity(cable).map(Answer::value).orElse(circuit.breaker());
        looks.hold(
                looks.rule("power.ampacity"),
                Subject.of(cable.id(), "conductor"),
                ampacity,
                "choose conductors of a size for circuits");
        double allowedA = most.si() > 0 ? most.si() : ampacity.si();
        if (allowedA == 0) {
            return;
        }
        looks.hold(
                code.breakerLimit(),
                Subject.of(cable.id(), "conductor"),
                Ratio.of(circuit.breaker().si() / allowedA),
                "choose thicker conductors or a smaller breaker");
    }

    private void look(Load load, Looks looks) {
        boolean lighting = load instanceof Luminaire;
        Optional<Ratio> drop = drops.lost(load.id()).map(this::share);
        drop.ifPresent(share -> looks.hold(
                code.dropLimit(WireSizes.span(load), lighting),
                Subject.of(load.id(), "drop"),
                share,
                "choose thicker conductors, or a shorter way"));
        Optional<Rule> guard = code.groundFault(load, circuit.voltage(), circuit.breaker());
        if (guard.isPresent() && !isGuarded(load)) {
            looks.note(
                    guard.get(),
                    Subject.of(load.id(), "groundFault"),
                    "protect its circuit at the panel, or take an outlet that protects itself");
        }
    }

    /** The feed of the structure in which the panel of this circuit stands. */
    Optional<StructureFeed> feedBefore() {
        return power.supplyOf(circuit)
                .inside()
                .filter(inside -> !circuit.isLowVoltage())
                .flatMap(inside -> power.feeds().stream()
                        .filter(feed -> feed.structure().equals(inside))
                        .filter(feed -> feed.circuit()
                                .filter(id -> !id.equals(circuit.id()))
                                .isPresent())
                        .findFirst());
    }

    /** Feeder and branch circuit together, as shares of their own voltages. */
    void lookAtTotal(Ratio feeder, Looks looks) {
        for (Load load : tree.loads()) {
            boolean lighting = load instanceof Luminaire;
            drops.lost(load.id())
                    .map(this::share)
                    .ifPresent(share -> looks.hold(
                            code.dropLimit(DropSpan.TOTAL, lighting),
                            Subject.of(load.id(), "drop"),
                            Ratio.of(feeder.value() + share.value()),
                            "choose thicker conductors for the feeder or the branch circuit"));
        }
    }

    Circuit circuit() {
        return circuit;
    }
}
