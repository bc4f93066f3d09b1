package leat.model.quantity;

import leat.model.fault.Require;

/** A stretch of time, such as how long a zone runs. */
public record TimeSpan(double seconds) implements Quantity, Comparable<TimeSpan> {

    public static final TimeSpan ZERO = new TimeSpan(0);

    private static final double IN_MINUTES = 60;

    private static final double IN_HOURS = 3_600;

    public TimeSpan {
        Require.finite("time span", "seconds", seconds);
        seconds += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static TimeSpan seconds(double seconds) {
        return new TimeSpan(seconds);
    }

    public static TimeSpan minutes(double minutes) {
        return new TimeSpan(minutes * IN_MINUTES);
    }

    public static TimeSpan hours(double hours) {
        return new TimeSpan(hours * IN_HOURS);
    }

    public double inMinutes() {
        return seconds / IN_MINUTES;
    }

    public double inHours() {
        return seconds / IN_HOURS;
    }

    /** Reads text such as {@code 25 min}; see {@link Units#parse}. */
    public static TimeSpan parse(String text) {
        return (TimeSpan) Units.parse(Dimension.TIME, text);
    }

    public TimeSpan plus(TimeSpan other) {
        return new TimeSpan(seconds + other.seconds);
    }

    public TimeSpan minus(TimeSpan other) {
        return new TimeSpan(seconds - other.seconds);
    }

    public TimeSpan times(double factor) {
        return new TimeSpan(seconds * factor);
    }

    @Override
    public double si() {
        return seconds;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TIME;
    }

    @Override
    public int compareTo(TimeSpan other) {
        return Double.compare(seconds, other.seconds);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
