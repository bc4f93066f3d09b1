package leat.calc;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.id.PipeId;
import leat.model.plan.Aspect;
import leat.model.plan.Yard;
import leat.model.water.PipeRun;

/** Which pipes a stage has to leave where they are. */
public final class GivenPipes {

    private GivenPipes() {}

    /**
     * Pipes that exist, whose route is given or that a device is built into; and all that feed one of these, for they would
     * otherwise hang in the air.
     */
    public static SortedSet<PipeId> of(Yard yard) {
        SortedMap<PipeId, PipeRun> runs = new TreeMap<>();
        yard.water().pipes().forEach(run -> runs.put(run.id(), run));
        Deque<PipeId> waiting = new ArrayDeque<>();
        runs.values().stream()
                .filter(run -> run.existing() || !run.fitted().isEmpty() || !yard.isPlanned(run.id(), Aspect.ROUTE))
                .forEach(run -> waiting.add(run.id()));
        yard.water().backflows().forEach(backflow -> waiting.add(backflow.on()));
        SortedSet<PipeId> given = new TreeSet<>();
        while (!waiting.isEmpty()) {
            PipeId pipe = waiting.remove();
            PipeRun run = runs.get(pipe);
            if (run != null && given.add(pipe) && run.from() instanceof PipeId upstream) {
                waiting.add(upstream);
            }
        }
        return given;
    }
}
