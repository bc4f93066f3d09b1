package leat.model.water;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.id.SurfaceId;

/**
 * What the watering has to go by.
 *
 * @param station key of a climate station of the catalogue; empty when not said
 * @param climate of the user's own; empty when not said. Not both
 * @param days    of the week on which valves may open; empty for all
 * @param hours   in which they may; empty for the whole day
 * @param off     months without watering
 * @param places  surfaces whose plants use more or less than their kind does
 */
public record WateringNeeds(
        Optional<String> station,
        Optional<Climate> climate,
        SortedSet<DayOfWeek> days,
        Optional<WateringHours> hours,
        SortedSet<Month> off,
        SortedMap<SurfaceId, GrowingPlace> places) {

    public static final WateringNeeds NONE = new WateringNeeds(
            Optional.empty(),
            Optional.empty(),
            Collections.emptySortedSet(),
            Optional.empty(),
            Collections.emptySortedSet(),
            Collections.emptySortedMap());

    public WateringNeeds {
        Require.present("watering", "station", station);
        station.ifPresent(key -> Require.name("watering", "station", key));
        Require.present("watering", "climate", climate);
        if (station.isPresent() && climate.isPresent()) {
            throw new InvalidValueException(
                    "watering", "climate", "given beside the station " + station.get(), "one of the two");
        }
        Require.present("watering", "hours", hours);
        days = Collections.unmodifiableSortedSet(new TreeSet<>(Require.entries("watering", "days", days)));
        off = Collections.unmodifiableSortedSet(new TreeSet<>(Require.entries("watering", "off", off)));
        Require.present("watering", "places", places);
        places = Collections.unmodifiableSortedMap(new TreeMap<>(places));
    }

    public boolean mayRunOn(DayOfWeek day) {
        return days.isEmpty() || days.contains(day);
    }

    public GrowingPlace place(SurfaceId surface) {
        return places.getOrDefault(surface, GrowingPlace.AVERAGE);
    }

    public boolean hasClimate() {
        return station.isPresent() || climate.isPresent();
    }

    public WateringNeeds withStation(String key) {
        return new WateringNeeds(Optional.of(key), Optional.empty(), days, hours, off, places);
    }

    public WateringNeeds withClimate(Climate own) {
        return new WateringNeeds(Optional.empty(), Optional.of(own), days, hours, off, places);
    }

    public WateringNeeds withDays(SortedSet<DayOfWeek> allowed) {
        return new WateringNeeds(station, climate, allowed, hours, off, places);
    }

    public WateringNeeds withHours(WateringHours allowed) {
        return new WateringNeeds(station, climate, days, Optional.of(allowed), off, places);
    }

    public WateringNeeds withOff(SortedSet<Month> months) {
        return new WateringNeeds(station, climate, days, hours, months, places);
    }

    public WateringNeeds withPlaces(SortedMap<SurfaceId, GrowingPlace> all) {
        return new WateringNeeds(station, climate, days, hours, off, all);
    }
}
