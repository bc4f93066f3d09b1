package leat.draw;

/**
 * A repeated pattern that fills an area. Drawn over the fill colour, if there is one.
 *
 * @param pattern what is repeated
 * @param spacingMm between lines or dots; more than 0
 * @param angleDegrees of the lines, counter-clockwise from the sheet's right
 * @param width of a line, or of a dot
 * @param colour of lines and dots
 */
public record Hatch(Pattern pattern, double spacingMm, double angleDegrees, LineWidth width, Colour colour) {

    /** What is repeated. */
    public enum Pattern {
        LINES,
        CROSSED_LINES,
        DOTS,
        /** Rows of short marks set like bricks: reads as grass or planting. */
        TUFTS
    }

    public Hatch {
        if (!(spacingMm > 0)) {
            throw new IllegalArgumentException("hatch: spacing is " + spacingMm + " mm; it must be more than 0");
        }
    }
}
