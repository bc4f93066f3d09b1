package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Step;
import leat.model.finding.Subject;

/**
 * What an electrical code answers, and how it comes to it.
 *
 * @param steps at least one; the last one gives the value, or the figure that led to it
 */
public record Answer<T>(T value, List<Step> steps) {

    public Answer {
        Require.present("answer", "value", value);
        steps = Require.entries("answer", "steps", steps);
        if (steps.isEmpty()) {
            throw new InvalidValueException("answer", "steps", "none", "at least one");
        }
    }

    static <T> Answer<T> of(T value, Step step) {
        return new Answer<>(value, List.of(step));
    }

    /** What follows from this in one more step. */
    <U> Answer<U> then(U next, Step step) {
        List<Step> all = new ArrayList<>(steps);
        all.add(step);
        return new Answer<>(next, all);
    }

    /** The same steps under another value. */
    <U> Answer<U> as(Function<T, U> change) {
        return new Answer<>(change.apply(value), steps);
    }

    /** Source of the last step. */
    public Citation citation() {
        return steps.get(steps.size() - 1).citation();
    }

    /** The steps as the way to a figure of some thing. */
    public Ledger ledger(Subject subject, String figure) {
        return new Ledger(subject, figure, steps);
    }
}
