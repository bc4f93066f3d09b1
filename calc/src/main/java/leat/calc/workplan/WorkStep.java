package leat.calc.workplan;

import java.util.List;
import java.util.Optional;
import leat.model.fault.Require;
import leat.model.id.Id;
import leat.model.quantity.Count;
import leat.model.quantity.Quantity;

/**
 * One step of the works.
 *
 * @param number   from 1, in the order in which steps are taken
 * @param part     which part of the plan, such as {@code laterals of box}; empty for all of it
 * @param subjects what it is done to
 * @param after    numbers of the steps that must be done before, nearest causes only
 * @param figure   that goes with it: length to dig, volume to fill, working days to wait; empty for most
 */
public record WorkStep(
        Count number, WorkKind kind, String part, List<Id> subjects, List<Count> after, Optional<Quantity> figure) {

    public WorkStep {
        Require.present("step", "number", number);
        Require.present("step", "kind", kind);
        Require.present("step", "part", part);
        Require.present("step", "figure", figure);
        subjects = List.copyOf(subjects);
        after = List.copyOf(after);
    }
}
