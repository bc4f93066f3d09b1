package leat.report;

import java.util.Locale;
import leat.model.quantity.Dimension;
import leat.model.quantity.Length;
import leat.model.quantity.UnitSystem;

/** Lengths as finely as a tape is read, which is finer than elsewhere on the page. */
final class TapeWords {

    private static final int EIGHTHS_IN_A_FOOT = 96;

    private TapeWords() {}

    /** On the tape: feet, inches and eighths, or metres to the millimetre. */
    static Cell tape(Length length, UnitSystem units) {
        return units == UnitSystem.US
                ? new Cell(feetAndInches(length), true)
                : new Cell(String.format(Locale.ROOT, "%.3f", length.metres()), true);
    }

    static String tapeHead(String name, UnitSystem units) {
        return units == UnitSystem.US ? name + ", ft in" : Table.head(name, Dimension.LENGTH, units);
    }

    /** A coordinate: hundredths of a foot, or millimetres. */
    static Cell coordinate(Length length, UnitSystem units) {
        double figure = units == UnitSystem.US ? length.inFeet() : length.metres();
        String text = String.format(Locale.ROOT, units == UnitSystem.US ? "%.2f" : "%.3f", figure);
        return new Cell(text.matches("-0\\.0+") ? text.substring(1) : text, true);
    }

    /** Such as {@code 12' 4 1/8"}; to the nearest eighth. */
    static String feetAndInches(Length length) {
        long eighths = Math.round(length.inFeet() * EIGHTHS_IN_A_FOOT);
        long feet = eighths / EIGHTHS_IN_A_FOOT;
        long inches = eighths % EIGHTHS_IN_A_FOOT / 8;
        long rest = eighths % 8;
        return feet + "' " + inches + (rest == 0 ? "" : " " + fraction(rest)) + "\"";
    }

    private static String fraction(long eighths) {
        if (eighths % 4 == 0) {
            return "1/2";
        }
        return eighths % 2 == 0 ? eighths / 2 + "/4" : eighths + "/8";
    }
}
