package leat.report;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.watering;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.document.StandingData;
import leat.model.plan.WateringPart;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The watering schedule in the report of a lawn with a spray in each corner. */
@Tag("law")
class WateringPagesTest {

    private static Assessment assessed(WateringPart watering) {
        Yard yard = yard("Plot")
                .units(METRIC)
                .with(
                        lawn("lawn", rectangle(at(0, 0), metres(4), metres(4)))
                                .soil("silt loam")
                                .planting("fescue"),
                        manifold("box", at(-1, 0)).valves("V1").device("valve-1"),
                        spray("S1", at(0, 0)).family("spray-4_6").arc(0, 90).radius(metres(4)),
                        spray("S2", at(0, 4)).family("spray-4_6").arc(90, 90).radius(metres(4)),
                        spray("S3", at(4, 4)).family("spray-4_6").arc(180, 90).radius(metres(4)),
                        spray("S4", at(4, 0)).family("spray-4_6").arc(270, 90).radius(metres(4)),
                        zone("all").valve("V1").heads("S1", "S2", "S3", "S4"),
                        watering);
        return Assessor.run(StandingData.load(Yard.EDITION).siteOf(yard), Progress.NONE);
    }

    private static WateringPart night() {
        return watering().climate("sacramento-ca").hours("23:30", "06:00").off("Dec");
    }

    private static WateringPages pages(UnitSystem units) {
        return new WateringPages(assessed(night()).schedule(), units);
    }

    @Test
    void withoutClimateThereAreNoFiles() {
        SortedMap<String, byte[]> files = Report.files(assessed(watering().off("Dec")));
        assertFalse(files.containsKey("watering.csv"));
    }

    @Test
    void filesHaveTheFiguresOfTheSchedule() {
        Assessment assessment = assessed(night());
        SortedMap<String, byte[]> files = Report.files(assessment);
        assertTrue(
                files.keySet().containsAll(List.of("watering.csv", "watering-calendar.csv", "watering-peak-week.csv")));
        String needs = new String(files.get("watering.csv"), StandardCharsets.UTF_8);
        assertEquals(13, needs.lines().count());
        assertTrue(needs.contains("all,lawn,turf-cool,July,7.66,0.95,7.27,0.00,7.27,"), needs);
    }

    @Test
    void theCalendarHasARowForEachMonth() {
        Table calendar = pages(UnitSystem.METRIC).calendar();
        assertEquals(12, calendar.rows().size());
        assertEquals("off", calendar.rows().get(11).get(1).text());
        assertTrue(calendar.rows().get(6).get(1).text().matches("(\\w{3} ?)+: (\\d × )?\\d+ min(, soak \\d+ min)?"));
        assertEquals(List.of("month", "all", "all zones in a week, min", "water of the month, L"), calendar.columns());
        assertEquals(
                "water of the month, gal",
                pages(UnitSystem.US).calendar().columns().get(3));
    }

    @Test
    void runsPastMidnightStandUnderTheDayOnWhichTheyAre() {
        Table week = pages(UnitSystem.METRIC).peakWeek();
        List<Cell> first = week.rows().get(0);
        assertEquals("23:30", first.get(1).text());
        List<Cell> last = week.rows().get(week.rows().size() - 1);
        assertTrue(
                last.get(1).text().compareTo("06:00") < 0 || last.get(1).text().startsWith("23"));
        assertTrue(
                pages(UnitSystem.US).summary().startsWith("The week that asks for most is one without rain in July:"));
    }
}
