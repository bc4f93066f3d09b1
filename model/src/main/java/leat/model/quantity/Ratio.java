package leat.model.quantity;

import leat.model.fault.Require;

/** A pure number, such as a share, a coefficient or a slope; 0.5 is shown as 50 %. */
public record Ratio(double value) implements Quantity, Comparable<Ratio> {

    public static final Ratio ZERO = new Ratio(0);

    private static final double IN_PERCENT = 0.01;

    public Ratio {
        Require.finite("ratio", "value", value);
        value += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Ratio of(double value) {
        return new Ratio(value);
    }

    public static Ratio percent(double percent) {
        return new Ratio(percent * IN_PERCENT);
    }

    public double inPercent() {
        return value / IN_PERCENT;
    }

    /** Reads text such as {@code 75 %}; see {@link Units#parse}. */
    public static Ratio parse(String text) {
        return (Ratio) Units.parse(Dimension.RATIO, text);
    }

    public Ratio plus(Ratio other) {
        return new Ratio(value + other.value);
    }

    public Ratio minus(Ratio other) {
        return new Ratio(value - other.value);
    }

    public Ratio times(double factor) {
        return new Ratio(value * factor);
    }

    @Override
    public double si() {
        return value;
    }

    @Override
    public Dimension dimension() {
        return Dimension.RATIO;
    }

    @Override
    public int compareTo(Ratio other) {
        return Double.compare(value, other.value);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
