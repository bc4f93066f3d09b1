package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.Id;
import leat.model.id.LoadId;
import leat.model.id.TransformerId;
import leat.model.id.WireEndId;
import leat.model.plan.Site;
import leat.model.power.Circuit;
import leat.model.power.Load;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.Transformer;
import leat.model.power.ValveCable;
import leat.model.quantity.Current;
import leat.model.quantity.Quantity;
import leat.model.quantity.Voltage;

/** Writes the ledgers of circuits, cables, loads and conduits, with the same kernels as the review. */
final class WiringLedger {

    private static final Citation SUM = new Citation("sum of the lines above", Standing.RECOMPUTED);

    private final PowerSystem power;
    private final ElectricalCode code;
    private final WiringFigures figures;
    private final Site site;

    WiringLedger(Site site) {
        this.site = site;
        power = site.yard().power();
        figures = new WiringFigures(site);
        code = figures.code();
    }

    Ledger why(Id id, String figure) {
        Optional<List<Step>> steps = Optional.empty();
        List<String> known = List.of();
        if (id instanceof CircuitId one && power.circuit(one).isPresent()) {
            known = List.of("current", "ampacity");
            steps = ofCircuit(power.circuit(one).get(), figure);
        } else if (id instanceof CableId one && power.cable(one).isPresent()) {
            known = List.of("current", "drop", "ampacity");
            steps = power.cable(one).get() instanceof PowerCable cable
                    ? ofCable(cable, figure)
                    : ofValves((ValveCable) power.cable(one).get(), figure);
        } else if (id instanceof LoadId one && power.load(one).isPresent()) {
            known = one instanceof TransformerId
                    ? List.of("current", "drop", "voltage", "load")
                    : List.of("current", "drop", "voltage");
            steps = ofLoad(power.load(one).get(), figure);
        } else if (id instanceof ConduitId one && power.conduit(one).isPresent()) {
            known = List.of("fill");
            steps = figure.equals("fill")
                    ? figures.fill(power.conduit(one).get()).map(Answer::steps)
                    : Optional.empty();
        }
        List<String> allowed = known;
        return steps.map(some -> new Ledger(Subject.of(id), figure, some))
                .orElseThrow(() -> refuse(id, figure, allowed));
    }

    private static InvalidValueException refuse(Id id, String figure, List<String> known) {
        String thing = id.kind() + " " + id.name();
        if (known.contains(figure)) {
            return new InvalidValueException(
                    thing, figure, "not known", "planned first, with its circuit and its sizes");
        }
        return new InvalidValueException(
                thing,
                "figure",
                "'" + figure + "'",
                known.isEmpty()
                        ? "asked of a circuit, a cable, a load or a conduit"
                        : "one of " + String.join(", ", known));
    }

    private Optional<List<Step>> ofCircuit(Circuit circuit, String figure) {
        CircuitReview review = figures.circuit(circuit.id());
        return switch (figure) {
            case "current" -> currents(review, circuit.supply());
            case "ampacity" -> review.weakest().flatMap(review::ampacity).map(Answer::steps);
            default -> Optional.empty();
        };
    }

    private Optional<List<Step>> ofCable(PowerCable cable, String figure) {
        CircuitReview review = figures.circuit(cable.circuit());
        Optional<WireEndId> end = end(review, cable);
        return switch (figure) {
            case "current" -> end.flatMap(one -> currents(review, one));
            case "ampacity" -> review.ampacity(cable).map(Answer::steps);
            case "drop" -> end.flatMap(one -> drop(review, cable, one));
            default -> Optional.empty();
        };
    }

    private static Optional<WireEndId> end(CircuitReview review, PowerCable cable) {
        return review.tree().order().stream()
                .filter(one -> review.tree().feeding(one).filter(cable::equals).isPresent())
                .findFirst();
    }

