package leat.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import leat.calc.digging.LaidDepth;
import leat.calc.digging.LaidKind;
import leat.calc.digging.TrenchDig;
import leat.draw.Canvas;
import leat.draw.Colour;
import leat.draw.Hatch;
import leat.draw.Legend;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Scale;
import leat.draw.Style;
import leat.draw.TextBlock;
import leat.model.quantity.Length;
import leat.model.quantity.UnitSystem;

/** Draws one trench cut across, to scale, with its width, its depth and the cover of what lies in it. */
final class CrossSection {

    private static final double DIMENSION_MM = 16;

    /** For names and covers beside the trench. */
    private static final double NAMES_MM = 50;

    private static final double TITLE_MM = 13;
    private static final double FOOT_MM = 8;
    private static final double EARTH_MM = 4;
    private static final double LABELS_MM = 5;
    private static final Lettering SMALL = Lettering.small();
    private static final Style THIN = Style.line(LineWidth.W018, Palette.BLACK);

    private final Canvas canvas;
    private final Legend legend;
    private final Scale scale;
    private final UnitSystem units;

    CrossSection(Canvas canvas, Legend legend, Scale scale, UnitSystem units) {
        this.canvas = canvas;
        this.legend = legend;
        this.scale = scale;
        this.units = units;
    }

    /** Room that one takes. */
    static double widthMm(TrenchKind kind, Scale scale) {
        return DIMENSION_MM + scale.mm(kind.example().width().metres()) + EARTH_MM + LABELS_MM + NAMES_MM;
    }

    static double heightMm(TrenchKind kind, Scale scale) {
        TrenchDig dig = kind.example();
        double earthMm = TITLE_MM + scale.mm(dig.depth().metres()) + EARTH_MM + FOOT_MM;
        double namesMm = TITLE_MM
                + dig.laid().stream()
                        .mapToDouble(laid -> scale.mm(laid.cover().metres()))
                        .min()
                        .orElse(0)
                + dig.laid().size() * SMALL.leadingMm()
                + SMALL.leadingMm();
        return Math.max(earthMm, namesMm);
    }

    /** Draws it with its upper left corner at (x, y). */
    void draw(TrenchKind kind, double x, double y) {
        TrenchDig dig = kind.example();
        canvas.text(x, y + 3.5, kind.letter(), Lettering.of(3.5).inBold());
        String names = kind.trenches().stream().map(TrenchPainter::shortName).collect(Collectors.joining(", "));
        canvas.text(x + 9, y + 3.5, TextBlock.cut(names, widthMm(kind, scale) - 14, SMALL), SMALL);
        double left = x + DIMENSION_MM;
        double right = left + scale.mm(dig.width().metres());
        double grade = y + TITLE_MM;
        double bottom = grade + scale.mm(dig.depth().metres());
        canvas.beginItem("trench section " + kind.letter(), names);
        earth(left, right, grade, bottom);
        List<double[]> places = things(dig, left, right, grade);
        double labels = right + EARTH_MM + LABELS_MM;
        name(dig, places, labels, NAMES_MM, kind.trenches().size() == 1);
        canvas.endItem();
        depth(dig.depth(), left, grade, bottom);
        width(dig.width(), left, right, bottom + EARTH_MM);
    }

    private void earth(double left, double right, double grade, double bottom) {
        Hatch hatch = new Hatch(Hatch.Pattern.LINES, 1.6, 45, LineWidth.W013, Palette.GREY);
        double outer = EARTH_MM;
        PenPath around = PenPath.polygon(
                left - outer,
                grade,
                left,
                grade,
                left,
                bottom,
                right,
                bottom,
                right,
                grade,
                right + outer,
                grade,
                right + outer,
                bottom + outer,
                left - outer,
                bottom + outer);
        canvas.shape(around, Style.hatch(hatch));
        canvas.shape(
                PenPath.polyline(
                        left - outer,
                        grade,
                        left,
                        grade,
                        left,
                        bottom,
                        right,
                        bottom,
                        right,
                        grade,
                        right + outer,
                        grade),
                Style.line(LineWidth.W050, Palette.BLACK));
        legend.add("1", "earth that stays; heavy line: finished grade and sides of the trench", (c, box) -> {
            c.shape(PenPath.box(box), Style.hatch(hatch));
            c.shape(
                    PenPath.line(box.left(), box.top(), box.right(), box.top()),
                    Style.line(LineWidth.W050, Palette.BLACK));
        });
    }

