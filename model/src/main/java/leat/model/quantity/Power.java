package leat.model.quantity;

import leat.model.fault.Require;

/** Electric power. Apparent power (volt-amperes) is written the same: loads here are taken at a power factor of 1. */
public record Power(double watts) implements Quantity, Comparable<Power> {

    public static final Power ZERO = new Power(0);

    public Power {
        Require.finite("power", "watts", watts);
        watts += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Power watts(double watts) {
        return new Power(watts);
    }

    /** Reads text such as {@code 180 W}; see {@link Units#parse}. */
    public static Power parse(String text) {
        return (Power) Units.parse(Dimension.POWER, text);
    }

    public Power plus(Power other) {
        return new Power(watts + other.watts);
    }

    public Power minus(Power other) {
        return new Power(watts - other.watts);
    }

    public Power times(double factor) {
        return new Power(watts * factor);
    }

    @Override
    public double si() {
        return watts;
    }

    @Override
    public Dimension dimension() {
        return Dimension.POWER;
    }

    @Override
    public int compareTo(Power other) {
        return Double.compare(watts, other.watts);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
