package leat.model.catalog;

import java.util.Arrays;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.quantity.Dimension;

/** What a price is for. */
public enum PriceUnit {
    EACH("each", Dimension.COUNT, 1),
    /** A whole length of stock, of whatever length the catalogue has. */
    STICK("stick", Dimension.COUNT, 1),
    /** The same where the stock is wound up. */
    COIL("coil", Dimension.COUNT, 1),
    FOOT("ft", Dimension.LENGTH, 0.3048),
    METRE("m", Dimension.LENGTH, 1),
    CUBIC_FOOT("ft3", Dimension.VOLUME, 0.3048 * 0.3048 * 0.3048),
    CUBIC_YARD("yd3", Dimension.VOLUME, 0.9144 * 0.9144 * 0.9144),
    CUBIC_METRE("m3", Dimension.VOLUME, 1);

    private final String symbol;
    private final Dimension dimension;
    private final double factor;

    PriceUnit(String symbol, Dimension dimension, double factor) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor;
    }

    /** How a file states it, such as {@code ft}. */
    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** SI value of one. */
    public double factor() {
        return factor;
    }

    /** Whether it is a whole stick or coil. */
    public boolean isStock() {
        return this == STICK || this == COIL;
    }

    /** @throws InvalidValueException if no unit is written so */
    public static PriceUnit parse(String text) {
        List<String> symbols = Arrays.stream(values()).map(PriceUnit::symbol).toList();
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(text))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "price",
                        "unit",
                        "'" + text + "'",
                        "one of " + String.join(", ", symbols) + Nearest.hint(text, symbols)));
    }
}
