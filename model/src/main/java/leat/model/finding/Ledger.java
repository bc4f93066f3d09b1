package leat.model.finding;

import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Figure;

/**
 * How a figure came about, step by step.
 *
 * @param subject whose figure
 * @param figure  its name, such as {@code pressure}
 * @param steps   at least one; the last one gives the figure itself, to the last bit
 */
public record Ledger(Subject subject, String figure, List<Step> steps) {

    public Ledger {
        Require.present("ledger", "subject", subject);
        Require.name("ledger", "figure", figure);
        steps = Require.entries("ledger", "steps", steps);
        if (steps.isEmpty()) {
            throw new InvalidValueException("ledger", "steps", "none", "at least one");
        }
    }

    public Figure value() {
        return steps.get(steps.size() - 1).value();
    }
}
