package leat.document;

import static leat.model.plan.Parts.LOW;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bed;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.watering;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import java.util.stream.Stream;
import leat.model.fault.LeatException;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a person is told of a broken section on watering, word for word, with its place. */
@Tag("pinned")
class WateringDocumentTest {

    private static final String GOOD = YardDocument.write(yard("Y")
            .with(
                    bed("herbs", rectangle(at(0, 0), feet(5), feet(5))),
                    watering()
                            .climate(new Climate(
                                    "shed",
                                    Angle.degrees(50),
                                    Length.metres(100),
                                    Stream.of(Month.values())
                                            .map(month -> ClimateMonth.of(month, 5, 20))
                                            .toList()))
                            .days("Mon", "Thu")
                            .hours("22:00", "06:00")
                            .density("herbs", LOW)));

    private static void refused(String passage, String other, String message) {
        assertTrue(GOOD.contains(passage), GOOD);
        String text = GOOD.replace(passage, other);
        String found = assertThrows(LeatException.class, () -> YardDocument.readSite(text, "y.json"))
                .getMessage();
        assertEquals(message, String.valueOf(found).replaceAll("line \\d+, column \\d+", "here"));
    }

    @Test
    void aClimateWithGaps() {
        refused(
                "{\"month\": \"april\", \"lowC\": 5, \"highC\": 20},",
                "",
                "y.json, here (/watering/climate/months): climate of shed: months is without April; it must be all twelve months");
        refused(
                "\"april\"",
                "\"may\"",
                "y.json, here (/watering/climate/months): climate of shed: months is May twice; it must be each month once");
        refused(
                "{\"month\": \"april\", \"lowC\": 5, \"highC\": 20}",
                "{\"month\": \"april\", \"lowC\": 5}",
                "y.json, here (/watering/climate/months/3): the climate month lacks the field 'highC'; it must be given");
        refused(
                "{\"month\": \"april\", \"lowC\": 5,",
                "{\"month\": \"april\", \"lowC\": 25,",
                "y.json, here (/watering/climate/months/3/highC): climate of April: highC is 20.0; it must be at least the low, 25.0,"
                        + " and at most 60 °C");
    }

    @Test
    void daysHoursAndPlaces() {
        refused(
                "\"thursday\"",
                "\"thrusday\"",
                "y.json, here (/watering/days/1): 'thrusday' cannot stand here; it must be one of monday, tuesday, wednesday,"
                        + " thursday, friday, saturday, sunday; perhaps 'thursday'");
        refused("\"thursday\"", "\"monday\"", "y.json, here (/watering/days/1): 'monday' stands there twice");
        refused(
                "\"until\": \"06:00\"",
                "\"until\": \"22:00\"",
                "y.json, here (/watering/hours/until): watering hours: until is 22:00, when they begin; it must be another time; the"
                        + " whole day is 00:00 to 24:00");
        refused(
                "\"surface\": \"herbs\"",
                "\"surface\": \"herb\"",
                "y.json, here (/watering/places/0/surface): watering: places is 'herb', which is not there; it must be surfaces of the yard;"
                        + " perhaps 'herbs'");
    }
}
