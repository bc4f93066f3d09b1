package leat.calc.wiring;

import static leat.calc.wiring.Steps.input;
import static leat.calc.wiring.Steps.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.catalog.ConductorSpec;
import leat.model.finding.Citation;
import leat.model.finding.Rule;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.power.Circuit;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.PowerCable;
import leat.model.power.ValveCable;
import leat.model.quantity.Current;
import leat.model.quantity.Power;
import leat.model.quantity.Voltage;

/** Steps that tell what a circuit carries, and why its conductors are as thick as they are. */
final class CircuitSteps {

    private static final Citation SUM = new Citation("sum of the lines above", Standing.RECOMPUTED);

    private CircuitSteps() {}

    static List<Step> load(CircuitReview review) {
        List<Step> steps = new ArrayList<>();
        for (Load load : review.tree().loads()) {
            steps.add(step(
                    load.id().kind() + " " + load.id().name(),
                    "as stated, or what such a thing is reckoned with",
                    load.power(),
                    Citation.OF_THE_YARD));
        }
        steps.add(step("load of the circuit", "Σ P", review.figures().load(), SUM));
        return steps;
    }

    /** What lasts for hours, and what does not, each as one current. */
    static List<Step> reckoned(ElectricalCode code, CircuitReview review) {
        Circuit circuit = review.tree().circuit();
        List<Step> steps = new ArrayList<>();
        Rule factor = code.continuousFactor();
        Current lasting =
                current(code, circuit, LoadCurrents.lasting(review.tree().loads()), "what lasts for hours", steps);
        Current other = current(
                code, circuit, LoadCurrents.passing(review.tree().loads()), "what is plugged in for a while", steps);
        steps.add(step(
                "current that the breaker is held for",
                "factor · lasting + other",
                review.figures().reckoned(),
                factor.citation(),
                input("factor", factor.limit()),
                input("lasting", lasting),
                input("other", other)));
        return steps;
    }

    private static Current current(
            ElectricalCode code, Circuit circuit, List<? extends Load> loads, String what, List<Step> steps) {
        Power power = LoadCurrents.total(loads);
        Answer<Current> current = code.loadCurrent(power, circuit.voltage(), circuit.liveWires());
        current.steps()
                .forEach(one -> steps.add(
                        new Step(one.text() + ", " + what, one.formula(), one.inputs(), one.value(), one.citation())));
        return current.value();
    }

    /** The drop with the size that the valve wires have, and the limit that it must keep. */
    static List<Step> valveConductor(ElectricalCode code, ValveCable cable, Answer<Voltage> lost) {
        ConductorSpec has = code.conductor(cable.conductor().orElseThrow());
        Rule most = code.controlDropLimit();
        List<Step> steps = new ArrayList<>(lost.steps());
        steps.add(step(
                "section of the metal of " + has.label(),
                "the finest that valve cables are made with and that keeps the drop by rule " + most.id()
                        + ", or as stated",
                has.metal().area(),
                most.citation(),
                input("drop", lost.value()),
                input("limit", most.limit())));
        return steps;
    }

    /** The finest that the breaker allows, the limit of the drop, and the size that the cable has. */
    static Optional<List<Step>> conductor(
            ElectricalCode code, CircuitReview review, PowerCable cable, ConduitContents contents) {
        Circuit circuit = review.tree().circuit();
        if (cable.conductor().isEmpty()) {
            return Optional.empty();
        }
        ConductorSpec has = code.conductor(cable.conductor().get());
        List<Step> steps = new ArrayList<>();
        code.conductorFor(circuit.breaker(), contents.laying(cable, circuit))
                .ifPresent(finest -> steps.addAll(finest.steps()));
        for (Load load : review.tree().loads()) {
            review.drops().lost(load.id()).ifPresent(lost -> {
                Rule most = code.dropLimit(WireSizes.span(load), load instanceof Luminaire);
                steps.add(step(
                        "voltage drop at " + load.id().kind() + " " + load.id().name() + " with the size that it has",
                        "U / U₀, limit by rule " + most.id(),
                        review.share(lost),
                        most.citation(),
                        input("U", lost),
                        input("U₀", circuit.voltage()),
                        input("limit", most.limit())));
            });
        }
        steps.add(step(
                "section of the metal of " + has.label(),
                "the finest size for all cables of the circuit that the breaker allows and that keeps the drops, or as stated",
                has.metal().area(),
                new Citation("the plan", Standing.RECOMPUTED),
                input("breaker", circuit.breaker())));
        return Optional.of(steps);
    }
}