    /** Current of each load at or behind a thing, and their sum. */
    private Optional<List<Step>> currents(CircuitReview review, WireEndId end) {
        Optional<Current> sum = review.drops().current(end);
        List<Step> steps = new ArrayList<>();
        for (Load load : review.tree().loads()) {
            if (review.tree().reaches(load.id()) && review.tree().way(load.id()).contains(end)) {
                steps.addAll(named(review.drawn(load).steps(), load.id()));
            }
        }
        return sum.map(current -> {
            steps.add(new Step("current of all of them", "Σ I", List.of(), current, SUM));
            return steps;
        });
    }

    private static List<Step> named(List<Step> steps, Id of) {
        return steps.stream()
                .map(step -> new Step(
                        step.text() + ", " + of.kind() + " " + of.name(),
                        step.formula(),
                        step.inputs(),
                        step.value(),
                        step.citation()))
                .toList();
    }

    private Optional<List<Step>> drop(CircuitReview review, PowerCable cable, WireEndId end) {
        Optional<Current> current = review.drops().current(end);
        return current.flatMap(amps -> cable.conductor()
                .map(size -> review.drop(cable, amps, code.conductor(size)).steps()));
    }

    private Optional<List<Step>> ofValves(ValveCable cable, String figure) {
        return switch (figure) {
            case "current" ->
                Optional.of(List.of(Steps.read(
                        "current of a valve while it opens",
                        site.catalog().electrical().valveSupply().inrush(),
                        site.catalog().electrical().valveSupply().citation())));
            case "drop" -> figures.valveDrop(cable).map(Answer::steps);
            default -> Optional.empty();
        };
    }

    private Optional<List<Step>> ofLoad(Load load, String figure) {
        if (load instanceof Transformer transformer && figure.equals("load")) {
            return Optional.of(figures.transformers().load(transformer));
        }
        if (load.circuit().isEmpty()) {
            return Optional.empty();
        }
        CircuitReview review = figures.circuit(load.circuit().get());
        return switch (figure) {
            case "current" -> Optional.of(review.drawn(load).steps());
            case "drop" -> dropAt(review, load.id());
            case "voltage" -> voltageAt(review, load);
            default -> Optional.empty();
        };
    }

    /** The drop in each cable on the way, their sum, and its share of the voltage. */
    private Optional<List<Step>> dropAt(CircuitReview review, LoadId load) {
        return lostOn(review, load).map(steps -> {
            Voltage lost = (Voltage) steps.get(steps.size() - 1).value();
            steps.add(Steps.step(
                    "share of the voltage of the circuit",
                    "U / U₀",
                    review.share(lost),
                    Steps.OHM,
                    input("U", lost),
                    input("U₀", review.circuit().voltage())));
            return steps;
        });
    }

    /** The drop in each cable on the way, their sum, and what is left of the voltage of the circuit. */
    private Optional<List<Step>> voltageAt(CircuitReview review, Load load) {
        return lostOn(review, load.id()).map(steps -> {
            Voltage lost = (Voltage) steps.get(steps.size() - 1).value();
            Voltage start = review.circuit().voltage();
            Voltage left = start.minus(lost);
            steps.add(Steps.step(
                    "voltage that it gets", "U₀ − U", left, Steps.OHM, input("U₀", start), input("U", lost)));
            return steps;
        });
    }

    private Optional<List<Step>> lostOn(CircuitReview review, LoadId load) {
        Optional<Voltage> lost = review.drops().lost(load);
        if (lost.isEmpty()) {
            return Optional.empty();
        }
        List<Step> steps = new ArrayList<>();
        for (WireEndId end : review.tree().way(load)) {
            review.tree()
                    .feeding(end)
                    .flatMap(cable -> drop(review, cable, end).map(some -> named(some, cable.id())))
                    .ifPresent(steps::addAll);
        }
        steps.add(new Step("voltage lost on the whole way", "Σ U", List.of(), lost.get(), SUM));
        return Optional.of(steps);
    }

    private static Step.Input input(String name, Quantity value) {
        return new Step.Input(name, value);
    }
}
