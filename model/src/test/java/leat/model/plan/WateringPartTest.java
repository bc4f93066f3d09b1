package leat.model.plan;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bed;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.watering;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import leat.document.StandingData;
import leat.model.fault.LeatException;
import leat.model.id.SurfaceId;
import leat.model.water.GrowingPlace;
import leat.model.water.WateringHours;
import leat.model.water.WateringNeeds;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What may be said of watering, and what is refused. */
@Tag("law")
class WateringPartTest {

    private static void refused(String message, Executable said) {
        assertEquals(message, assertThrows(LeatException.class, said).getMessage());
    }

    @Test
    void whatIsSaidIsKept() {
        WateringNeeds needs = yard("Y")
                .with(
                        bed("herbs", rectangle(at(0, 0), feet(5), feet(5))),
                        watering()
                                .climate("sacramento-ca")
                                .days("Wed", "mon", "Friday")
                                .hours("22:00", "6:00")
                                .off("Dec", "January")
                                .density("herbs", GrowingPlace.Grade.LOW)
                                .microclimate("herbs", GrowingPlace.Grade.HIGH))
                .watering();
        assertEquals(Optional.of("sacramento-ca"), needs.station());
        assertEquals(List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY), List.copyOf(needs.days()));
        assertEquals("22:00 to 06:00", needs.hours().orElseThrow().toString());
        assertEquals(480, needs.hours().orElseThrow().lengthMinutes());
        assertEquals(List.of(Month.JANUARY, Month.DECEMBER), List.copyOf(needs.off()));
        assertEquals(
                new GrowingPlace(GrowingPlace.Grade.LOW, GrowingPlace.Grade.HIGH), needs.place(new SurfaceId("herbs")));
    }

    @Test
    void hoursThatMakeNoSenseAreRefused() {
        String allowed = "; it must be a time of the day such as 22:00";
        refused("watering hours: from is '22.00'" + allowed, () -> watering().hours("22.00", "06:00"));
        refused("watering hours: until is '24:30'" + allowed, () -> watering().hours("22:00", "24:30"));
        refused(
                "watering hours: from is 24:00; it must be 00:00 to 23:59",
                () -> watering().hours("24:00", "06:00"));
        refused(
                "watering hours: until is 06:00, when they begin; it must be another time; the whole day is 00:00 to 24:00",
                () -> watering().hours("06:00", "06:00"));
        assertEquals(WateringHours.WHOLE_DAY, WateringHours.of("0:00", "24:00"));
    }

    @Test
    void unknownNamesAreRefusedWithTheNearest() {
        refused(
                "watering: days is 'Mondy'; it must be one of Monday, Tuesday, Wednesday, Thursday, Friday, Saturday,"
                        + " Sunday, or its first three letters; perhaps 'Monday'",
                () -> watering().days("Mondy"));
        refused(
                "watering: surface is 'herb'; no surface has that name; perhaps 'herbs'",
                () -> yard("Y")
                        .with(
                                bed("herbs", rectangle(at(0, 0), feet(5), feet(5))),
                                watering().density("herb", GrowingPlace.Grade.LOW)));
        Yard yard = yard("Y").with(watering().climate("sacramento"));
        refused(
                "watering, climate station: key is 'sacramento'; it must be one of albuquerque-nm, greensboro-nc,"
                        + " melbourne-fl, new-york-central-park, sacramento-ca; perhaps 'sacramento-ca'",
                () -> StandingData.load(Yard.EDITION).siteOf(yard));
    }
}
