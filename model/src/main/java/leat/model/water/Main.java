package leat.model.water;

import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.id.ValveId;

/**
 * The pipes that are always under pressure: the service line, the main, branches to bibs; existing and new.
 *
 * @param runs each fed by a source or another run of the main; kept with upstream runs first
 */
public record Main(List<PipeRun> runs) {

    public static final Main EMPTY = new Main(List.of());

    public Main {
        runs = PipeTree.downstream("main", Require.unique("pipe", runs, PipeRun::id));
        for (PipeRun run : runs) {
            if (run.from() instanceof ValveId) {
                throw new InvalidValueException(
                        "main, pipe " + run.id(), "from", "a valve", "a source or a pipe of the main");
            }
        }
    }
}
