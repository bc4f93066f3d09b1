package leat.report;

import leat.draw.Canvas;
import leat.draw.Colour;
import leat.draw.Dash;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;

/**
 * The symbols of the plan: plain geometry, a few millimetres whatever the scale. Sizes in millimetres on the sheet,
 * directions clockwise from the top of the sheet.
 */
final class Symbols {

    /** Half of a head's symbol; labels keep clear of it. */
    static final double HEAD_MM = 1.15;

    /** Half of a device's symbol. */
    static final double DEVICE_MM = 2.4;

    private static final Style OUTLINE = Style.line(LineWidth.W025, Palette.BLACK);

    private Symbols() {}

    /** A disc with a pointer to the middle of its arc. */
    static void rotor(Canvas canvas, double x, double y, Colour colour, double pointDegrees) {
        pointer(canvas, x, y, pointDegrees);
        canvas.shape(PenPath.circle(x, y, HEAD_MM), OUTLINE.withFill(colour));
    }

    /** The same for a head that turns all the way round: an eye in the middle instead of a pointer. */
    static void fullRotor(Canvas canvas, double x, double y, Colour colour) {
        canvas.shape(PenPath.circle(x, y, HEAD_MM), OUTLINE.withFill(colour));
        eye(canvas, x, y);
    }

    /** A square with a pointer. */
    static void spray(Canvas canvas, double x, double y, Colour colour, double pointDegrees) {
        pointer(canvas, x, y, pointDegrees);
        square(canvas, x, y, colour);
    }

    static void fullSpray(Canvas canvas, double x, double y, Colour colour) {
        square(canvas, x, y, colour);
        eye(canvas, x, y);
    }

    private static void square(Canvas canvas, double x, double y, Colour colour) {
        canvas.shape(PenPath.polygon(x - 1, y - 1, x + 1, y - 1, x + 1, y + 1, x - 1, y + 1), OUTLINE.withFill(colour));
    }

    private static void eye(Canvas canvas, double x, double y) {
        canvas.shape(PenPath.circle(x, y, 0.4), Style.fill(Palette.WHITE));
    }

    private static void pointer(Canvas canvas, double x, double y, double degrees) {
        double radians = Math.toRadians(degrees);
        canvas.shape(
                PenPath.line(x, y, x + 2.3 * Math.sin(radians), y - 2.3 * Math.cos(radians)),
                Style.line(LineWidth.W035, Palette.BLACK));
    }

    /** A square on its corner. */
    static void bubbler(Canvas canvas, double x, double y, Colour colour) {
        canvas.shape(PenPath.polygon(x, y - 1.5, x + 1.5, y, x, y + 1.5, x - 1.5, y), OUTLINE.withFill(colour));
    }

    /** Two triangles tip to tip, as flow diagrams draw a valve (ISO 14617); a spare one is empty and dashed. */
    static void valve(Canvas canvas, double x, double y, Colour colour, boolean spare) {
        PenPath path = PenPath.polygon(x - 1.8, y - 1.1, x + 1.8, y + 1.1, x + 1.8, y - 1.1, x - 1.8, y + 1.1);
        Style style = spare ? OUTLINE.withDash(Dash.SHORT_DASHED).withFill(Palette.WHITE) : OUTLINE.withFill(colour);
        canvas.shape(path, style);
    }

    /** A box with a valve in it. */
    static void manifold(Canvas canvas, double x, double y) {
        canvas.shape(
                PenPath.polygon(x - 2.6, y - 1.8, x + 2.6, y - 1.8, x + 2.6, y + 1.8, x - 2.6, y + 1.8),
                Style.line(LineWidth.W035, Palette.BLACK).withFill(Palette.WHITE));
        valve(canvas, x, y, Palette.BLACK, false);
    }

    /** A ring around a disc: the public main. */
    static void mains(Canvas canvas, double x, double y, Colour colour) {
        canvas.shape(
                PenPath.circle(x, y, 2.2),
                Style.line(LineWidth.W035, Palette.BLACK).withFill(Palette.WHITE));
        canvas.shape(PenPath.circle(x, y, 1.2), Style.fill(colour));
    }

    /** A ring around a triangle that points up, as flow diagrams draw a pump (ISO 14617). */
    static void pump(Canvas canvas, double x, double y, Colour colour) {
        canvas.shape(
                PenPath.circle(x, y, 2.2),
                Style.line(LineWidth.W035, Palette.BLACK).withFill(Palette.WHITE));
        canvas.shape(PenPath.polygon(x, y - 2.2, x + 1.9, y + 1.1, x - 1.9, y + 1.1), Style.fill(colour));
    }

    /** An open vessel with water in it. */
    static void tank(Canvas canvas, double x, double y, Colour colour) {
        canvas.shape(
                PenPath.polygon(x - 2.2, y - 0.4, x + 2.2, y - 0.4, x + 2.2, y + 2.2, x - 2.2, y + 2.2),
                Style.fill(colour));
        canvas.shape(
                PenPath.polyline(x - 2.2, y - 2.2, x - 2.2, y + 2.2, x + 2.2, y + 2.2, x + 2.2, y - 2.2),
                Style.line(LineWidth.W035, Palette.BLACK));
    }

    /** A letter in a ring. */
    static void meter(Canvas canvas, double x, double y) {
        canvas.shape(
                PenPath.circle(x, y, 2.3),
                Style.line(LineWidth.W025, Palette.BLACK).withFill(Palette.WHITE));
        canvas.text(x, y + 1.1, "M", Lettering.small().anchored(Lettering.Anchor.MIDDLE));
    }

    /** A box with two angles that point downstream: two checks, one behind the other. */
    static void backflow(Canvas canvas, double x, double y, double downstreamDegrees) {
        double radians = Math.toRadians(downstreamDegrees);
        Turned at = new Turned(x, y, Math.sin(radians), -Math.cos(radians));
        canvas.shape(
                PenPath.polygon(at.points(-2.6, -1.7, 2.6, -1.7, 2.6, 1.7, -2.6, 1.7)),
                Style.line(LineWidth.W035, Palette.BLACK).withFill(Palette.WHITE));
        Style angle = Style.line(LineWidth.W035, Palette.BLACK);
        canvas.shape(PenPath.polyline(at.points(-1.6, -1.1, 0, 0, -1.6, 1.1)), angle);
        canvas.shape(PenPath.polyline(at.points(0.2, -1.1, 1.8, 0, 0.2, 1.1)), angle);
    }

    /** A disc with a cross handle. */
    static void bib(Canvas canvas, double x, double y, Colour colour, PhaseStyle phase) {
        Style line = Style.line(LineWidth.W035, Palette.BLACK);
        canvas.shape(PenPath.line(x, y, x, y - 2.3), line);
        canvas.shape(PenPath.line(x - 1.2, y - 2.3, x + 1.2, y - 2.3), line);
        canvas.shape(PenPath.circle(x, y, 1.2), phase.symbol(LineWidth.W025, colour));
    }

    /** Coordinates along and across a direction. */
    private record Turned(double x, double y, double alongX, double alongY) {

        double[] points(double... alongAcross) {
            double[] xy = new double[alongAcross.length];
            for (int i = 0; i < xy.length; i += 2) {
                xy[i] = x + alongAcross[i] * alongX - alongAcross[i + 1] * alongY;
                xy[i + 1] = y + alongAcross[i] * alongY + alongAcross[i + 1] * alongX;
            }
            return xy;
        }
    }
}
