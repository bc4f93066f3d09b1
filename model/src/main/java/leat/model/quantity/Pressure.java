package leat.model.quantity;

import leat.model.fault.Require;

/** A pressure above that of the air around it. May be negative: suction. */
public record Pressure(double pascals) implements Quantity, Comparable<Pressure> {

    public static final Pressure ZERO = new Pressure(0);

    private static final double IN_KILOPASCALS = 1_000;

    private static final double IN_BAR = 100_000;

    private static final double IN_PSI = 0.45359237 * 9.80665 / (0.0254 * 0.0254);

    public Pressure {
        Require.finite("pressure", "pascals", pascals);
        pascals += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Pressure pascals(double pascals) {
        return new Pressure(pascals);
    }

    public static Pressure kilopascals(double kilopascals) {
        return new Pressure(kilopascals * IN_KILOPASCALS);
    }

    public static Pressure bar(double bar) {
        return new Pressure(bar * IN_BAR);
    }

    public static Pressure psi(double psi) {
        return new Pressure(psi * IN_PSI);
    }

    public double inKilopascals() {
        return pascals / IN_KILOPASCALS;
    }

    public double inBar() {
        return pascals / IN_BAR;
    }

    public double inPsi() {
        return pascals / IN_PSI;
    }

    /** Reads text such as {@code 62 psi}; see {@link Units#parse}. */
    public static Pressure parse(String text) {
        return (Pressure) Units.parse(Dimension.PRESSURE, text);
    }

    public Pressure plus(Pressure other) {
        return new Pressure(pascals + other.pascals);
    }

    public Pressure minus(Pressure other) {
        return new Pressure(pascals - other.pascals);
    }

    public Pressure times(double factor) {
        return new Pressure(pascals * factor);
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public Dimension dimension() {
        return Dimension.PRESSURE;
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(pascals, other.pascals);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
