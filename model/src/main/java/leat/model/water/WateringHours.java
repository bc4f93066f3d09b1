package leat.model.water;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.model.fault.InvalidValueException;

/**
 * The hours of a day in which valves may open. When they end before they begin they run through midnight and belong to
 * the day on which they begin.
 *
 * @param fromMinute  of the day, 0 to 1439
 * @param untilMinute of the day, 1 to 1440; not equal to {@code fromMinute}
 */
public record WateringHours(int fromMinute, int untilMinute) {

    /** No limit. */
    public static final WateringHours WHOLE_DAY = new WateringHours(0, 1_440);

    private static final int DAY = 1_440;
    private static final Pattern TIME = Pattern.compile("([01]?\\d|2[0-4]):([0-5]\\d)");
    private static final String ALLOWED = "a time of the day such as 22:00";

    public WateringHours {
        if (fromMinute < 0 || fromMinute >= DAY) {
            throw new InvalidValueException("watering hours", "from", text(fromMinute), "00:00 to 23:59");
        }
        if (untilMinute <= 0 || untilMinute > DAY) {
            throw new InvalidValueException("watering hours", "until", text(untilMinute), "00:01 to 24:00");
        }
        if (untilMinute == fromMinute) {
            throw new InvalidValueException(
                    "watering hours",
                    "until",
                    text(untilMinute) + ", when they begin",
                    "another time; the whole day is 00:00 to 24:00");
        }
    }

    /** From text such as {@code 22:00} and {@code 06:00}. */
    public static WateringHours of(String from, String until) {
        return new WateringHours(minute("from", from), minute("until", until));
    }

    private static int minute(String field, String text) {
        Matcher time = TIME.matcher(text);
        if (!time.matches()) {
            throw new InvalidValueException("watering hours", field, "'" + text + "'", ALLOWED);
        }
        int minute = Integer.parseInt(time.group(1)) * 60 + Integer.parseInt(time.group(2));
        if (minute > DAY) {
            throw new InvalidValueException("watering hours", field, "'" + text + "'", ALLOWED);
        }
        return minute;
    }

    public int lengthMinutes() {
        return untilMinute > fromMinute ? untilMinute - fromMinute : DAY - fromMinute + untilMinute;
    }

    public String from() {
        return text(fromMinute);
    }

    public String until() {
        return text(untilMinute);
    }

    /** The minute of a day as people write it; minutes of the day after begin again at 00:00. */
    public static String text(int minute) {
        int shown = minute > DAY ? minute % DAY : minute;
        return String.format(Locale.ROOT, "%02d:%02d", shown / 60, shown % 60);
    }

    @Override
    public String toString() {
        return from() + " to " + until();
    }
}
