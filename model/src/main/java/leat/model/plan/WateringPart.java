package leat.model.plan;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.Require;
import leat.model.id.SurfaceId;
import leat.model.water.Climate;
import leat.model.water.GrowingPlace;
import leat.model.water.WateringHours;
import leat.model.water.WateringNeeds;

/** By what the watering schedule is made: the climate, and when valves may open. */
public final class WateringPart extends Part {

    private static final int SHORT = 3;

    private final WateringNeeds needs;

    WateringPart(WateringNeeds needs) {
        this.needs = needs;
    }

    /** The climate of a station of the standing table, by its key. */
    public WateringPart climate(String station) {
        return new WateringPart(needs.withStation(station));
    }

    /** A climate of one's own. */
    public WateringPart climate(Climate climate) {
        return new WateringPart(needs.withClimate(climate));
    }

    /** Days on which valves may open, such as {@code Mon} or {@code Monday}; all if not said. */
    public WateringPart days(String... names) {
        SortedSet<DayOfWeek> days = new TreeSet<>();
        for (String name : Require.entries("watering", "days", Arrays.asList(names))) {
            days.add(named("days", name, DayOfWeek.values()));
        }
        return new WateringPart(needs.withDays(days));
    }

    /** Hours in which valves may be open; through midnight when the second is the earlier one. */
    public WateringPart hours(String from, String until) {
        return new WateringPart(needs.withHours(WateringHours.of(from, until)));
    }

    /** Months without watering, such as {@code Dec} or {@code December}. */
    public WateringPart off(String... names) {
        SortedSet<Month> months = new TreeSet<>();
        for (String name : Require.entries("watering", "off", Arrays.asList(names))) {
            months.add(named("off", name, Month.values()));
        }
        return new WateringPart(needs.withOff(months));
    }

    /** How densely a surface is planted: low when young or sparse, high in several layers. */
    public WateringPart density(String surface, GrowingPlace.Grade grade) {
        return place(surface, place -> place.withDensity(grade));
    }

    /** Low in shade and shelter, high beside paving and walls and in wind. */
    public WateringPart microclimate(String surface, GrowingPlace.Grade grade) {
        return place(surface, place -> place.withMicroclimate(grade));
    }

    private WateringPart place(String surface, UnaryOperator<GrowingPlace> change) {
        SurfaceId id = new SurfaceId(surface);
        SortedMap<SurfaceId, GrowingPlace> places = new TreeMap<>(needs.places());
        places.put(id, change.apply(needs.place(id)));
        return new WateringPart(needs.withPlaces(places));
    }

    /** The constant of that name, or of which these are the first three letters. */
    private static <E extends Enum<E>> E named(String field, String name, E[] all) {
        String wanted = name.toUpperCase(Locale.ROOT);
        List<String> names = Arrays.stream(all).map(one -> spoken(one)).toList();
        return Arrays.stream(all)
                .filter(one -> one.name().equals(wanted)
                        || one.name().substring(0, SHORT).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "watering",
                        field,
                        "'" + name + "'",
                        "one of " + String.join(", ", names) + ", or its first three letters"
                                + Nearest.hint(name, names)));
    }

    private static String spoken(Enum<?> constant) {
        return constant.name().charAt(0) + constant.name().substring(1).toLowerCase(Locale.ROOT);
    }

    @Override
    void addTo(YardDraft draft) {
        draft.watering(needs);
    }
}
