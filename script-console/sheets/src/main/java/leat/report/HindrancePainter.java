package leat.report;

import java.util.List;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Colour;
import leat.draw.Dash;
import leat.draw.Hatch;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;
import leat.model.geometry.Point;
import leat.model.quantity.Length;
import leat.model.site.DigZone;
import leat.model.site.ExistingService;
import leat.model.site.LimitLine;
import leat.model.site.Obstacle;
import leat.model.site.Terrain;

/** Draws what stands or lies in the way of a trench: dig zones, obstacles, roots, lines in the ground, limit lines. */
final class HindrancePainter {

    private static final Style SERVICE = PhaseStyle.EXISTING.line(LineWidth.W025, Palette.GREY);
    private static final Lettering NAME = Lettering.small().in(Palette.DARK_GREY);

    private final Board board;

    HindrancePainter(Board board) {
        this.board = board;
    }

    void draw(Terrain terrain) {
        board.canvas().beginLayer("hindrances", "Dig zones, trees and obstacles");
        terrain.digZones().forEach(this::digZone);
        for (Obstacle obstacle : terrain.obstacles()) {
            if (obstacle instanceof Obstacle.Tree tree) {
                tree(tree);
            } else if (obstacle instanceof Obstacle.Block block) {
                block(block);
            }
        }
        terrain.limitLines().forEach(this::limitLine);
        board.canvas().endLayer();
        board.canvas().beginLayer("services", "Existing services");
        terrain.services().forEach(this::service);
        board.canvas().endLayer();
    }

    private void digZone(DigZone zone) {
        boolean never = zone.kind() == DigZone.Kind.NO_DIG;
        Canvas canvas = board.canvas();
        String label = never ? "no digging" : "digging by hand only";
        canvas.beginItem(zone.id() + ": " + label + doubt(zone.doubt()), "");
        double doubtMm = board.view().mm(zone.doubt().metres());
        if (doubtMm > 0.1) {
            for (List<Point> ring : zone.region().rings()) {
                Band.fill(
                        canvas,
                        closed(board.sheet(ring)),
                        doubtMm,
                        Style.fill(digColour(never).tint(0.12)));
            }
        }
        canvas.shape(board.path(zone.region()), digStyle(never));
        canvas.endItem();
        zone.region().rings().forEach(ring -> board.callouts().avoid(closed(board.sheet(ring))));
        board.legend().add(never ? "30" : "31", label, (c, box) -> c.shape(PenPath.box(box), digStyle(never)));
        Point middle = Interior.of(zone.region());
        label("hindrances", "zone " + zone.id(), zone.id().name(), board.x(middle), board.y(middle), 0);
    }

    private static Colour digColour(boolean never) {
        return never ? Palette.VERMILION : Palette.ORANGE;
    }

    private static Style digStyle(boolean never) {
        Hatch hatch = new Hatch(
                never ? Hatch.Pattern.CROSSED_LINES : Hatch.Pattern.LINES,
                3,
                never ? 45 : -45,
                LineWidth.W013,
                digColour(never));
        return Style.line(LineWidth.W025, digColour(never))
                .withDash(Dash.DASHED)
                .withHatch(hatch);
    }

    private static double[] closed(double[] xy) {
        double[] closed = new double[xy.length + 2];
        System.arraycopy(xy, 0, closed, 0, xy.length);
        closed[xy.length] = xy[0];
        closed[xy.length + 1] = xy[1];
        return closed;
    }

    private String doubt(Length doubt) {
        return doubt.metres() == 0 ? "" : ", give or take " + board.show(doubt);
    }

    private void tree(Obstacle.Tree tree) {
        double x = board.x(tree.at());
        double y = board.y(tree.at());
        double rootsMm = board.view().mm(tree.rootZone().metres());
        double trunkMm = Math.max(0.8, board.view().mm(tree.trunk().metres() / 2));
        board.canvas()
                .beginItem(
                        tree.id() + ": tree, trunk " + Words.small(tree.trunk(), board.units()) + ", root zone "
                                + board.show(tree.rootZone()) + " around",
                        "Within the root zone a trench is dug by hand, if at all.");
        tree(board.canvas(), x, y, rootsMm, trunkMm);
        board.canvas().endItem();
        board.callouts().take(Box.around(x, y, trunkMm, trunkMm));
        board.legend()
                .add(
                        "33",
                        "tree: trunk, and root zone in which to dig by hand, if at all",
                        (c, box) -> tree(c, box.centreX(), box.centreY(), box.height() / 2, 0.8));
        label("hindrances", "tree " + tree.id(), tree.id().name(), x, y, trunkMm + 0.6);
    }

