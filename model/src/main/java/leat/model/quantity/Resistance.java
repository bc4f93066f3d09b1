package leat.model.quantity;

import leat.model.fault.Require;

/** An electric resistance. */
public record Resistance(double ohms) implements Quantity, Comparable<Resistance> {

    public static final Resistance ZERO = new Resistance(0);

    public Resistance {
        Require.finite("resistance", "ohms", ohms);
        ohms += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Resistance ohms(double ohms) {
        return new Resistance(ohms);
    }

    /** Reads text such as {@code 0.4 ohm}; see {@link Units#parse}. */
    public static Resistance parse(String text) {
        return (Resistance) Units.parse(Dimension.RESISTANCE, text);
    }

    public Resistance plus(Resistance other) {
        return new Resistance(ohms + other.ohms);
    }

    public Resistance minus(Resistance other) {
        return new Resistance(ohms - other.ohms);
    }

    public Resistance times(double factor) {
        return new Resistance(ohms * factor);
    }

    @Override
    public double si() {
        return ohms;
    }

    @Override
    public Dimension dimension() {
        return Dimension.RESISTANCE;
    }

    @Override
    public int compareTo(Resistance other) {
        return Double.compare(ohms, other.ohms);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
