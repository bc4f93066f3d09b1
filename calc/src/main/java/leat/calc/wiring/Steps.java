package leat.calc.wiring;

import java.util.List;
import leat.model.catalog.ConductorSpec;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Quantity;
import leat.model.quantity.Resistance;
import leat.model.quantity.Voltage;

/** Makes the steps of answers. */
final class Steps {

    static final Citation OHM = new Citation("Ohm's law", Standing.PUBLISHED);

    private Steps() {}

    /** A figure read from a table. */
    static Step read(String text, Quantity value, Citation citation) {
        return new Step(text, "from the table", List.of(), value, citation);
    }

    static Step step(String text, String formula, Quantity value, Citation citation, Step.Input... inputs) {
        return new Step(text, formula, List.of(inputs), value, citation);
    }

    /** Ohm's law over a way whose resistance is known. */
    static Answer<Voltage> drop(Current current, Answer<Resistance> loop) {
        Voltage drop = new Voltage(current.si() * loop.value().si());
        return loop.then(
                drop, step("voltage drop", "U = I · R", drop, OHM, input("I", current), input("R", loop.value())));
    }

    static Step.Input input(String name, Quantity value) {
        return new Step.Input(name, value);
    }

    static Step.Input input(String name, int count) {
        return new Step.Input(name, Count.of(count));
    }

    /** A choice of conductor; its figure is the area of the metal. */
    static Step chosen(String why, ConductorSpec conductor, Citation citation) {
        return read(why + ": " + conductor.label(), conductor.metal().area(), citation);
    }
}
