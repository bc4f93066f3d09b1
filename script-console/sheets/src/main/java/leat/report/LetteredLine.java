package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.draw.Canvas;
import leat.draw.Colour;
import leat.draw.Lettering;
import leat.draw.PenPath;
import leat.draw.Style;

/** A line broken here and there by the letter of what it carries, so that nothing hangs on its colour. */
final class LetteredLine {

    /** From one letter to the next. */
    static final double EVERY_MM = 40;

    private LetteredLine() {}

    static void draw(Canvas canvas, double[] xy, Style style, String letter, Colour colour, double everyMm) {
        canvas.shape(PenPath.polyline(xy), style);
        letters(canvas, xy, letter, colour, everyMm);
    }

    /** The letters alone. */
    static void letters(Canvas canvas, double[] xy, String letter, Colour colour, double everyMm) {
        Lettering lettering = Lettering.small()
                .inBold()
                .in(colour)
                .anchored(Lettering.Anchor.MIDDLE)
                .withHalo();
        for (double[] at : places(xy, everyMm)) {
            canvas.text(at[0], at[1] + lettering.capitalMm() / 2, letter, lettering);
        }
    }

    /** Where the letters stand. */
    static List<double[]> places(double[] xy, double everyMm) {
        List<double[]> places = new ArrayList<>();
        double next = everyMm / 2;
        for (int i = 0; i + 3 < xy.length; i += 2) {
            double lengthMm = Math.hypot(xy[i + 2] - xy[i], xy[i + 3] - xy[i + 1]);
            for (; next < lengthMm; next += everyMm) {
                double share = next / lengthMm;
                places.add(new double[] {
                    xy[i] + (xy[i + 2] - xy[i]) * share, xy[i + 1] + (xy[i + 3] - xy[i + 1]) * share
                });
            }
            next -= lengthMm;
        }
        return places;
    }

    /** Index of the longest straight piece: its points begin there. */
    static int longest(double[] xy) {
        int longest = 0;
        double mostMm = -1;
        for (int i = 0; i + 3 < xy.length; i += 2) {
            double lengthMm = Math.hypot(xy[i + 2] - xy[i], xy[i + 3] - xy[i + 1]);
            if (lengthMm > mostMm) {
                mostMm = lengthMm;
                longest = i;
            }
        }
        return longest;
    }
}
