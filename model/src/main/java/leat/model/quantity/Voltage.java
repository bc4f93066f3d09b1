package leat.model.quantity;

import leat.model.fault.Require;

/** A difference of electric potential; the effective value where it alternates. */
public record Voltage(double volts) implements Quantity, Comparable<Voltage> {

    public static final Voltage ZERO = new Voltage(0);

    public Voltage {
        Require.finite("voltage", "volts", volts);
        volts += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Voltage volts(double volts) {
        return new Voltage(volts);
    }

    /** Reads text such as {@code 120 V}; see {@link Units#parse}. */
    public static Voltage parse(String text) {
        return (Voltage) Units.parse(Dimension.VOLTAGE, text);
    }

    public Voltage plus(Voltage other) {
        return new Voltage(volts + other.volts);
    }

    public Voltage minus(Voltage other) {
        return new Voltage(volts - other.volts);
    }

    public Voltage times(double factor) {
        return new Voltage(volts * factor);
    }

    @Override
    public double si() {
        return volts;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLTAGE;
    }

    @Override
    public int compareTo(Voltage other) {
        return Double.compare(volts, other.volts);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
