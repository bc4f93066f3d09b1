package leat.model.quantity;

import leat.model.fault.Require;

/** An area. */
public record Area(double squareMetres) implements Quantity, Comparable<Area> {

    public static final Area ZERO = new Area(0);

    private static final double IN_SQUARE_FEET = 0.3048 * 0.3048;

    public Area {
        Require.finite("area", "squareMetres", squareMetres);
        squareMetres += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Area squareMetres(double squareMetres) {
        return new Area(squareMetres);
    }

    public static Area squareFeet(double squareFeet) {
        return new Area(squareFeet * IN_SQUARE_FEET);
    }

    public double inSquareFeet() {
        return squareMetres / IN_SQUARE_FEET;
    }

    /** Reads text such as {@code 120 ft2}; see {@link Units#parse}. */
    public static Area parse(String text) {
        return (Area) Units.parse(Dimension.AREA, text);
    }

    public Area plus(Area other) {
        return new Area(squareMetres + other.squareMetres);
    }

    public Area minus(Area other) {
        return new Area(squareMetres - other.squareMetres);
    }

    public Area times(double factor) {
        return new Area(squareMetres * factor);
    }

    @Override
    public double si() {
        return squareMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA;
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareMetres, other.squareMetres);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
