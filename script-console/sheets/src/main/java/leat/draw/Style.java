package leat.draw;

import org.jspecify.annotations.Nullable;

/**
 * How a shape is drawn.
 *
 * @param width of the line
 * @param line colour of the line; null for no line
 * @param dash pattern of the line
 * @param fill colour inside; null for none
 * @param fillOpacity 0 to 1
 * @param hatch over the fill; null for none
 */
public record Style(
        LineWidth width,
        @Nullable Colour line,
        Dash dash,
        @Nullable Colour fill,
        double fillOpacity,
        @Nullable Hatch hatch) {

    public Style {
        if (!(fillOpacity >= 0 && fillOpacity <= 1)) {
            throw new IllegalArgumentException("style: fill opacity is " + fillOpacity + "; it must be 0 to 1");
        }
    }

    /** A solid line and nothing inside. */
    public static Style line(LineWidth width, Colour colour) {
        return new Style(width, colour, Dash.SOLID, null, 1, null);
    }

    /** An inside and no line. */
    public static Style fill(Colour colour) {
        return new Style(LineWidth.W013, null, Dash.SOLID, colour, 1, null);
    }

    /** A pattern and no line. */
    public static Style hatch(Hatch hatch) {
        return new Style(LineWidth.W013, null, Dash.SOLID, null, 1, hatch);
    }

    public Style withDash(Dash newDash) {
        return new Style(width, line, newDash, fill, fillOpacity, hatch);
    }

    public Style withLine(LineWidth newWidth, Colour colour) {
        return new Style(newWidth, colour, dash, fill, fillOpacity, hatch);
    }

    public Style withFill(Colour colour) {
        return new Style(width, line, dash, colour, fillOpacity, hatch);
    }

    public Style withFillOpacity(double opacity) {
        return new Style(width, line, dash, fill, opacity, hatch);
    }

    public Style withHatch(Hatch newHatch) {
        return new Style(width, line, dash, fill, fillOpacity, newHatch);
    }
}
