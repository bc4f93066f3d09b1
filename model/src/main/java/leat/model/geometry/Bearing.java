package leat.model.geometry;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Angle;

/** Reads and prints the direction of a survey line, as deeds write it. */
public final class Bearing {

    private static final String DEGREES =
            "(\\d{1,3}(?:\\.\\d+)?)\\s*(?:°|deg)?\\s*(?:(?<=[°g\\s])(\\d{1,2}(?:\\.\\d+)?)\\s*['′])?\\s*(?:(?<=['′°g\\s])(\\d{1,2}(?:\\.\\d+)?)\\s*[\"″])?";
    private static final Pattern QUADRANT = Pattern.compile("\\s*([NS])\\s*" + DEGREES + "\\s*([EW])\\s*");
    private static final Pattern AZIMUTH = Pattern.compile("\\s*" + DEGREES + "\\s*");

    private Bearing() {}

    /**
     * Reads a quadrant bearing such as {@code N 4°10' E} or {@code S 82 deg 30' 15" W}, or an azimuth such as
     * {@code 176.5°}, clockwise from north.
     */
    public static Angle parse(String text) {
        Require.present("bearing", "text", text);
        Matcher quadrant = QUADRANT.matcher(text);
        if (quadrant.matches()) {
            double fromMeridian = degrees(quadrant, 2, text);
            if (fromMeridian > 90) {
                throw notRead(text);
            }
            boolean north = quadrant.group(1).equals("N");
            boolean east = quadrant.group(5).equals("E");
            double azimuth = north ? fromMeridian : 180 - fromMeridian;
            return new Angle(east ? azimuth : 360 - azimuth).turned();
        }
        Matcher azimuth = AZIMUTH.matcher(text);
        if (azimuth.matches()) {
            double degrees = degrees(azimuth, 1, text);
            if (degrees <= 360) {
                return new Angle(degrees).turned();
            }
        }
        throw notRead(text);
    }

    /** The quadrant form, rounded to the minute. */
    public static String show(Angle bearing) {
        double degrees = bearing.turned().degrees();
        boolean north = degrees <= 90 || degrees >= 270;
        boolean east = degrees <= 180;
        double fromMeridian = degrees <= 90 ? degrees : degrees <= 270 ? Math.abs(180 - degrees) : 360 - degrees;
        long minutes = Math.round(fromMeridian * 60);
        return String.format(
                Locale.ROOT, "%s %d°%02d' %s", north ? "N" : "S", minutes / 60, minutes % 60, east ? "E" : "W");
    }

    private static double degrees(Matcher matcher, int group, String text) {
        double minutes = part(matcher, group + 1, text);
        double seconds = part(matcher, group + 2, text);
        boolean smaller = matcher.group(group + 1) != null || matcher.group(group + 2) != null;
        if (smaller && matcher.group(group).contains(".")) {
            throw notRead(text); // 4.5°30' may mean anything
        }
        return Double.parseDouble(matcher.group(group)) + minutes / 60 + seconds / 3_600;
    }

    private static double part(Matcher matcher, int group, String text) {
        double value = matcher.group(group) == null ? 0 : Double.parseDouble(matcher.group(group));
        if (value >= 60) {
            throw notRead(text);
        }
        return value;
    }

    private static InvalidValueException notRead(String text) {
        return new InvalidValueException(
                "bearing",
                "text",
                "'" + text + "'",
                "such as N 4°10' E (0 to 90 degrees) or an azimuth such as 176.5°");
    }
}
