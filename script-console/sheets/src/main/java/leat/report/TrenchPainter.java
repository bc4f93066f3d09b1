package leat.report;

import java.util.List;
import leat.draw.Canvas;
import leat.draw.Colour;
import leat.draw.Hatch;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;
import leat.model.trench.TrenchSegment;

/** Draws trenches as pale bands under the pipes; those dug by hand are hatched across. */
final class TrenchPainter {

    private static final double HALF_MM = 1.5;
    private static final Colour EARTH = Palette.ORANGE.tint(0.28);

    private final Board board;

    TrenchPainter(Board board) {
        this.board = board;
    }

    void draw(List<TrenchSegment> trenches) {
        Canvas canvas = board.canvas();
        canvas.beginLayer("trenches", "Trenches");
        for (TrenchSegment trench : trenches) {
            canvas.beginItem(title(trench), "");
            band(canvas, board.sheet(trench.route().points()), trench.byHand());
            canvas.endItem();
            board.legend()
                    .add(
                            trench.byHand() ? "46" : "45",
                            trench.byHand() ? "trench, dug by hand" : "trench; its breadth is not to scale",
                            (c, box) -> band(
                                    c,
                                    new double[] {box.left() + 2, box.centreY(), box.right() - 2, box.centreY()},
                                    trench.byHand()));
        }
        canvas.endLayer();
    }

    private String title(TrenchSegment trench) {
        String pipes = String.join(
                ", ", trench.contents().stream().map(Object::toString).toList());
        return trench.id() + ": trench, " + board.show(trench.route().length()) + " long, "
                + Words.small(trench.depth(), board.units()) + " deep" + (trench.byHand() ? ", dug by hand" : "")
                + (pipes.isEmpty() ? "" : "\nholds " + pipes);
    }

    private static void band(Canvas canvas, double[] xy, boolean byHand) {
        Band.fill(canvas, xy, HALF_MM, Style.fill(EARTH));
        if (byHand) {
            Hatch hatch = new Hatch(Hatch.Pattern.LINES, 1.3, 60, LineWidth.W018, Palette.DARK_GREY);
            for (int i = 0; i + 3 < xy.length; i += 2) {
                Band.fill(canvas, new double[] {xy[i], xy[i + 1], xy[i + 2], xy[i + 3]}, HALF_MM, Style.hatch(hatch));
            }
        }
        canvas.shape(PenPath.polyline(xy), Style.line(LineWidth.W013, Palette.GREY));
    }
}
