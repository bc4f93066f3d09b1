package leat.model.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The units that text may use. Factors are exact by definition: inch 0.0254 m, pound 0.45359237 kg, standard gravity
 * 9.80665 m/s², US gallon 231 cubic inches, yard 0.9144 m (NIST Special Publication 811, appendix B).
 */
public enum Unit {
    METRE(Dimension.LENGTH, 1, "m"),
    MILLIMETRE(Dimension.LENGTH, 0.001, "mm"),
    FOOT(Dimension.LENGTH, 0.3048, "ft", "'"),
    INCH(Dimension.LENGTH, 0.0254, "in", "\""),
    SQUARE_METRE(Dimension.AREA, 1, "m2", "m²"),
    SQUARE_FOOT(Dimension.AREA, 0.3048 * 0.3048, "ft2", "ft²"),
    SQUARE_MILLIMETRE(Dimension.AREA, 1e-6, "mm2", "mm²"),
    SQUARE_INCH(Dimension.AREA, 0.0254 * 0.0254, "in2", "in²"),
    CUBIC_METRE(Dimension.VOLUME, 1, "m3", "m³"),
    LITRE(Dimension.VOLUME, 0.001, "L"),
    GALLON(Dimension.VOLUME, 231 * 0.0254 * 0.0254 * 0.0254, "gal"),
    CUBIC_FOOT(Dimension.VOLUME, 0.3048 * 0.3048 * 0.3048, "ft3", "ft³"),
    CUBIC_YARD(Dimension.VOLUME, 0.9144 * 0.9144 * 0.9144, "yd3", "yd³"),
    CUBIC_METRE_OF_WATER(Dimension.WATER, 1, "m3", "m³"),
    LITRE_OF_WATER(Dimension.WATER, 0.001, "L"),
    GALLON_OF_WATER(Dimension.WATER, 231 * 0.0254 * 0.0254 * 0.0254, "gal"),
    PASCAL(Dimension.PRESSURE, 1, "Pa"),
    KILOPASCAL(Dimension.PRESSURE, 1_000, "kPa"),
    BAR(Dimension.PRESSURE, 100_000, "bar"),
    PSI(Dimension.PRESSURE, 0.45359237 * 9.80665 / (0.0254 * 0.0254), "psi"),
    CUBIC_METRE_PER_SECOND(Dimension.FLOW, 1, "m3/s", "m³/s"),
    LITRE_PER_SECOND(Dimension.FLOW, 0.001, "L/s"),
    LITRE_PER_MINUTE(Dimension.FLOW, 0.001 / 60, "L/min"),
    GALLON_PER_MINUTE(Dimension.FLOW, 231 * 0.0254 * 0.0254 * 0.0254 / 60, "gpm"),
    METRE_PER_SECOND(Dimension.VELOCITY, 1, "m/s"),
    FOOT_PER_SECOND(Dimension.VELOCITY, 0.3048, "ft/s"),
    METRE_OF_RAIN_PER_SECOND(Dimension.PRECIPITATION, 1, "m/s"),
    MILLIMETRE_PER_HOUR(Dimension.PRECIPITATION, 0.001 / 3_600, "mm/h"),
    INCH_PER_HOUR(Dimension.PRECIPITATION, 0.0254 / 3_600, "in/h"),
    SECOND(Dimension.TIME, 1, "s"),
    MINUTE(Dimension.TIME, 60, "min"),
    HOUR(Dimension.TIME, 3_600, "h"),
    AMPERE(Dimension.CURRENT, 1, "A"),
    VOLT(Dimension.VOLTAGE, 1, "V"),
    WATT(Dimension.POWER, 1, "W", "VA"),
    OHM(Dimension.RESISTANCE, 1, "ohm", "Ω"),
    DEGREE(Dimension.ANGLE, 1, "deg", "°"),
    PERCENT(Dimension.RATIO, 0.01, "%"),
    ONE(Dimension.RATIO, 1, ""),
    EACH(Dimension.COUNT, 1, "");

    private final Dimension dimension;
    private final double factor;
    private final List<String> symbols;

    Unit(Dimension dimension, double factor, String... symbols) {
        this.dimension = dimension;
        this.factor = factor;
        this.symbols = List.of(symbols);
    }

    public Dimension dimension() {
        return dimension;
    }

    /** SI value of one of this unit. */
    public double factor() {
        return factor;
    }

    /** The symbol that is printed; others may be read. */
    public String symbol() {
        return symbols.get(0);
    }

    static Optional<Unit> find(Dimension dimension, String symbol) {
        return of(dimension).filter(unit -> unit.symbols.contains(symbol)).findFirst();
    }

    /** The units of that dimension, in their order here. */
    static Stream<Unit> of(Dimension dimension) {
        return Arrays.stream(values()).filter(unit -> unit.dimension == dimension);
    }

    /** What text of that dimension may be, for messages. */
    static String allowed(Dimension dimension) {
        List<String> symbols = of(dimension)
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .toList();
        String with = String.join(", ", symbols);
        return switch (dimension) {
            case COUNT -> "a whole number";
            case RATIO -> "a number, alone or with " + with;
            default ->
                symbols.size() == 1 ? "a number with the unit " + with : "a number with one of these units: " + with;
        };
    }

    /** What a document in that system is written in, and the display unit of large figures. */
    static Unit usual(Dimension dimension, UnitSystem system) {
        boolean us = system == UnitSystem.US;
        return switch (dimension) {
            case LENGTH -> us ? FOOT : METRE;
            case AREA -> us ? SQUARE_FOOT : SQUARE_METRE;
            case VOLUME -> us ? CUBIC_YARD : CUBIC_METRE;
            case WATER -> us ? GALLON_OF_WATER : LITRE_OF_WATER;
            case PRESSURE -> us ? PSI : KILOPASCAL;
            case FLOW -> us ? GALLON_PER_MINUTE : LITRE_PER_MINUTE;
            case VELOCITY -> us ? FOOT_PER_SECOND : METRE_PER_SECOND;
            case PRECIPITATION -> us ? INCH_PER_HOUR : MILLIMETRE_PER_HOUR;
            case TIME -> MINUTE;
            case CURRENT -> AMPERE;
            case VOLTAGE -> VOLT;
            case POWER -> WATT;
            case RESISTANCE -> OHM;
            case ANGLE -> DEGREE;
            case RATIO -> PERCENT;
            case COUNT -> EACH;
        };
    }

    /** The SI unit of the dimension: every double can be written in it. */
    static Unit base(Dimension dimension) {
        return of(dimension).filter(unit -> unit.factor == 1).findFirst().orElseThrow();
    }
}
