package leat.document;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.id.SurfaceId;
import leat.model.quantity.UnitSystem;
import leat.model.water.GrowingPlace;
import leat.model.water.WateringHours;
import leat.model.water.WateringNeeds;

/** The section {@code watering}: climate, days and hours by which the schedule is made. */
final class WateringSection {

    private final Places places;

    WateringSection(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(WateringNeeds needs, UnitSystem units) {
        FieldWriter out = new FieldWriter(units).text("station", needs.station());
        needs.climate().ifPresent(climate -> out.object("climate", ClimateFields.written(climate, units)));
        out.list("days", needs.days().stream().map(Words::of).toList());
        needs.hours()
                .ifPresent(hours -> out.object(
                        "hours",
                        new FieldWriter(units).text("from", hours.from()).text("until", hours.until())));
        return out.list("off", needs.off().stream().map(Words::of).toList())
                .list(
                        "places",
                        needs.places().entrySet().stream()
                                .map(one -> place(one.getKey(), one.getValue(), units))
                                .toList())
                .fields();
    }

    private static Map<String, Object> place(SurfaceId surface, GrowingPlace place, UnitSystem units) {
        return new FieldWriter(units)
                .id("surface", surface)
                .word("density", place.density(), GrowingPlace.Grade.AVERAGE)
                .word("microclimate", place.microclimate(), GrowingPlace.Grade.AVERAGE)
                .fields();
    }

    WateringNeeds read(Json json) {
        FieldReader in = FieldReader.of(
                json, "watering section", places, "station", "climate", "days", "hours", "off", "places");
        in.knownAs("watering");
        SortedSet<DayOfWeek> days = new TreeSet<>(in.words("days", DayOfWeek.class));
        SortedSet<Month> off = new TreeSet<>(in.words("off", Month.class));
        Optional<WateringHours> hours = in.optional("hours", this::hours);
        SortedMap<SurfaceId, GrowingPlace> growing = new TreeMap<>();
        in.list("places", one -> place(one, growing));
        return in.made(() -> new WateringNeeds(
                in.optionalText("station"),
                in.optional("climate", new ClimateFields(places)::read),
                days,
                hours,
                off,
                growing));
    }

    private WateringHours hours(Json json) {
        FieldReader in = FieldReader.of(json, "watering hours", places, "from", "until");
        return in.made(() -> WateringHours.of(in.text("from"), in.text("until")));
    }

    /** Puts it with the others; a surface that stands there twice is refused. */
    private SurfaceId place(Json json, SortedMap<SurfaceId, GrowingPlace> growing) {
        FieldReader in = FieldReader.of(json, "growing place", places, "surface", "density", "microclimate");
        SurfaceId surface = in.id("surface", SurfaceId::new);
        GrowingPlace place = new GrowingPlace(
                in.word("density", GrowingPlace.Grade.class, GrowingPlace.Grade.AVERAGE),
                in.word("microclimate", GrowingPlace.Grade.class, GrowingPlace.Grade.AVERAGE));
        if (growing.put(surface, place) != null) {
            throw in.spot("surface").fault(Words.quoted(surface.name()) + " stands there twice; each surface may once");
        }
        return surface;
    }
}
