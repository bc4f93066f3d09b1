package leat.report;

import java.util.List;
import java.util.stream.Stream;
import leat.calc.assess.Assessment;
import leat.calc.coverage.CoverageResult;
import leat.model.plan.Yard;

/** All sections of the page, chapter by chapter. Whoever writes a section registers it here. */
final class Sections {

    private Sections() {}

    /** Those that need an assessment, or what is left of them without one. */
    static List<Section> of(Assessment assessment) {
        Yard yard = assessment.yard();
        ReportFigures figures = AssessedFigures.of(assessment);
        return sorted(Stream.of(
                water(yard, assessment.coverage(), figures).stream(),
                power(yard, figures).stream(),
                ground(yard, figures).stream(),
                watering(new WateringPages(assessment.schedule(), yard.units())).stream()));
    }

    /** Those that show what the yard itself says. */
    static List<Section> of(Yard yard, CoverageResult coverage, ReportFigures figures) {
        return sorted(Stream.of(
                water(yard, coverage, figures).stream(),
                power(yard, figures).stream(),
                ground(yard, figures).stream()));
    }

    private static List<Section> sorted(Stream<Stream<Section>> parts) {
        // The sort is stable: within a chapter the order of registering counts.
        return parts.flatMap(part -> part)
                .sorted((a, b) -> a.chapter().compareTo(b.chapter()))
                .toList();
    }

    private static List<Section> water(Yard yard, CoverageResult coverage, ReportFigures figures) {
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

    private static List<Section> power(Yard yard, ReportFigures figures) {
        PowerSchedules schedules = new PowerSchedules(yard, figures);
        return List.of(
                Section.of(Chapter.POWER, "circuits", "Circuit schedule")
                        .say("Load is what the plan reckons with when all that a circuit feeds is turned on. A licensed"
                                + " electrician checks and connects every circuit.")
                        .table("Panels", schedules.panels())
                        .table("Circuits", schedules.circuits())
                        .file("circuits.csv", schedules.circuits()),
                Section.of(Chapter.POWER, "loads", "Outlets, lights, feeds and controllers")
                        .table("", schedules.loads()),
                Section.of(Chapter.POWER, "cables", "Cable schedule")
                        .say("Lengths are those of the routes on the plan, without what is needed for connecting.")
                        .table("", schedules.cables())
                        .file("cables.csv", schedules.cables()),
                Section.of(Chapter.POWER, "conduits", "Conduit schedule")
                        .say("Power and control never share a conduit.")
                        .table("", schedules.conduits())
                        .file("conduits.csv", schedules.conduits()));
    }

    private static List<Section> ground(Yard yard, ReportFigures figures) {
        Table trenches = new Schedules(yard, figures).trenches();
        return List.of(Section.of(Chapter.GROUND, "trench-list", "Trench list")
                .say("Depth is from finished grade to the bottom.")
                .table("", trenches)
                .file("trenches.csv", trenches));
    }

    private static List<Section> watering(WateringPages pages) {
        if (pages.files().isEmpty()) {
            return List.of(Section.of(Chapter.WATERING, "watering", "Watering calendar")
                    .missing("Not computed: the yard states no climate. The words watering().climate(…) add it."));
        }
        Section calendar = Section.of(Chapter.WATERING, "watering", "Watering calendar")
                .say(
                        "Set the controller month by month: days, cycles, minutes. A year of average weather is assumed; look"
                                + " at soil and plants, and at what local rules allow.")
                .say(pages.summary())
                .table("", pages.calendar());
        for (var file : pages.files().entrySet()) {
            calendar = calendar.file(file.getKey(), file.getValue());
        }
        return List.of(
                calendar,
                Section.of(Chapter.WATERING, "peak-week", "Valve by valve in the week that asks for most")
                        .table("", pages.peakWeek()),
                Section.of(Chapter.WATERING, "water-needs", "How the run times come about")
                        .say("From the use of the planting to minutes; depths a day are averages of the month.")
                        .table("", pages.needs()));
    }
}
