package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import leat.calc.assess.Assessment;
import leat.calc.phasing.EarlyEnd;
import leat.calc.workplan.WorkPlanResult;
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
        WorkPlanResult plan = assessment.workPlan();
        Section order = Section.of(Chapter.WORK, "order", "Order of digging, laying and testing")
                .say(WorkPlanTable.ABOUT)
                .table("This year", WorkPlanTable.of(plan, Phase.NOW, units))
                .table("Later", WorkPlanTable.of(plan, Phase.LATER, units))
                .file("work-plan.csv", WorkPlanTable.all(plan, units));
        sections.add(order);
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

    /** Each deed that is not for everyone, once. */
    private static Section others(Assessment assessment) {
        TreeSet<String> lines = new TreeSet<>();
        assessment
                .workPlan()
                .steps()
                .values()
                .forEach(steps -> steps.stream()
                        .filter(step -> step.kind().isForOthers())
                        .forEach(step -> lines.add(step.kind().worker().label() + ": "
                                + step.kind().label())));
        return Section.of(Chapter.WORK, "others", "What is left to licensed people and to local code")
                .points(List.copyOf(lines))
                .say(
                        lines.isEmpty()
                                ? ""
                                : "Which permits, devices, depths and inspections are asked for, local codes decide. "
                                        + Cautions.GENERAL);
    }
}
