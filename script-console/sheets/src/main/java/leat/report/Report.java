package leat.report;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.calc.coverage.CoverageResult;
import leat.document.FindingsDocument;
import leat.draw.Drawing;
import leat.draw.SvgWriter;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;

/** Turns a plan and its results into files. Writes nothing to a disk; the same input gives the same bytes. */
public final class Report {

    private Report() {}

    /**
     * All files of the report on a yard that was assessed: those of {@link #files(Yard, CoverageResult, ReportFigures)},
     * {@code staking.csv} and {@code trenches.csv}, and, where a climate is stated, {@code watering.csv},
     * {@code watering-calendar.csv}, {@code watering-peak-week.csv}.
     */
    public static SortedMap<String, byte[]> files(Assessment assessment) {
        SortedMap<String, byte[]> files =
                new TreeMap<>(files(assessment.yard(), assessment.coverage(), AssessedFigures.of(assessment)));
        UnitSystem units = assessment.yard().units();
        files.put("staking.csv", Csv.write(StakingTable.stakes(assessment.staking(), units)));
        files.put("trenches.csv", Csv.write(DiggingTable.of(assessment.digging(), units)));
        files.putAll(new WateringPages(assessment.schedule(), units).files());
        return Collections.unmodifiableSortedMap(files);
    }

    /**
     * All files of the report by name: {@code report.html}, which holds everything; the sheets {@code plan.svg} and
     * {@code coverage.svg}; the tables {@code heads.csv} and {@code pipes.csv}; and {@code findings.json}.
     *
     * @param coverage of this yard
     * @param figures of this yard; what it leaves out stays open in the tables
     */
    public static SortedMap<String, byte[]> files(Yard yard, CoverageResult coverage, ReportFigures figures) {
        Drawing plan = PlanSheet.draw(yard, figures, new WaterPlan(yard), "1 of 2");
        Drawing map = PlanSheet.draw(yard, figures, new CoverageMap(yard, coverage), "2 of 2");
        List<Sheet> sheets = List.of(
                new Sheet(
                        "plan",
                        "Plan",
                        "Point at a symbol or a line for its figures. Printed at 100 % the sheet is to scale.",
                        plan),
                new Sheet("coverage", "Coverage map", "How evenly water falls while all heads run.", map));
        Schedules schedules = new Schedules(yard, figures);
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("plan.svg", SvgWriter.file(plan));
        files.put("coverage.svg", SvgWriter.file(map));
        files.put("report.html", new Page(yard, coverage, figures, sheets).html());
        files.put(
                "findings.json", FindingsDocument.write(yard, figures.sorted()).getBytes(StandardCharsets.UTF_8));
        files.put("heads.csv", Csv.write(schedules.heads()));
        files.put("pipes.csv", Csv.write(schedules.pipes()));
        return Collections.unmodifiableSortedMap(files);
    }
}
