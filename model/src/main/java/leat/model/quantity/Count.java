package leat.model.quantity;

import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;

/** How many. Whole. */
public record Count(double value) implements Quantity, Comparable<Count> {

    public static final Count ZERO = new Count(0);

    public Count {
        Require.finite("count", "value", value);
        if (value != Math.rint(value)) {
            throw new InvalidValueException("count", "value", String.valueOf(value), "a whole number");
        }
        value += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Count of(double value) {
        return new Count(value);
    }

    /** Reads text such as {@code 4}; see {@link Units#parse}. */
    public static Count parse(String text) {
        return (Count) Units.parse(Dimension.COUNT, text);
    }

    public Count plus(Count other) {
        return new Count(value + other.value);
    }

    public Count minus(Count other) {
        return new Count(value - other.value);
    }

    @Override
    public double si() {
        return value;
    }

    @Override
    public Dimension dimension() {
        return Dimension.COUNT;
    }

    @Override
    public int compareTo(Count other) {
        return Double.compare(value, other.value);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
