package leat.model.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;

/** Reads and prints quantities. Writing is exact, for documents; showing is rounded, for people. */
public final class Units {

    private static final int MOST_DIGITS = 12;
    private static final int MOST_DIGITS_ELSEWHERE = 6;

    /** What is shown has at least so many digits that tell something. */
    private static final int LEAST_DIGITS = 2;

    private static final int LEAST_DIGITS_OF_A_LEDGER = 3;

    /** 1/16 ft is half a step of the third decimal, though the quotient of doubles may lie a hair below. */
    private static final MathContext WITHOUT_NOISE = new MathContext(14, RoundingMode.HALF_EVEN);

    /** Of a unit. What is left of sums that should be nothing lies far below, what anybody measures far above. */
    private static final double ROUNDING_OF_SUMS = 1e-9;

    /** A number, perhaps a fraction or a whole with a fraction, and its unit. */
    private static final Pattern TERM = Pattern.compile(
            "\\s*([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d{1,3})?)(?:(?:\\s+(\\d+))?/(\\d+))?\\s*(ft2|ft3|yd3|in2|mm2|m2|m3/s|m3|[^\\s\\d.+-][^\\s\\d]*)?\\s*");

    private Units() {}

    /**
     * Reads one figure, such as {@code 62 psi}, {@code 3/4 in}, {@code 1 1/2 in}; a length may be feet followed by
     * inches, such as {@code 12 ft 6 in} or {@code 12' 6"}. A minus sign in front counts for the whole of it.
     *
     * @throws InvalidValueException if the text is no figure or its unit is not one of the dimension
     */
    public static Quantity parse(Dimension dimension, String text) {
        Require.present(dimension.label(), "text", text);
        Matcher matcher = TERM.matcher(text);
        if (!matcher.lookingAt()) {
            throw notRead(dimension, text);
        }
        Unit unit = unit(dimension, matcher.group(4), text);
        double si = number(matcher, dimension, text) * unit.factor();
        if (matcher.end() < text.length()) {
            boolean negative = matcher.group(1).startsWith("-");
            double inches = inchesAfter(unit, matcher, text) * Unit.INCH.factor();
            si += negative ? -inches : inches;
        }
        if (!Double.isFinite(si)) {
            throw notRead(dimension, text);
        }
        return dimension.of(si);
    }

    /** The inches that follow feet, without a sign of their own, up to the end of the text. */
    private static double inchesAfter(Unit first, Matcher matcher, String text) {
        matcher.region(matcher.end(), text.length());
        boolean inches = first == Unit.FOOT
                && matcher.matches()
                && Character.isDigit(matcher.group(1).charAt(0))
                && unit(Dimension.LENGTH, matcher.group(4), text) == Unit.INCH;
        if (!inches) {
            throw notRead(Dimension.LENGTH, text);
        }
        return number(matcher, Dimension.LENGTH, text);
    }

    private static double number(Matcher matcher, Dimension dimension, String text) {
        double first = Double.parseDouble(matcher.group(1));
        if (matcher.group(3) == null) {
            return first;
        }
        double below = Double.parseDouble(matcher.group(3));
        if (below == 0) {
            throw notRead(dimension, text);
        }
        if (matcher.group(2) == null) {
            return first / below;
        }
        return first + Math.copySign(Double.parseDouble(matcher.group(2)) / below, first);
    }

    private static Unit unit(Dimension dimension, String symbol, String text) {
        return Unit.find(dimension, symbol == null ? "" : symbol).orElseThrow(() -> notRead(dimension, text));
    }

    private static InvalidValueException notRead(Dimension dimension, String text) {
        return new InvalidValueException(dimension.label(), "text", "'" + text + "'", Unit.allowed(dimension));
    }

    /**
     * The figure as a document keeps it: in the usual unit of the system if a decimal of at most 12 digits reads back
     * to the same double; else in the unit that does it in the shortest text of at most 6 digits, such as the inches
     * somebody typed; else in SI with as many digits as it takes.
     */
    public static String write(Quantity quantity, UnitSystem system) {
        double si = quantity.si();
        Unit usual = Unit.usual(quantity.dimension(), system);
        return shortly(si, usual, MOST_DIGITS)
                .or(() -> Unit.of(quantity.dimension())
                        .flatMap(unit -> shortly(si, unit, MOST_DIGITS_ELSEWHERE).stream())
                        .min(Comparator.comparingInt(String::length)))
                .orElseGet(
                        () -> withSymbol(plain(new BigDecimal(Double.toString(si))), Unit.base(quantity.dimension())));
    }

    /**
     * The figure in that unit, if a decimal of so few digits reads back to the same double. A shorter one that does is
     * far nearer to the quotient than the last of the digits, so rounding finds it.
     */
    private static Optional<String> shortly(double si, Unit unit, int digits) {
        double figure = si / unit.factor();
        if (!Double.isFinite(figure)) { // the greatest lengths are no double in feet
            return Optional.empty();
        }
        BigDecimal rounded = new BigDecimal(figure).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        return rounded.doubleValue() * unit.factor() == si
                ? Optional.of(withSymbol(plain(rounded), unit))
                : Optional.empty();
    }

