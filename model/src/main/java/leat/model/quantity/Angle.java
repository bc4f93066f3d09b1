package leat.model.quantity;

import leat.model.fault.Require;

/** An angle or a bearing, kept in degrees so that right angles and full circles are exact. */
public record Angle(double degrees) implements Quantity, Comparable<Angle> {

    public static final Angle ZERO = new Angle(0);

    public Angle {
        Require.finite("angle", "degrees", degrees);
        degrees += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Angle degrees(double degrees) {
        return new Angle(degrees);
    }

    public static Angle radians(double radians) {
        return new Angle(Math.toDegrees(radians));
    }

    public double inRadians() {
        return Math.toRadians(degrees);
    }

    /** The same direction, at least 0 and less than 360 degrees. */
    public Angle turned() {
        double turned = degrees % 360;
        if (turned < 0) {
            turned += 360;
        }
        return new Angle(turned < 360 ? turned : 0); // a hair below zero plus 360 rounds to 360
    }

    /** Reads text such as {@code 90 deg}; see {@link Units#parse}. */
    public static Angle parse(String text) {
        return (Angle) Units.parse(Dimension.ANGLE, text);
    }

    public Angle plus(Angle other) {
        return new Angle(degrees + other.degrees);
    }

    public Angle minus(Angle other) {
        return new Angle(degrees - other.degrees);
    }

    public Angle times(double factor) {
        return new Angle(degrees * factor);
    }

    @Override
    public double si() {
        return degrees;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGLE;
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
