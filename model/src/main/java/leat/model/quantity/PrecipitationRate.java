package leat.model.quantity;

import leat.model.fault.Require;

/** A depth of water in a time. */
public record PrecipitationRate(double metresPerSecond) implements Quantity, Comparable<PrecipitationRate> {

    public static final PrecipitationRate ZERO = new PrecipitationRate(0);

    private static final double IN_MILLIMETRES_PER_HOUR = 0.001 / 3_600;

    private static final double IN_INCHES_PER_HOUR = 0.0254 / 3_600;

    public PrecipitationRate {
        Require.finite("precipitation rate", "metresPerSecond", metresPerSecond);
        metresPerSecond += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static PrecipitationRate metresPerSecond(double metresPerSecond) {
        return new PrecipitationRate(metresPerSecond);
    }

    public static PrecipitationRate millimetresPerHour(double millimetresPerHour) {
        return new PrecipitationRate(millimetresPerHour * IN_MILLIMETRES_PER_HOUR);
    }

    public static PrecipitationRate inchesPerHour(double inchesPerHour) {
        return new PrecipitationRate(inchesPerHour * IN_INCHES_PER_HOUR);
    }

    public double inMillimetresPerHour() {
        return metresPerSecond / IN_MILLIMETRES_PER_HOUR;
    }

    public double inInchesPerHour() {
        return metresPerSecond / IN_INCHES_PER_HOUR;
    }

    /** Reads text such as {@code 1.5 in/h}; see {@link Units#parse}. */
    public static PrecipitationRate parse(String text) {
        return (PrecipitationRate) Units.parse(Dimension.PRECIPITATION, text);
    }

    public PrecipitationRate plus(PrecipitationRate other) {
        return new PrecipitationRate(metresPerSecond + other.metresPerSecond);
    }

    public PrecipitationRate minus(PrecipitationRate other) {
        return new PrecipitationRate(metresPerSecond - other.metresPerSecond);
    }

    public PrecipitationRate times(double factor) {
        return new PrecipitationRate(metresPerSecond * factor);
    }

    @Override
    public double si() {
        return metresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.PRECIPITATION;
    }

    @Override
    public int compareTo(PrecipitationRate other) {
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
