package leat.model.quantity;

import leat.model.fault.Require;

/** A distance. May be negative: a level below the datum. */
public record Length(double metres) implements Quantity, Comparable<Length> {

    public static final Length ZERO = new Length(0);

    private static final double IN_MILLIMETRES = 0.001;

    private static final double IN_FEET = 0.3048;

    private static final double IN_INCHES = 0.0254;

    public Length {
        Require.finite("length", "metres", metres);
        metres += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Length metres(double metres) {
        return new Length(metres);
    }

    public static Length millimetres(double millimetres) {
        return new Length(millimetres * IN_MILLIMETRES);
    }

    public static Length feet(double feet) {
        return new Length(feet * IN_FEET);
    }

    public static Length inches(double inches) {
        return new Length(inches * IN_INCHES);
    }

    public double inMillimetres() {
        return metres / IN_MILLIMETRES;
    }

    public double inFeet() {
        return metres / IN_FEET;
    }

    public double inInches() {
        return metres / IN_INCHES;
    }

    /** Reads text such as {@code 12 ft 6 in}; see {@link Units#parse}. */
    public static Length parse(String text) {
        return (Length) Units.parse(Dimension.LENGTH, text);
    }

    public Length plus(Length other) {
        return new Length(metres + other.metres);
    }

    public Length minus(Length other) {
        return new Length(metres - other.metres);
    }

    public Length times(double factor) {
        return new Length(metres * factor);
    }

    @Override
    public double si() {
        return metres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
