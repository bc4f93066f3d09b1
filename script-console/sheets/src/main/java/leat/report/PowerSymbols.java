package leat.report;

import leat.draw.Canvas;
import leat.draw.Colour;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;

/**
 * The symbols of the power plan: plain geometry of our own, a few millimetres whatever the scale; lamp and switch are
 * drawn as IEC 60617 does (from memory). Their lines tell when a thing is built.
 */
final class PowerSymbols {

    /** Half of a symbol; labels keep clear of it. */
    static final double HALF_MM = 2.2;

    private static final LineWidth WIDTH = LineWidth.W035;

    private PowerSymbols() {}

    /** A box with bars like breakers one above the other. */
    static void panel(Canvas canvas, double x, double y, PhaseStyle phase) {
        box(canvas, x, y, 1.7, 2.4, phase.symbol(WIDTH, Palette.WHITE));
        for (int i = -1; i <= 1; i++) {
            canvas.shape(PenPath.line(x - 1, y + 1.3 * i, x + 1, y + 1.3 * i), stroke(phase));
        }
    }

    /** A ring with two short bars in it; a bar under it if it protects itself. */
    static void outlet(Canvas canvas, double x, double y, PhaseStyle phase, boolean groundFault) {
        canvas.shape(PenPath.circle(x, y, 1.6), phase.symbol(WIDTH, Palette.WHITE));
        canvas.shape(PenPath.line(x - 0.5, y - 0.7, x - 0.5, y + 0.7), stroke(phase));
        canvas.shape(PenPath.line(x + 0.5, y - 0.7, x + 0.5, y + 0.7), stroke(phase));
        if (groundFault) {
            canvas.shape(PenPath.line(x - 1.6, y + 2.3, x + 1.6, y + 2.3), stroke(phase));
        }
    }

    /** A ring with a cross. */
    static void luminaire(Canvas canvas, double x, double y, PhaseStyle phase) {
        double r = 1.5;
        double d = r / Math.sqrt(2);
        canvas.shape(PenPath.circle(x, y, r), phase.symbol(WIDTH, Palette.WHITE));
        canvas.shape(PenPath.line(x - d, y - d, x + d, y + d), stroke(phase));
        canvas.shape(PenPath.line(x - d, y + d, x + d, y - d), stroke(phase));
    }

    /** A small ring with an arm that ends in a hook. */
    static void lightSwitch(Canvas canvas, double x, double y, PhaseStyle phase) {
        canvas.shape(PenPath.polyline(x + 0.5, y - 0.5, x + 1.7, y - 2.1, x + 2.3, y - 1.6), stroke(phase));
        canvas.shape(PenPath.circle(x, y, 0.8), phase.symbol(WIDTH, Palette.WHITE));
    }

    /** A box with a triangle: supply enters a structure. */
    static void feed(Canvas canvas, double x, double y, PhaseStyle phase, Colour colour) {
        box(canvas, x, y, 1.9, 1.9, phase.symbol(WIDTH, Palette.WHITE));
        canvas.shape(
                PenPath.polygon(x - 1.1, y + 0.9, x + 1.1, y + 0.9, x, y - 1.2),
                phase == PhaseStyle.NOW ? Style.fill(colour) : stroke(phase));
    }

    /** A box with the hands of a clock. */
    static void controller(Canvas canvas, double x, double y, PhaseStyle phase) {
        box(canvas, x, y, 2.2, 2.2, phase.symbol(WIDTH, Palette.WHITE));
        canvas.shape(PenPath.circle(x, y, 1.6), Style.line(LineWidth.W018, ink(phase)));
        canvas.shape(PenPath.polyline(x, y - 1.3, x, y, x + 0.9, y + 0.5), stroke(phase));
    }

    /** Two rings that overlap, as IEC 60617 draws a transformer. */
    static void transformer(Canvas canvas, double x, double y, PhaseStyle phase) {
        canvas.shape(PenPath.circle(x - 0.7, y, 1.3), phase.symbol(WIDTH, Palette.WHITE));
        canvas.shape(PenPath.circle(x + 0.7, y, 1.3), stroke(phase));
    }

    /** Two strokes across the end of what is laid ahead, and a tag. */
    static void earlyEnd(Canvas canvas, double x, double y) {
        Style line = Style.line(LineWidth.W050, Palette.BLACK);
        canvas.shape(PenPath.line(x - 1.5, y + 2.6, x + 1.5, y + 2.6), line);
        canvas.shape(
                PenPath.polygon(x + 2, y + 1.4, x + 5.2, y + 1.4, x + 5.2, y + 3.8, x + 2, y + 3.8, x + 1.4, y + 2.6),
                Style.line(LineWidth.W018, Palette.BLACK).withFill(Palette.WHITE));
        canvas.text(x + 3.5, y + 3.7, "E", Lettering.small().anchored(Lettering.Anchor.MIDDLE));
    }

    private static void box(Canvas canvas, double x, double y, double halfWidth, double halfHeight, Style style) {
        canvas.shape(
                PenPath.polygon(
                        x - halfWidth,
                        y - halfHeight,
                        x + halfWidth,
                        y - halfHeight,
                        x + halfWidth,
                        y + halfHeight,
                        x - halfWidth,
                        y + halfHeight),
                style);
    }

    private static Style stroke(PhaseStyle phase) {
        return Style.line(LineWidth.W025, ink(phase));
    }

    private static Colour ink(PhaseStyle phase) {
        return phase == PhaseStyle.EXISTING ? Palette.DARK_GREY : Palette.BLACK;
    }
}
