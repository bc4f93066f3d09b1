package leat.calc.workplan;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Status;
import leat.model.site.Phase;

/**
 * The works, phase by phase.
 *
 * @param steps a phase in which nothing is built is not there
 */
public record WorkPlanResult(Status status, SortedMap<Phase, List<WorkStep>> steps) {

    public WorkPlanResult {
        SortedMap<Phase, List<WorkStep>> copy = new TreeMap<>();
        steps.forEach((phase, some) -> copy.put(phase, List.copyOf(some)));
        steps = Collections.unmodifiableSortedMap(copy);
    }

    public List<WorkStep> steps(Phase phase) {
        return steps.getOrDefault(phase, List.of());
    }
}
