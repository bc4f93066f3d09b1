package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import leat.calc.assess.Assessment;
import leat.calc.phasing.EarlyEnd;
import leat.calc.workplan.WorkStep;
import leat.calc.workplan.Worker;
import leat.model.plan.Yard;
import leat.model.quantity.Dimension;
import leat.model.quantity.UnitSystem;
import leat.model.site.Phase;

/** What is built when, in which order, and what is left to others. */
final class WorkSections {

    private WorkSections() {}

    static List<Section> of(Assessment assessment) {
        UnitSystem units = assessment.yard().units();
        List<Section> sections = new ArrayList<>();
        sections.add(phases(assessment.yard()).table("What ends early this year", ends(assessment, units)));
        Section order = Section.of(Chapter.WORK, "order", "Order of digging, laying and testing")
                .say("A step may begin when those in the last column are done. Nothing is covered before it was tested,"
                        + " looked at and measured.");
        for (Map.Entry<Phase, List<WorkStep>> phase :
                assessment.workPlan().steps().entrySet()) {
            order = order.table(phase.getKey() == Phase.NOW ? "This year" : "Later", steps(phase.getValue(), units));
        }
        sections.add(order.file("work-plan.csv", WorkPlanTable.all(assessment.workPlan(), units)));
        sections.add(others(assessment));
        return List.copyOf(sections);
    }

    static List<Section> of(Yard yard) {
        return List.of(phases(yard));
    }

    private static Section phases(Yard yard) {
        return Section.of(Chapter.WORK, "phases", "What comes later")
                .say("Everything else is built in this year's works. On the sheets, what comes later has dashed lines.")
                .table("Built in a later year", LaterTable.of(yard));
    }

    private static Table ends(Assessment assessment, UnitSystem units) {
        List<List<Cell>> rows = new ArrayList<>();
        for (EarlyEnd end : assessment.phasing().ends()) {
            rows.add(List.of(
                    Cell.text(Words.named(end.id())),
                    Cell.text(Words.named(end.waitsFor())),
                    Cell.text(end.kind().label()),
                    TapeWords.coordinate(end.at().east(), units),
                    TapeWords.coordinate(end.at().north(), units)));
        }
        return new Table(
                List.of(
                        "what ends",
                        "waits for",
                        "how it ends",
                        Table.head("east", Dimension.LENGTH, units),
                        Table.head("north", Dimension.LENGTH, units)),
                rows);
    }

    private static Table steps(List<WorkStep> steps, UnitSystem units) {
        List<List<Cell>> rows = new ArrayList<>();
        for (WorkStep step : steps) {
            rows.add(List.of(
                    Cell.figure(step.number(), units),
                    Cell.text(step.kind().label()),
                    Cell.text(step.part()),
                    Cell.text(Words.list(step.subjects())),
                    Cell.text(step.figure()
                            .map(figure -> Words.show(figure, units))
                            .orElse("")),
                    Cell.text(
                            step.kind().worker() == Worker.ANYONE
                                    ? ""
                                    : step.kind().worker().label()),
                    Cell.text(String.join(
                            ", ",
                            step.after().stream()
                                    .map(one -> Long.toString((long) one.value()))
                                    .toList()))));
        }
        return new Table(List.of("step", "what", "part", "of", "how much", "by", "after steps"), rows);
    }

    /** Each deed that is not for everyone, once. */
    private static Section others(Assessment assessment) {
        TreeSet<String> lines = new TreeSet<>();
        assessment.workPlan().steps().values().forEach(steps -> steps.stream()
                .filter(step -> step.kind().isForOthers())
                .forEach(step ->
                        lines.add(step.kind().worker().label() + ": " + step.kind().label())));
        return Section.of(Chapter.WORK, "others", "What is left to licensed people and to local code")
                .points(List.copyOf(lines))
                .say(lines.isEmpty() ? "" : "Which permits, devices, depths and inspections are asked for, local codes decide. " + Cautions.GENERAL);
    }
}
