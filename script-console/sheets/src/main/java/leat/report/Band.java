package leat.report;

import leat.draw.Canvas;
import leat.draw.PenPath;
import leat.draw.Style;

/** A line with a breadth: piece by piece, with rounded joints, so an opaque fill reads as one. */
final class Band {

    private Band() {}

    /** Fills the band; the style should have an opaque fill or a hatch, and no line. */
    static void fill(Canvas canvas, double[] xy, double halfMm, Style style) {
        for (int i = 0; i + 3 < xy.length; i += 2) {
            double dx = xy[i + 2] - xy[i];
            double dy = xy[i + 3] - xy[i + 1];
            double lengthMm = Math.hypot(dx, dy);
            if (lengthMm == 0) {
                continue;
            }
            double acrossX = -dy / lengthMm * halfMm;
            double acrossY = dx / lengthMm * halfMm;
            canvas.shape(
                    PenPath.polygon(
                            xy[i] + acrossX,
                            xy[i + 1] + acrossY,
                            xy[i + 2] + acrossX,
                            xy[i + 3] + acrossY,
                            xy[i + 2] - acrossX,
                            xy[i + 3] - acrossY,
                            xy[i] - acrossX,
                            xy[i + 1] - acrossY),
                    style);
        }
        for (int i = 0; i + 1 < xy.length; i += 2) {
            canvas.shape(PenPath.circle(xy[i], xy[i + 1], halfMm), style);
        }
    }
}
