package leat.model.quantity;

import leat.model.fault.Require;

/** A speed of water. */
public record Velocity(double metresPerSecond) implements Quantity, Comparable<Velocity> {

    public static final Velocity ZERO = new Velocity(0);

    private static final double IN_FEET_PER_SECOND = 0.3048;

    public Velocity {
        Require.finite("velocity", "metresPerSecond", metresPerSecond);
        metresPerSecond += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Velocity metresPerSecond(double metresPerSecond) {
        return new Velocity(metresPerSecond);
    }

    public static Velocity feetPerSecond(double feetPerSecond) {
        return new Velocity(feetPerSecond * IN_FEET_PER_SECOND);
    }

    public double inFeetPerSecond() {
        return metresPerSecond / IN_FEET_PER_SECOND;
    }

    /** Reads text such as {@code 5 ft/s}; see {@link Units#parse}. */
    public static Velocity parse(String text) {
        return (Velocity) Units.parse(Dimension.VELOCITY, text);
    }

    public Velocity plus(Velocity other) {
        return new Velocity(metresPerSecond + other.metresPerSecond);
    }

    public Velocity minus(Velocity other) {
        return new Velocity(metresPerSecond - other.metresPerSecond);
    }

    public Velocity times(double factor) {
        return new Velocity(metresPerSecond * factor);
    }

    @Override
    public double si() {
        return metresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VELOCITY;
    }

    @Override
    public int compareTo(Velocity other) {
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
