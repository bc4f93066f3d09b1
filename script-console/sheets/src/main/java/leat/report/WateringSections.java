package leat.report;

import java.util.List;
import java.util.Map;
import leat.calc.assess.Assessment;

/** When to water and for how long. */
final class WateringSections {

    private WateringSections() {}

    static List<Section> of(Assessment assessment) {
        if (assessment.yard().water().zones().isEmpty()) {
            return List.of();
        }
        WateringPages pages =
                new WateringPages(assessment.schedule(), assessment.yard().units());
        Section calendar = Section.of(Chapter.WATERING, "watering", "Watering calendar");
        if (pages.files().isEmpty()) {
            return List.of(calendar.missing(
                    "Not computed: the yard states no climate. The words watering().climate(…) add it."));
        }
        calendar = calendar.say("Set the controller month by month: days, cycles, minutes. A year of average weather is"
                        + " assumed; look at soil and plants, and at what local rules allow.")
                .say(pages.summary())
                .table("", pages.calendar());
        for (Map.Entry<String, byte[]> file : pages.files().entrySet()) {
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
