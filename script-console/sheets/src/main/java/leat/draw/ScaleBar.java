package leat.draw;

import java.util.Locale;

/** A bar that measures the sheet even when it was printed at another size, in feet and in metres. */
public final class ScaleBar {

    /** How high the bar is with its figures, in millimetres. */
    public static final double HEIGHT_MM = 15;

    private static final double METRES_PER_FOOT = 0.3048;
    private static final double[] STEPS = {
        0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1_000, 2_000, 5_000, 10_000
    };
    private static final int LEAST_FIELDS = 2;
    private static final int MOST_FIELDS = 5;
    private static final double FIGURE_ROOM_MM = 9;
    private static final double BAR_MM = 1.4;

    private ScaleBar() {}

    /**
     * Draws the bar with its upper left corner at (x, top), not wider than {@code mostMm}.
     *
     * @param us feet above and metres below, or else the other way round
     */
    public static void draw(Canvas canvas, boolean us, Scale scale, double x, double top, double mostMm) {
        double figuresMm = Lettering.small().widthMm("1000 ft");
        double roomMm = mostMm - figuresMm;
        row(canvas, scale, x, top + 3.6, top + 2.6, us ? METRES_PER_FOOT : 1, us ? "ft" : "m", roomMm);
        row(canvas, scale, x, top + 9, top + 9 + BAR_MM + 3.4, us ? 1 : METRES_PER_FOOT, us ? "m" : "ft", roomMm);
    }

    private static void row(
            Canvas canvas, Scale scale, double x, double y, double foot, double unitM, String unit, double roomMm) {
        double step = STEPS[0];
        int fields = LEAST_FIELDS;
        for (double candidate : STEPS) {
            for (int count = LEAST_FIELDS; count <= MOST_FIELDS; count++) {
                double lengthMm = count * scale.mm(candidate * unitM);
                // Of bars as long as each other the one with fewer fields, which comes later.
                if (lengthMm <= roomMm && lengthMm >= fields * scale.mm(step * unitM)) {
                    step = candidate;
                    fields = count;
                }
            }
        }
        double fieldMm = scale.mm(step * unitM);
        Lettering figures = Lettering.small().anchored(Lettering.Anchor.MIDDLE);
        for (int i = 0; i <= fields; i++) {
            double at = x + 2 + i * fieldMm;
            if (i < fields) {
                Style style =
                        Style.line(LineWidth.W018, Palette.BLACK).withFill(i % 2 == 0 ? Palette.BLACK : Palette.WHITE);
                canvas.shape(PenPath.box(new Box(at, y, at + fieldMm, y + BAR_MM)), style);
            }
            if (fieldMm >= FIGURE_ROOM_MM || i == 0 || i == fields) {
                canvas.text(at, foot, figure(i * step) + (i == fields ? " " + unit : ""), figures);
            }
        }
    }

    private static String figure(double value) {
        return value == Math.rint(value) ? Long.toString(Math.round(value)) : String.format(Locale.ROOT, "%.1f", value);
    }
}
