package leat.report;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import leat.calc.assess.Assessment;
import leat.calc.coverage.CoverageResult;
import leat.model.plan.Yard;

/** All sections of the page, chapter by chapter. Whoever writes a section registers it here. */
final class Sections {

    private Sections() {}

    /** What the yard says and what was computed for it. */
    static List<Section> of(Assessment assessment) {
        ReportFigures figures = AssessedFigures.of(assessment);
        return sorted(Stream.of(
                WaterSections.of(assessment.yard(), assessment.coverage(), figures),
                PowerSections.of(assessment, figures),
                GroundSections.of(assessment),
                MoneySections.of(assessment),
                WateringSections.of(assessment),
                WorkSections.of(assessment)));
    }

    /** What the yard says by itself. */
    static List<Section> of(Yard yard, CoverageResult coverage, ReportFigures figures) {
        return sorted(Stream.of(
                WaterSections.of(yard, coverage, figures),
                PowerSections.of(yard, figures),
                GroundSections.of(yard, figures),
                WorkSections.of(yard)));
    }

    /** Within a chapter the order of registering counts, since the sort is stable. */
    private static List<Section> sorted(Stream<List<Section>> parts) {
        return parts.flatMap(List::stream)
                .sorted(Comparator.comparing(Section::chapter))
                .toList();
    }
}