    /** Each layer spread over the width, in the order of laying; answers the middle of each thing. */
    private List<double[]> things(TrenchDig dig, double left, double right, double grade) {
        List<double[]> places = new ArrayList<>();
        int from = 0;
        while (from < dig.laid().size()) {
            int to = from;
            double sumMm = 0;
            while (to < dig.laid().size()
                    && sameLayer(dig.laid().get(from), dig.laid().get(to))) {
                sumMm += scale.mm(dig.laid().get(to).outside().metres());
                to++;
            }
            double gapMm = Math.max(0, (right - left - sumMm) / (to - from + 1));
            double at = left + gapMm;
            for (LaidDepth laid : dig.laid().subList(from, to)) {
                double radius = scale.mm(laid.outside().metres()) / 2;
                double centreY = grade + scale.mm(laid.cover().metres()) + radius;
                thing(laid, at + radius, centreY, radius);
                places.add(new double[] {at + radius, centreY});
                at += 2 * radius + gapMm;
            }
            from = to;
        }
        return places;
    }

    private static boolean sameLayer(LaidDepth one, LaidDepth other) {
        return one.layer().equals(other.layer());
    }

    private void thing(LaidDepth laid, double x, double y, double radius) {
        Style style = PhaseStyle.of(laid.phase()).symbol(LineWidth.W025, colour(laid.kind()));
        canvas.shape(PenPath.circle(x, y, Math.max(0.6, radius)), style);
        legend.add(
                "2-" + laid.kind().ordinal(),
                letter(laid.kind()) + ": " + laid.kind().label(),
                (c, box) -> c.shape(
                        PenPath.circle(box.centreX(), box.centreY(), 1.4),
                        PhaseStyle.NOW.symbol(LineWidth.W025, colour(laid.kind()))));
    }

    private static Colour colour(LaidKind kind) {
        return switch (kind) {
            case MAIN -> Palette.BLUE;
            case LATERAL -> Palette.GREEN;
            case POWER -> Palette.VERMILION;
            case CONTROL -> Palette.BLACK;
        };
    }

    private static String letter(LaidKind kind) {
        return switch (kind) {
            case MAIN -> "M";
            case LATERAL -> "L";
            case POWER -> "P";
            case CONTROL -> "V";
        };
    }

    /** From the top downwards, no two on one line; by name if there is but one trench of the kind. */
    private void name(TrenchDig dig, List<double[]> places, double x, double widthMm, boolean named) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            order.add(i);
        }
        // The right one of a layer first, so that no leader crosses another.
        order.sort(Comparator.comparing((Integer i) -> dig.laid().get(i).layer())
                .reversed()
                .thenComparing(i -> -places.get(i)[0]));
        double least = Double.NEGATIVE_INFINITY;
        for (int i : order) {
            LaidDepth laid = dig.laid().get(i);
            double[] at = places.get(i);
            double y = Math.max(at[1], least);
            least = y + SMALL.leadingMm();
            canvas.shape(PenPath.line(at[0], at[1], x - 0.6, y), Style.line(LineWidth.W013, Palette.DARK_GREY));
            canvas.text(x, y + SMALL.capitalMm() / 2, TextBlock.cut(label(laid, named), widthMm, SMALL), SMALL);
        }
    }

    private String label(LaidDepth laid, boolean named) {
        return letter(laid.kind()) + ", cover " + Words.small(laid.cover(), units)
                + (named ? ": " + laid.id().name() : "");
    }

    private void depth(Length depth, double left, double grade, double bottom) {
        double x = left - EARTH_MM - 3;
        canvas.shape(PenPath.line(x, grade, x, bottom), THIN);
        tick(x, grade);
        tick(x, bottom);
        canvas.text(
                x - 1,
                (grade + bottom) / 2,
                Words.small(depth, units),
                SMALL.turned(-90).anchored(Lettering.Anchor.MIDDLE));
    }

    private void width(Length width, double left, double right, double earthBottom) {
        double y = earthBottom + 2.5;
        canvas.shape(PenPath.line(left, y, right, y), THIN);
        tick(left, y);
        tick(right, y);
        canvas.text(
                (left + right) / 2,
                y + 1.2 + SMALL.capitalMm(),
                Words.small(width, units),
                SMALL.anchored(Lettering.Anchor.MIDDLE));
    }

    /** A slanting stroke at the end of a dimension line. */
    private void tick(double x, double y) {
        canvas.shape(PenPath.line(x - 0.8, y + 0.8, x + 0.8, y - 0.8), THIN);
    }
}
