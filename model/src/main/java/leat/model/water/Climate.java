package leat.model.water;

import java.time.Month;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;

/**
 * The weather of an average year at a place.
 *
 * @param place    what messages call it
 * @param latitude north is positive; -90 to 90 degrees
 * @param altitude above the sea; -500 to 9,000 m
 * @param months   each of the twelve once; kept from January on
 */
public record Climate(String place, Angle latitude, Length altitude, List<ClimateMonth> months) {

    private static final int MONTHS = 12;

    public Climate {
        Require.name("climate", "place", place);
        String thing = "climate of " + place;
        Require.present(thing, "latitude", latitude);
        Require.present(thing, "altitude", altitude);
        if (Math.abs(latitude.degrees()) > 90) {
            throw new InvalidValueException(thing, "latitude", latitude.toString(), "-90 deg to 90 deg");
        }
        if (altitude.metres() < -500 || altitude.metres() > 9_000) {
            throw new InvalidValueException(thing, "altitude", altitude.toString(), "-500 m to 9000 m");
        }
        months = inOrder(thing, months);
    }

    private static List<ClimateMonth> inOrder(String thing, List<ClimateMonth> months) {
        List<ClimateMonth> sorted = Require.entries(thing, "months", months).stream()
                .sorted(Comparator.comparing(ClimateMonth::month))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).month() == sorted.get(i - 1).month()) {
                throw new InvalidValueException(
                        thing, "months", ClimateMonth.name(sorted.get(i).month()) + " twice", "each month once");
            }
        }
        if (sorted.size() < MONTHS) {
            throw new InvalidValueException(thing, "months", "without " + missing(sorted), "all twelve months");
        }
        return sorted;
    }

    private static String missing(List<ClimateMonth> there) {
        List<Month> months = there.stream().map(ClimateMonth::month).toList();
        return Arrays.stream(Month.values())
                .filter(month -> !months.contains(month))
                .map(ClimateMonth::name)
                .collect(Collectors.joining(", "));
    }

    public ClimateMonth month(Month month) {
        return months.get(month.getValue() - 1);
    }

    public boolean isSouthern() {
        return latitude.degrees() < 0;
    }
}
