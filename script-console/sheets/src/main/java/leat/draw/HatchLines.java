package leat.draw;

/**
 * The strokes of a hatch inside an outline, cut where they leave it. Strokes instead of a repeated tile: a browser prints
 * a tile as a picture of the whole sheet, a hundred times as large and never as sharp.
 */
final class HatchLines {

    /** How far the outer blades of a tuft lean out. */
    private static final double BLADE_MM = 0.6;

    private static final double BLADE_UP_MM = 0.8;
    private static final double TUFT_MM = 1.1;

    private final Hatch hatch;
    private final Rings rings;
    private final PenPath.Builder strokes = PenPath.builder();

    private HatchLines(PenPath outline, Hatch hatch) {
        this.hatch = hatch;
        this.rings = new Rings(outline);
    }

    /**
     * All strokes as one path, empty if none falls inside. Rows are counted from the corner of the sheet, so that
     * neighbours match; an outline too low for two rows has one through its middle.
     */
    static PenPath.Builder within(PenPath outline, Hatch hatch) {
        HatchLines lines = new HatchLines(outline, hatch);
        if (hatch.pattern() == Hatch.Pattern.TUFTS) {
            lines.tufts();
        } else {
            lines.rows(hatch.angleDegrees());
            if (hatch.pattern() == Hatch.Pattern.CROSSED_LINES) {
                lines.rows(hatch.angleDegrees() + 90);
            }
        }
        return lines.strokes;
    }

    /** Dots are points with round caps, three times as wide as a line, or they would not print. */
    static double strokeMm(Hatch hatch) {
        return hatch.pattern() == Hatch.Pattern.DOTS
                ? 3 * hatch.width().mm()
                : hatch.width().mm();
    }

    private void rows(double degrees) {
        Rings.Turned turned = rings.turned(degrees);
        double step = hatch.spacingMm();
        for (double v = first(turned.low(), turned.high(), step, step / 2); v < turned.high(); v += step) {
            double[] spans = turned.spans(v);
            for (int i = 0; i + 1 < spans.length; i += 2) {
                if (hatch.pattern() == Hatch.Pattern.DOTS) {
                    dots(turned, spans[i], spans[i + 1], v);
                } else {
                    stroke(turned, spans[i], v, spans[i + 1], v);
                }
            }
        }
    }

    /** A row of dots is a line from the first to just past the last, which is drawn with nothing between dots. */
    private void dots(Rings.Turned turned, double from, double to, double v) {
        double step = hatch.spacingMm();
        double start = Math.ceil(from / step) * step;
        if (start <= to) {
            double end = Math.floor(to / step) * step;
            stroke(turned, start, v, end + step / 20, v);
        }
    }

    /** Set like bricks: every other row half a step on. */
    private void tufts() {
        Rings.Turned turned = rings.turned(hatch.angleDegrees());
        double step = hatch.spacingMm();
        boolean narrow = turned.right() - turned.left() < 2 * step;
        double middle = (turned.left() + turned.right()) / 2;
        double v = first(turned.low(), turned.high(), step / 2, step / 4);
        for (boolean even = Math.round(v * 2 / step) % 2 == 0; v < turned.high(); v += step / 2, even = !even) {
            double[] feet = turned.spans(v);
            double[] tips = turned.spans(v - TUFT_MM);
            double shift = even ? step / 4 : 3 * step / 4;
            double from = narrow ? middle : Math.floor(turned.left() / step) * step + shift;
            for (double u = from; u < turned.right(); u += step) {
                if (holds(feet, u) && holds(tips, u)) {
                    tuft(turned, u, v);
                }
            }
        }
    }

    /** Only whole tufts: half a blade reads as a mark of something else. */
    private static boolean holds(double[] spans, double u) {
        for (int i = 0; i + 1 < spans.length; i += 2) {
            if (spans[i] <= u - BLADE_MM && u + BLADE_MM <= spans[i + 1]) {
                return true;
            }
        }
        return false;
    }

    private void tuft(Rings.Turned turned, double u, double v) {
        stroke(turned, u, v, u, v - TUFT_MM);
        strokes.moveTo(x(turned, u - BLADE_MM, v - BLADE_UP_MM), y(turned, u - BLADE_MM, v - BLADE_UP_MM))
                .lineTo(x(turned, u, v), y(turned, u, v))
                .lineTo(x(turned, u + BLADE_MM, v - BLADE_UP_MM), y(turned, u + BLADE_MM, v - BLADE_UP_MM));
    }

    private static double first(double low, double high, double step, double shift) {
        return high - low < 2 * step ? (low + high) / 2 : Math.ceil((low - shift) / step) * step + shift;
    }

    private void stroke(Rings.Turned turned, double fromU, double fromV, double toU, double toV) {
        strokes.moveTo(x(turned, fromU, fromV), y(turned, fromU, fromV))
                .lineTo(x(turned, toU, toV), y(turned, toU, toV));
    }

    private static double x(Rings.Turned turned, double u, double v) {
        return hundredth(u * turned.cos() + v * turned.sin());
    }

    private static double y(Rings.Turned turned, double u, double v) {
        return hundredth(v * turned.cos() - u * turned.sin());
    }

    /** Finer would only make the file larger. */
    private static double hundredth(double mm) {
        return Math.rint(mm * 100) / 100;
    }
}
