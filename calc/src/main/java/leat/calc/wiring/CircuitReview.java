package leat.calc.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
import leat.model.quantity.Ratio;
import leat.model.quantity.Voltage;

/** Figures of one circuit, its cables and its loads, held against the rules. */
final class CircuitReview {

    private final ElectricalCode code;
    private final PowerSystem power;
    private final ConduitContents contents;
    private final Circuit circuit;
    private final CircuitTree tree;
    private final Drops drops;

    CircuitReview(ElectricalCode code, PowerSystem power, ConduitContents contents, Circuit circuit) {
        this.code = code;
        this.power = power;
        this.contents = contents;
        this.circuit = circuit;
        tree = new CircuitTree(power, circuit);
        drops = new Drops(code, tree, cable -> cable.conductor().map(code::conductor));
    }

    CircuitTree tree() {
        return tree;
    }

    Drops drops() {
        return drops;
    }

    CircuitFigures figures() {
        Current reckoned = LoadCurrents.reckoned(code, tree.loads(), circuit.voltage(), circuit.liveWires());
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
        return cable.conductor().map(size -> code.ampacity(code.conductor(size), contents.laying(cable, circuit)));
    }

    CableFigures figures(PowerCable cable) {
        Optional<ConductorSpec> conductor = cable.conductor().map(code::conductor);
        Optional<Current> current = drops.current(cable.id());
        Optional<Voltage> lost = conductor.flatMap(
                size -> current.map(amps -> code.drop(amps, cable.route().length(), circuit.liveWires(), size)
                        .value()));
        return new CableFigures(
                cable.id(),
                cable.route().length(),
                current,
                conductor.map(ConductorSpec::label),
                ampacity(cable).map(Answer::value),
                conductor.map(size -> contents.grounding(circuit, size).label()),
                lost);
    }

    LoadFigures figures(Load load) {
        Optional<Voltage> lost = drops.lost(load.id());
        return new LoadFigures(
                load.id(),
                circuit.id(),
                code.loadCurrent(load.power(), circuit.voltage(), circuit.liveWires())
                        .value(),
                lost,
                lost.map(this::share),
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
        tree.loads().forEach(load -> look(load, looks));
    }

    private void look(PowerCable cable, Looks looks) {
        if (cable.conductor().isEmpty()) {
            return;
        }
        ConductorSpec conductor = code.conductor(cable.conductor().get());
        Current most =
                code.mostBreaker(conductor, contents.laying(cable, circuit)).value();
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

    List<PowerCable> cables() {
        return new ArrayList<>(power.cablesOf(circuit.id()));
    }
}