    private static void tree(Canvas canvas, double x, double y, double rootsMm, double trunkMm) {
        canvas.shape(
                PenPath.circle(x, y, rootsMm),
                Style.line(LineWidth.W018, Palette.DARK_GREY).withDash(Dash.SHORT_DASHED));
        canvas.shape(PenPath.circle(x, y, trunkMm), Style.fill(Palette.DARK_GREY));
    }

    private void block(Obstacle.Block block) {
        board.canvas().beginItem(block.id() + ": obstacle", "No trench goes through it.");
        board.canvas().shape(board.path(block.region()), blockStyle());
        board.canvas().endItem();
        board.legend()
                .add("32", "obstacle: wall, boulder or the like", (c, box) -> c.shape(PenPath.box(box), blockStyle()));
        Point middle = Interior.of(block.region());
        label("hindrances", "block " + block.id(), block.id().name(), board.x(middle), board.y(middle), 1.5);
    }

    private static Style blockStyle() {
        return Style.line(LineWidth.W035, Palette.BLACK).withFill(Palette.GREY.tint(0.7));
    }

    private void limitLine(LimitLine line) {
        boolean setback = line.kind() == LimitLine.Kind.SETBACK;
        String label = setback ? "setback: no trench crosses it" : "line to a neighbour: no trench crosses it";
        Style style = Style.line(LineWidth.W025, Palette.DARK_GREY).withDash(setback ? Dash.DASH_DOT : Dash.BOUNDARY);
        board.canvas().beginItem(line.id() + ": " + label, "");
        board.canvas().shape(board.path(line.line()), style);
        board.canvas().endItem();
        board.legend()
                .add(
                        setback ? "34" : "35",
                        label,
                        (c, box) ->
                                c.shape(PenPath.line(box.left(), box.centreY(), box.right(), box.centreY()), style));
        middleLabel(
                "hindrances",
                "limit " + line.id(),
                line.id().name(),
                board.sheet(line.line().points()));
    }

    private void service(ExistingService service) {
        ServiceStyle style = ServiceStyle.of(service.kind());
        double[] xy = board.sheet(service.route().points());
        Canvas canvas = board.canvas();
        canvas.beginItem(
                service.id() + ": existing " + style.label() + doubt(service.doubt()),
                "Have it marked before digging, and dig by hand near it.");
        double doubtMm = board.view().mm(service.doubt().metres());
        if (doubtMm > 0.3) {
            Band.fill(canvas, xy, doubtMm, Style.fill(Palette.GREY.tint(0.16)));
            board.legend()
                    .add(
                            "41",
                            "where that line may lie",
                            (c, box) -> c.shape(PenPath.box(box), Style.fill(Palette.GREY.tint(0.16))));
        }
        canvas.shape(PenPath.polyline(xy), SERVICE);
        canvas.endItem();
        board.callouts().letters("services", style.letter(), Palette.DARK_GREY, xy);
        board.legend()
                .add(
                        "40-" + style.letter(),
                        "existing " + style.label(),
                        (c, box) -> LetteredLine.sample(c, box, SERVICE, style.letter(), Palette.DARK_GREY));
        middleLabel("services", "service " + service.id(), service.id().name(), xy);
    }

    private void middleLabel(String layer, String key, String text, double[] xy) {
        int piece = (xy.length / 2 - 1) / 2 * 2;
        label(layer, key, text, (xy[piece] + xy[piece + 2]) / 2, (xy[piece + 1] + xy[piece + 3]) / 2, 1.2);
    }

    private void label(String layer, String key, String text, double x, double y, double clearMm) {
        board.callouts().add(layer, key, List.of(text), x, y, clearMm, Callouts.NAMES, NAME);
    }
}
