package leat.report;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.calc.coverage.CoverageResult;
import leat.document.FindingsDocument;
import leat.draw.SvgWriter;
import leat.model.plan.Yard;

/** Turns a plan and its results into files. Writes nothing to a disk; the same input gives the same bytes. */
public final class Report {

    private Report() {}

    /**
     * All files of the report on a yard that was assessed: those of {@link #files(Yard, CoverageResult, ReportFigures)}
     * and those that only calculations can tell, such as {@code watering.csv} where a climate is stated.
     */
    public static SortedMap<String, byte[]> files(Assessment assessment) {
        return files(
                assessment.yard(), AssessedFigures.of(assessment), SheetList.of(assessment), Sections.of(assessment));
    }

    /**
     * All files of the report by name: {@code report.html}, which holds everything; the sheets, such as {@code
     * plan.svg}; the tables, such as {@code heads.csv}; and {@code findings.json}. What an assessment alone can tell is
     * left out.
     *
     * @param coverage of this yard
     * @param figures of this yard; what it leaves out stays open in the tables
     */
    public static SortedMap<String, byte[]> files(Yard yard, CoverageResult coverage, ReportFigures figures) {
        return files(yard, figures, SheetList.of(yard, coverage, figures), Sections.of(yard, coverage, figures));
    }

    private static SortedMap<String, byte[]> files(
            Yard yard, ReportFigures figures, List<Sheet> sheets, List<Section> sections) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        sheets.forEach(sheet -> files.put(sheet.file(), SvgWriter.file(sheet.drawing())));
        sections.forEach(section -> files.putAll(section.files()));
        files.put("report.html", new Page(yard, figures, sheets, sections).html());
        files.put(
                "findings.json", FindingsDocument.write(yard, figures.sorted()).getBytes(StandardCharsets.UTF_8));
        return Collections.unmodifiableSortedMap(files);
    }
}
