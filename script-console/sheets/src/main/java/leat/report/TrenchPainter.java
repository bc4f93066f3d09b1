package leat.report;

import java.util.List;
import java.util.SortedMap;
import leat.draw.Canvas;
import leat.draw.Colour;
import leat.draw.Hatch;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;
import leat.model.id.SegmentId;
import leat.model.trench.TrenchSegment;

/** Draws trenches as pale bands under the pipes; those dug by hand are hatched across. */
final class TrenchPainter {

    private static final String LAYER = "trenches";
    private static final String PLANNED = "trench-";
    private static final double HALF_MM = 1.5;
    private static final Colour EARTH = Palette.ORANGE.tint(0.28);

    private final Board board;

    TrenchPainter(Board board) {
        this.board = board;
    }

    void draw(List<TrenchSegment> trenches) {
        Canvas canvas = board.canvas();
        canvas.beginLayer(LAYER, "Trenches");
        for (TrenchSegment trench : trenches) {
            PhaseStyle phase = PhaseStyle.of(trench.phase());
            canvas.beginItem(title(trench), "");
            band(canvas, board.sheet(trench.route().points()), trench.byHand(), phase);
            canvas.endItem();
            phase.explain(board.legend());
            board.legend()
                    .add(
                            trench.byHand() ? "46" : "45",
                            trench.byHand() ? "trench, dug by hand" : "trench; its breadth is not to scale",
                            (c, box) -> band(
                                    c,
                                    new double[] {box.left() + 2, box.centreY(), box.right() - 2, box.centreY()},
                                    trench.byHand(),
                                    PhaseStyle.NOW));
        }
        canvas.endLayer();
    }

    /** Asks for room for names and depths. */
    void letter(List<TrenchSegment> trenches, SortedMap<SegmentId, String> sections) {
        for (TrenchSegment trench : trenches) {
            double[] xy = board.sheet(trench.route().points());
            int piece = LetteredLine.longest(xy);
            board.callouts().avoid(xy);
            board.callouts()
                    .add(
                            LAYER,
                            Words.named(trench.id()),
                            List.of(shortName(trench.id()) + ": " + Words.small(trench.depth(), board.units())
                                    + section(sections, trench)),
                            (xy[piece] + xy[piece + 2]) / 2,
                            (xy[piece + 1] + xy[piece + 3]) / 2,
                            HALF_MM + 0.4,
                            Callouts.DEVICES,
                            Lettering.small());
        }
    }

    /** Planned trenches are called {@code trench-1} and so on; on a sheet of trenches the number tells enough. */
    static String shortName(SegmentId id) {
        return id.name().startsWith(PLANNED) ? id.name().substring(PLANNED.length()) : id.name();
    }

    private static String section(SortedMap<SegmentId, String> sections, TrenchSegment trench) {
        String letter = sections.get(trench.id());
        return letter == null ? "" : " (" + letter + ")";
    }

    private String title(TrenchSegment trench) {
        String held = String.join(
                ", ", trench.contents().stream().map(one -> Words.named(one)).toList());
        return trench.id() + ": trench, " + board.show(trench.route().length()) + " long, "
                + Words.small(trench.depth(), board.units()) + " deep" + (trench.byHand() ? ", dug by hand" : "")
                + PhaseStyle.of(trench.phase()).words() + (held.isEmpty() ? "" : "\nholds " + held);
    }

    private static void band(Canvas canvas, double[] xy, boolean byHand, PhaseStyle phase) {
        Band.fill(canvas, xy, HALF_MM, Style.fill(phase == PhaseStyle.LATER ? EARTH.tint(0.5) : EARTH));
        if (byHand) {
            Hatch hatch = new Hatch(Hatch.Pattern.LINES, 1.3, 60, LineWidth.W018, Palette.DARK_GREY);
            for (int i = 0; i + 3 < xy.length; i += 2) {
                Band.fill(canvas, new double[] {xy[i], xy[i + 1], xy[i + 2], xy[i + 3]}, HALF_MM, Style.hatch(hatch));
            }
        }
        canvas.shape(PenPath.polyline(xy), phase.line(LineWidth.W013, Palette.GREY));
    }
}
