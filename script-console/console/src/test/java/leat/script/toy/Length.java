package leat.script.toy;

import java.util.Locale;
import leat.model.fault.LeatException;

/** A quantity of one figure. */
public record Length(double metres) implements Comparable<Length> {

    public Length {
        if (!(metres >= 0)) {
            throw new LeatException("length: metres is " + metres + "; it must be at least 0");
        }
    }

    public Length plus(Length other) {
        return new Length(metres + other.metres);
    }

    public double inFeet() {
        return metres / 0.3048;
    }

    public static Length ofInches(double inches) {
        return new Length(inches * 0.0254);
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.1f ft", inFeet());
    }
}
