package leat.model.quantity;

import leat.model.fault.Require;

/** A volume of earth, of goods or of a box; water is a {@link WaterVolume}. */
public record Volume(double cubicMetres) implements Quantity, Comparable<Volume> {

    public static final Volume ZERO = new Volume(0);

    private static final double IN_LITRES = 0.001;

    private static final double IN_GALLONS = 231 * 0.0254 * 0.0254 * 0.0254;

    private static final double IN_CUBIC_FEET = 0.3048 * 0.3048 * 0.3048;

    private static final double IN_CUBIC_YARDS = 0.9144 * 0.9144 * 0.9144;

    public Volume {
        Require.finite("volume", "cubicMetres", cubicMetres);
        cubicMetres += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Volume cubicMetres(double cubicMetres) {
        return new Volume(cubicMetres);
    }

    public static Volume litres(double litres) {
        return new Volume(litres * IN_LITRES);
    }

    public static Volume gallons(double gallons) {
        return new Volume(gallons * IN_GALLONS);
    }

    public static Volume cubicFeet(double cubicFeet) {
        return new Volume(cubicFeet * IN_CUBIC_FEET);
    }

    public static Volume cubicYards(double cubicYards) {
        return new Volume(cubicYards * IN_CUBIC_YARDS);
    }

    public double inLitres() {
        return cubicMetres / IN_LITRES;
    }

    public double inGallons() {
        return cubicMetres / IN_GALLONS;
    }

    public double inCubicFeet() {
        return cubicMetres / IN_CUBIC_FEET;
    }

    public double inCubicYards() {
        return cubicMetres / IN_CUBIC_YARDS;
    }

    /** Reads text such as {@code 2.5 yd3}; see {@link Units#parse}. */
    public static Volume parse(String text) {
        return (Volume) Units.parse(Dimension.VOLUME, text);
    }

    public Volume plus(Volume other) {
        return new Volume(cubicMetres + other.cubicMetres);
    }

    public Volume minus(Volume other) {
        return new Volume(cubicMetres - other.cubicMetres);
    }

    public Volume times(double factor) {
        return new Volume(cubicMetres * factor);
    }

    @Override
    public double si() {
        return cubicMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLUME;
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
