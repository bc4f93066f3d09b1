package leat.draw;

/**
 * How a text is lettered.
 *
 * @param capitalMm height of capitals on paper; at least {@link #LEAST_MM}
 * @param bold whether strokes are heavy
 * @param colour of the strokes
 * @param anchor which part of the line stands at the given point
 * @param turnDegrees clockwise turn of the line about the given point
 * @param halo whether a white edge keeps it readable over lines
 */
public record Lettering(
        double capitalMm, boolean bold, Colour colour, Anchor anchor, double turnDegrees, boolean halo) {

    /** Smaller letters do not survive a copy; between the 1.8 and 2.5 mm of ISO 3098. */
    public static final double LEAST_MM = 2.2;

    /** Which part of the line stands at the given point. */
    public enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String svg;

        Anchor(String svg) {
            this.svg = svg;
        }

        String svg() {
            return svg;
        }
    }

    public Lettering {
        if (!(capitalMm >= LEAST_MM)) {
            throw new IllegalArgumentException(
                    "lettering: capitals are " + capitalMm + " mm; they must be at least " + LEAST_MM + " mm");
        }
    }

    /** Small letters from the left, black. */
    public static Lettering small() {
        return of(LEAST_MM);
    }

    public static Lettering of(double capitalMm) {
        return new Lettering(capitalMm, false, Palette.BLACK, Anchor.START, 0, false);
    }

    public double fontSizeMm() {
        return capitalMm / Typeface.CAPITAL_RATIO;
    }

    /** From one line of text to the next. */
    public double leadingMm() {
        return 1.7 * capitalMm;
    }

    public double widthMm(String text) {
        return Typeface.sans().width(text, fontSizeMm(), bold);
    }

    public Lettering inBold() {
        return new Lettering(capitalMm, true, colour, anchor, turnDegrees, halo);
    }

    public Lettering in(Colour newColour) {
        return new Lettering(capitalMm, bold, newColour, anchor, turnDegrees, halo);
    }

    public Lettering anchored(Anchor newAnchor) {
        return new Lettering(capitalMm, bold, colour, newAnchor, turnDegrees, halo);
    }

    public Lettering turned(double degrees) {
        return new Lettering(capitalMm, bold, colour, anchor, degrees, halo);
    }

    public Lettering withHalo() {
        return new Lettering(capitalMm, bold, colour, anchor, turnDegrees, true);
    }
}
