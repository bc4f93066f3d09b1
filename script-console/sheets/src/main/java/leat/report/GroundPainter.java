package leat.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Dash;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;
import leat.model.geometry.Bearing;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.site.Course;
import leat.model.site.Phase;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Survey;

/** Draws the lot with the distances and bearings of its sides, and the surfaces with light patterns and their names. */
final class GroundPainter {

    private static final Lettering NAME = Lettering.of(2.5).in(Palette.DARK_GREY);

    private final Board board;

    GroundPainter(Board board) {
        this.board = board;
    }

    void surfaces(List<Surface> surfaces) {
        Canvas canvas = board.canvas();
        canvas.beginLayer("surfaces", "Surfaces");
        List<Surface> upwards = new ArrayList<>(surfaces);
        upwards.sort(Comparator.comparing(surface -> surface.kind().rank())); // keeps the order of names within a kind
        for (Surface surface : upwards) {
            String title = surface.id() + ": " + SurfaceStyle.of(surface.kind()).label() + ", "
                    + board.show(surface.region().area()) + later(surface.phase());
            canvas.beginItem(title, about(surface));
            fill(canvas, board.path(surface.region()), surface.kind(), surface.phase());
            canvas.endItem();
            board.legend()
                    .add(
                            "20-" + surface.kind().ordinal(),
                            SurfaceStyle.of(surface.kind()).label(),
                            (c, box) -> fill(c, PenPath.box(box), surface.kind(), Phase.NOW));
            name(surface);
        }
        canvas.endLayer();
    }

    private static String later(Phase phase) {
        return phase == Phase.LATER ? ", in a later year" : "";
    }

    private static String about(Surface surface) {
        String planting =
                surface.planting().map(text -> "Planting: " + text + ". ").orElse("");
        return planting + surface.soil().map(text -> "Soil: " + text + ".").orElse("");
    }

    private static void fill(Canvas canvas, PenPath path, SurfaceKind kind, Phase phase) {
        Style style = SurfaceStyle.of(kind).style();
        canvas.shape(path, phase == Phase.LATER ? style.withDash(Dash.DASHED) : style);
    }

    private void name(Surface surface) {
        Point middle = Interior.of(surface.region());
        board.callouts()
                .add(
                        "surfaces",
                        "surface " + surface.id(),
                        List.of(surface.id().name() + (surface.phase() == Phase.LATER ? " (later)" : "")),
                        board.x(middle),
                        board.y(middle),
                        0,
                        Callouts.SURFACES,
                        NAME);
    }

    void lot(Survey survey) {
        Canvas canvas = board.canvas();
        Region lot = survey.boundary();
        canvas.beginLayer("lot", "Lot boundary");
        Style line = Style.line(LineWidth.W050, Palette.BLACK).withDash(Dash.BOUNDARY);
        canvas.beginItem("Lot boundary: " + board.show(lot.area()), closure(survey));
        canvas.shape(board.path(lot), line);
        canvas.endItem();
        sides(survey);
        for (Point corner : lot.outer()) {
            canvas.shape(
                    PenPath.circle(board.x(corner), board.y(corner), 0.9),
                    Style.line(LineWidth.W025, Palette.BLACK).withFill(Palette.WHITE));
        }
        canvas.endLayer();
        board.legend()
                .add(
                        "10",
                        "lot boundary, bearings, distances",
                        (c, box) -> c.shape(PenPath.line(box.left(), box.centreY(), box.right(), box.centreY()), line));
    }

    private String closure(Survey survey) {
        return survey.closing() == Survey.Closing.DRAWN
                ? "The last side was not measured; it is drawn back to the start."
                : "Error of closure " + board.show(survey.misclosure())
                        + ", spread over the sides by the compass rule.";
    }

    /** Each side as the deed has it, in its direction; a side that was only drawn shows what the drawing gives. */
    private void sides(Survey survey) {
        List<Point> corners = survey.corners();
        // A region keeps its first point and turns counter-clockwise: then its second is the walk's second.
        boolean clockwise = !survey.boundary().outer().get(1).equals(corners.get(1));
        for (int i = 0; i < corners.size(); i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % corners.size());
            if (i < survey.courses().size()) {
                Course course = survey.courses().get(i);
                side(from, to, Bearing.show(course.bearing()) + "  " + board.show(course.distance()), clockwise);
            } else {
                side(from, to, Bearing.show(from.bearingTo(to)) + "  " + board.show(from.distance(to)), clockwise);
            }
        }
    }

    /** Letters a side along its outside, which is at the left hand of a clockwise walk. */
    private void side(Point from, Point to, String text, boolean clockwise) {
        Lettering small = Lettering.small().anchored(Lettering.Anchor.MIDDLE);
        double x1 = board.x(from);
        double y1 = board.y(from);
        double x2 = board.x(to);
        double y2 = board.y(to);
        double lengthMm = Math.hypot(x2 - x1, y2 - y1);
        double widthMm = small.widthMm(text);
        if (lengthMm < 8) {
            return;
        }
        double alongX = (x2 - x1) / lengthMm;
        double alongY = (y2 - y1) / lengthMm;
        boolean turnedRound = alongX < -1e-9 || Math.abs(alongX) <= 1e-9 && alongY > 0;
        // On a sheet, whose y runs down, (-y, x) is to the right hand.
        double outX = clockwise ? alongY : -alongY;
        double outY = clockwise ? -alongX : alongX;
        boolean above = outY < -1e-9 || Math.abs(outY) <= 1e-9 && outX < 0;
        double offMm = above ? 1.4 : 1.4 + small.capitalMm();
        double x = (x1 + x2) / 2 + outX * offMm;
        double y = (y1 + y2) / 2 + outY * offMm;
        double degrees = Math.toDegrees(Math.atan2(alongY, alongX)) + (turnedRound ? 180 : 0);
        board.canvas().text(x, y, text, small.turned(degrees > 180 ? degrees - 360 : degrees));
        for (double at = -widthMm / 2; at <= widthMm / 2; at += 2) {
            board.callouts().take(Box.around(x + at * alongX + outX, y + at * alongY + outY, 1.4, 1.4));
        }
        board.callouts().avoid(x1, y1, x2, y2);
    }
}
