package leat.report;

import java.util.List;
import leat.calc.coverage.CoverageResult;
import leat.model.plan.Yard;

/** The schedules of valves, heads, pipes and bibs. */
final class WaterSections {

    private WaterSections() {}

    static List<Section> of(Yard yard, CoverageResult coverage, ReportFigures figures) {
        Schedules schedules = new Schedules(yard, figures);
        return List.of(
                Section.of(Chapter.WATER, "surfaces", "Coverage of lawns and beds")
                        .say("A lawn wants each spot within reach of two heads, a bed of one. Evenness is the mean of"
                                + " the driest quarter over the mean of all (low quarter), and Christiansen's"
                                + " coefficient.")
                        .table("", CoverageTable.of(coverage, yard.units())),
                Section.of(Chapter.WATER, "valves", "Valve schedule").table("", schedules.valves()),
                Section.of(Chapter.WATER, "heads", "Head schedule")
                        .say("Places are from the yard's datum. An arc runs clockwise from the bearing where it"
                                + " begins.")
                        .table("", schedules.heads())
                        .file("heads.csv", Csv.write(schedules.heads())),
                Section.of(Chapter.WATER, "pipes", "Pipe schedule")
                        .table("", schedules.pipes())
                        .file("pipes.csv", Csv.write(schedules.pipes())),
                Section.of(Chapter.WATER, "bibs", "Hose bib schedule").table("", schedules.bibs()));
    }
}
