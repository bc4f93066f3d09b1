package leat.model.quantity;

import leat.model.fault.Require;

/** A volume of water, which people measure in gallons or litres while earth and goods are a {@link Volume}. */
public record WaterVolume(double cubicMetres) implements Quantity, Comparable<WaterVolume> {

    public static final WaterVolume ZERO = new WaterVolume(0);

    private static final double IN_LITRES = 0.001;

    private static final double IN_GALLONS = 231 * 0.0254 * 0.0254 * 0.0254;

    public WaterVolume {
        Require.finite("volume of water", "cubicMetres", cubicMetres);
        cubicMetres += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static WaterVolume cubicMetres(double cubicMetres) {
        return new WaterVolume(cubicMetres);
    }

    public static WaterVolume litres(double litres) {
        return new WaterVolume(litres * IN_LITRES);
    }

    public static WaterVolume gallons(double gallons) {
        return new WaterVolume(gallons * IN_GALLONS);
    }

    public double inLitres() {
        return cubicMetres / IN_LITRES;
    }

    public double inGallons() {
        return cubicMetres / IN_GALLONS;
    }

    /** Reads text such as {@code 500 gal}; see {@link Units#parse}. */
    public static WaterVolume parse(String text) {
        return (WaterVolume) Units.parse(Dimension.WATER, text);
    }

    public WaterVolume plus(WaterVolume other) {
        return new WaterVolume(cubicMetres + other.cubicMetres);
    }

    public WaterVolume minus(WaterVolume other) {
        return new WaterVolume(cubicMetres - other.cubicMetres);
    }

    public WaterVolume times(double factor) {
        return new WaterVolume(cubicMetres * factor);
    }

    @Override
    public double si() {
        return cubicMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.WATER;
    }

    @Override
    public int compareTo(WaterVolume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