    /** The figure in the usual unit of the system, to six digits: for programs that read results. */
    public static String rounded(Quantity quantity, UnitSystem system) {
        Unit usual = Unit.usual(quantity.dimension(), system);
        BigDecimal figure = new BigDecimal(quantity.si() / usual.factor());
        return withSymbol(plain(figure.round(new MathContext(6, RoundingMode.HALF_EVEN))), usual);
    }

    /**
     * The figure as a person wants to read it: with the decimals that matter on site, but at least two digits that tell
     * something, such as 745.0 ft and 0.034 psi. Never read back.
     */
    public static String show(Quantity quantity, UnitSystem system) {
        Unit usual = Unit.usual(quantity.dimension(), system);
        return withSymbol(number(quantity, system), usual);
    }

    /** The figure alone, rounded, in the unit that {@link #symbol} names; for columns that carry the unit in their head. */
    public static String number(Quantity quantity, UnitSystem system) {
        Dimension dimension = quantity.dimension();
        return rounded(
                quantity.si() / Unit.usual(dimension, system).factor(), decimals(dimension, system), LEAST_DIGITS);
    }

    /**
     * The figure as a line of a ledger shows it, with at least three digits that tell something: depths, bores, sections
     * of wires and other small things in a unit of their size, a ratio as the pure number that goes into the formula.
     * Never read back.
     */
    public static String fine(Quantity quantity, UnitSystem system) {
        double si = quantity.si();
        boolean us = system == UnitSystem.US;
        if (quantity instanceof Ratio) {
            return plain(new BigDecimal(si).round(new MathContext(5, RoundingMode.HALF_EVEN)));
        }
        if (quantity instanceof Length) {
            boolean small = Math.abs(si) < (us ? 3 * Unit.FOOT.factor() : 1);
            return small
                    ? fourDigits(si, us ? Unit.INCH : Unit.MILLIMETRE, us ? 3 : 1)
                    : fine(si, us ? Unit.FOOT : Unit.METRE, us ? 2 : 3);
        }
        if (quantity instanceof Area && Math.abs(si) < Unit.SQUARE_FOOT.factor()) {
            return fourDigits(si, us ? Unit.SQUARE_INCH : Unit.SQUARE_MILLIMETRE, us ? 4 : 2);
        }
        Dimension dimension = quantity.dimension();
        return fine(si, Unit.usual(dimension, system), decimals(dimension, system));
    }

    private static String fine(double si, Unit unit, int decimals) {
        return withSymbol(rounded(si / unit.factor(), decimals, LEAST_DIGITS_OF_A_LEDGER), unit);
    }

    /** No more than four digits, nor more than so many decimals where the third digit is not behind them. */
    private static String fourDigits(double si, Unit unit, int mostDecimals) {
        double figure = Math.abs(si / unit.factor());
        int before = figure < 1 ? 0 : (int) Math.floor(Math.log10(figure)) + 1;
        return fine(si, unit, Math.max(0, Math.min(mostDecimals, 4 - before)));
    }

    /**
     * With that many decimals, and with more where fewer digits would be left than are to tell something: a figure that
     * is not zero never reads zero, unless it is so small that it can only be the rounding of sums.
     */
    private static String rounded(double figure, int decimals, int leastDigits) {
        if (Math.abs(figure) < ROUNDING_OF_SUMS) {
            return String.format(Locale.ROOT, "%." + decimals + "f", 0.0);
        }
        BigDecimal exact = new BigDecimal(figure).round(WITHOUT_NOISE);
        int digitsBeforePoint = exact.precision() - exact.scale(); // below 1 for what starts behind it
        if (digitsBeforePoint + decimals >= leastDigits) {
            return exact.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
        }
        BigDecimal finer =
                exact.round(new MathContext(leastDigits, RoundingMode.HALF_UP)).stripTrailingZeros();
        return finer.setScale(Math.max(decimals, finer.scale())).toPlainString();
    }

    /** The symbol of the unit that {@link #show} uses; empty for a count. */
    public static String symbol(Dimension dimension, UnitSystem system) {
        return Unit.usual(dimension, system).symbol();
    }

    private static int decimals(Dimension dimension, UnitSystem system) {
        boolean us = system == UnitSystem.US;
        return switch (dimension) {
            case LENGTH, VELOCITY -> us ? 1 : 2;
            case AREA -> us ? 0 : 1;
            case PRESSURE -> us ? 1 : 0;
            case FLOW -> us ? 2 : 1;
            case PRECIPITATION -> us ? 2 : 1;
            case VOLUME, RESISTANCE -> 2;
            case ANGLE, COUNT, VOLTAGE, POWER, TIME, WATER -> 0;
            case RATIO, CURRENT -> 1;
        };
    }

    private static String withSymbol(String number, Unit unit) {
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return Math.abs(stripped.scale()) > 18 ? stripped.toString() : stripped.toPlainString();
    }
}
