package leat.model.finding;

import java.util.List;
import leat.model.fault.Require;
import leat.model.quantity.Figure;

/**
 * One line of a ledger.
 *
 * @param text    what happens here, such as {@code friction in pipe zone-1/2}
 * @param formula how the value follows from the inputs, in the symbols of docs/theory
 * @param inputs  each with its name
 * @param value   what this step gives; losses are negative
 */
public record Step(String text, String formula, List<Input> inputs, Figure value, Citation citation) {

    public Step {
        Require.present("step", "text", text);
        Require.present("step", "formula", formula);
        Require.present("step", "value", value);
        Require.present("step", "citation", citation);
        inputs = Require.entries("step", "inputs", inputs);
    }

    /** A named figure that goes into a step. */
    public record Input(String name, Figure value) {}
}
