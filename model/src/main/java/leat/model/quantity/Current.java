package leat.model.quantity;

import leat.model.fault.Require;

/** An electric current; the effective value where it alternates. */
public record Current(double amperes) implements Quantity, Comparable<Current> {

    public static final Current ZERO = new Current(0);

    public Current {
        Require.finite("current", "amperes", amperes);
        amperes += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Current amperes(double amperes) {
        return new Current(amperes);
    }

    /** Reads text such as {@code 20 A}; see {@link Units#parse}. */
    public static Current parse(String text) {
        return (Current) Units.parse(Dimension.CURRENT, text);
    }

    public Current plus(Current other) {
        return new Current(amperes + other.amperes);
    }

    public Current minus(Current other) {
        return new Current(amperes - other.amperes);
    }

    public Current times(double factor) {
        return new Current(amperes * factor);
    }

    @Override
    public double si() {
        return amperes;
    }

    @Override
    public Dimension dimension() {
        return Dimension.CURRENT;
    }

    @Override
    public int compareTo(Current other) {
        return Double.compare(amperes, other.amperes);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
