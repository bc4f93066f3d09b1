package leat.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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

    /** Longer names are cut. */
    private static final double MOST_NAMES_MM = 75;

    /** From the letter of a section to the names of its trenches. */
    private static final double LETTER_MM = 9;

    private static final double TITLE_MM = 13;
    private static final double FOOT_MM = 8;
    private static final double EARTH_MM = 4;
    private static final double LABELS_MM = 5;
    private static final Lettering SMALL = Lettering.small();
    private static final Style GROUND = Style.line(LineWidth.W050, Palette.BLACK);
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
    static double widthMm(TrenchKind kind, Scale scale, UnitSystem units) {
        return DIMENSION_MM + scale.mm(kind.example().width().metres()) + EARTH_MM + LABELS_MM + namesMm(kind, units);
    }

    static double heightMm(TrenchKind kind, Scale scale, UnitSystem units) {
        TrenchDig dig = kind.example();
        double earthMm = scale.mm(dig.depth().metres()) + EARTH_MM + FOOT_MM;
        double coverMm = dig.laid().stream()
                .mapToDouble(laid -> scale.mm(laid.cover().metres()))
                .min()
                .orElse(0);
        return titleMm(kind, scale, units)
                + Math.max(earthMm, coverMm + (dig.laid().size() + 1) * SMALL.leadingMm());
    }

    /** For names and covers beside the trench. */
    private static double namesMm(TrenchKind kind, UnitSystem units) {
        return Math.min(
                MOST_NAMES_MM,
                kind.example().laid().stream()
                        .mapToDouble(laid -> SMALL.widthMm(label(laid, units, isNamed(kind))))
                        .max()
                        .orElse(0));
    }

    /** Things are called by their names if there is but one trench of the kind. */
    private static boolean isNamed(TrenchKind kind) {
        return kind.trenches().size() == 1;
    }

    private static double titleMm(TrenchKind kind, Scale scale, UnitSystem units) {
        return TITLE_MM + (title(kind, scale, units).size() - 1) * SMALL.leadingMm();
    }

    private static List<String> title(TrenchKind kind, Scale scale, UnitSystem units) {
        String names = Words.runs(
                kind.trenches().stream().map(TrenchPainter::shortName).toList());
        return TextBlock.wrap(names, widthMm(kind, scale, units) - LETTER_MM, SMALL);
    }

    /** Draws it with its upper left corner at (x, y). */
    void draw(TrenchKind kind, double x, double y) {
        TrenchDig dig = kind.example();
        List<String> title = title(kind, scale, units);
        canvas.text(x, y + 3.5, kind.letter(), Lettering.of(3.5).inBold());
        for (int i = 0; i < title.size(); i++) {
            canvas.text(x + LETTER_MM, y + 3.5 + i * SMALL.leadingMm(), title.get(i), SMALL);
        }
        double left = x + DIMENSION_MM;
        double right = left + scale.mm(dig.width().metres());
        double grade = y + titleMm(kind, scale, units);
        double bottom = grade + scale.mm(dig.depth().metres());
        canvas.beginItem("trench section " + kind.letter(), String.join(" ", title));
        earth(left, right, grade, bottom);
        List<double[]> places = things(dig, left, right, grade);
        name(dig, places, right + EARTH_MM + LABELS_MM, isNamed(kind));
        canvas.endItem();
        depth(dig.depth(), left, grade, bottom);
        width(dig.width(), left, right, bottom + EARTH_MM);
    }

    private void earth(double left, double right, double grade, double bottom) {
        Hatch hatch = new Hatch(Hatch.Pattern.LINES, 1.6, 45, LineWidth.W013, Palette.GREY);
        double outer = EARTH_MM;
        PenPath.Builder around = ground(left, right, grade, bottom)
                .lineTo(right + outer, bottom + outer)
                .lineTo(left - outer, bottom + outer)
                .close();
        canvas.shape(around.build(), Style.hatch(hatch));
        canvas.shape(ground(left, right, grade, bottom).build(), GROUND);
        legend.add("1", "earth that stays; heavy line: finished grade and sides of the trench", (c, box) -> {
            c.shape(PenPath.box(box), Style.hatch(hatch));
            c.shape(PenPath.line(box.left(), box.top(), box.right(), box.top()), GROUND);
        });
    }

    /** Along the grade, down into the trench and out of it again. */
    private static PenPath.Builder ground(double left, double right, double grade, double bottom) {
        return PenPath.builder()
                .polyline(left - EARTH_MM, grade, left, grade, left, bottom)
                .lineTo(right, bottom)
                .lineTo(right, grade)
                .lineTo(right + EARTH_MM, grade);
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

    /** From the top downwards, no two on one line. */
    private void name(TrenchDig dig, List<double[]> places, double x, boolean named) {
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
            canvas.text(
                    x,
                    y + SMALL.capitalMm() / 2,
                    TextBlock.cut(label(laid, units, named), MOST_NAMES_MM, SMALL),
                    SMALL);
        }
    }

    private static String label(LaidDepth laid, UnitSystem units, boolean named) {
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
