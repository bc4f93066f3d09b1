package leat.calc.workplan;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.model.finding.Status;
import leat.model.plan.Site;
import leat.model.site.Phase;

/** The calculation that puts the works in order: what is dug, laid, tested, looked at and covered, one after the other. */
public final class WorkPlan {

    private WorkPlan() {}

    /** Steps for each phase in which something is built. */
    public static WorkPlanResult run(Site site, WorkPlanParameters parameters, Progress progress) {
        SortedMap<Phase, List<WorkStep>> steps = new TreeMap<>();
        for (Phase phase : Phase.values()) {
            progress.at((double) phase.ordinal() / Phase.values().length, "order of the works");
            List<WorkStep> some = steps(site, parameters, phase);
            if (!some.isEmpty()) {
                steps.put(phase, some);
            }
        }
        return new WorkPlanResult(Status.COMPLETE, steps);
    }

    private static List<WorkStep> steps(Site site, WorkPlanParameters parameters, Phase phase) {
        var works = new PhaseWorks(site, parameters, phase);
        var graph = new StepGraph();
        var ground = new GroundDeeds(graph, works);
        new WaterDeeds(graph, works, ground).add();
        new PowerDeeds(graph, works, ground).add();
        ground.add();
        return graph.steps(new StepFigures(site, parameters));
    }
}
