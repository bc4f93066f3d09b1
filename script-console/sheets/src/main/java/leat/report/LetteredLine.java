package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Colour;
import leat.draw.Lettering;
import leat.draw.PenPath;
import leat.draw.Style;
import org.jspecify.annotations.Nullable;

/** A line broken here and there by the letter of what it carries, so that nothing hangs on its colour. */
final class LetteredLine {

    /** From one letter to the next. */
    private static final double EVERY_MM = 40;

    private static final double STEP_MM = 1;
    private static final Lettering LETTER =
            Lettering.small().inBold().anchored(Lettering.Anchor.MIDDLE).withHalo();

    private LetteredLine() {}

    /** A sample for a legend: one letter in the middle. */
    static void sample(Canvas canvas, Box box, Style style, String letter, Colour colour) {
        canvas.shape(PenPath.polyline(across(box)), style);
        letter(canvas, box.centreX(), box.centreY(), letter, colour);
    }

    /** From the left to the right of a box, through its middle. */
    static double[] across(Box box) {
        return new double[] {box.left(), box.centreY(), box.right(), box.centreY()};
    }

    static void letter(Canvas canvas, double x, double y, String letter, Colour colour) {
        Lettering lettering = LETTER.in(colour);
        canvas.text(x, y + lettering.capitalMm() / 2, letter, lettering);
    }

    /** The room that a letter takes there. */
    static Box room(double x, double y, String letter) {
        return Box.around(x, y, LETTER.widthMm(letter) / 2 + 0.3, LETTER.capitalMm() / 2 + 0.3);
    }

    /**
     * Where the letters stand: each in the middle of its share of the line or as near to that as there is room, so that
     * those of neighbours do not cover each other. A share without room goes without.
     *
     * @param free whether a letter may stand there; asked for one place after the other
     */
    static List<double[]> places(double[] xy, Predicate<double[]> free) {
        double lengthMm = lengthMm(xy);
        List<double[]> places = new ArrayList<>();
        for (double middle = EVERY_MM / 2; middle < lengthMm; middle += EVERY_MM) {
            double[] place = near(xy, middle, Math.min(middle + EVERY_MM / 2, lengthMm) - middle, free);
            if (place != null) {
                places.add(place);
            }
        }
        return places;
    }

    private static double @Nullable [] near(double[] xy, double middle, double halfMm, Predicate<double[]> free) {
        for (double aside = 0; aside < halfMm; aside += STEP_MM) {
            for (double at : new double[] {middle + aside, middle - aside}) {
                double[] place = along(xy, at);
                if (free.test(place)) {
                    return place;
                }
            }
        }
        return null;
    }

    private static double lengthMm(double[] xy) {
        double sumMm = 0;
        for (int i = 0; i + 3 < xy.length; i += 2) {
            sumMm += Math.hypot(xy[i + 2] - xy[i], xy[i + 3] - xy[i + 1]);
        }
        return sumMm;
    }

    private static double[] along(double[] xy, double mm) {
        double left = mm;
        for (int i = 0; i + 3 < xy.length; i += 2) {
            double lengthMm = Math.hypot(xy[i + 2] - xy[i], xy[i + 3] - xy[i + 1]);
            if (left <= lengthMm && lengthMm > 0) {
                double share = left / lengthMm;
                return new double[] {xy[i] + (xy[i + 2] - xy[i]) * share, xy[i + 1] + (xy[i + 3] - xy[i + 1]) * share};
            }
            left -= lengthMm;
        }
        return new double[] {xy[xy.length - 2], xy[xy.length - 1]};
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
