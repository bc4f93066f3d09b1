package leat.report;

import java.util.List;
import java.util.SortedMap;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Dash;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;
import leat.model.geometry.Sector;
import leat.model.id.HeadId;
import leat.model.id.ZoneId;
import leat.model.water.Bubbler;
import leat.model.water.DripLine;
import leat.model.water.Head;
import leat.model.water.Rotor;
import leat.model.water.Spray;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/** Draws heads with their arcs, in the style of their zones. */
final class HeadPainter {

    private final Board board;
    private final WaterSystem water;
    private final SortedMap<HeadId, ZoneStyle> styles;

    HeadPainter(Board board, WaterSystem water) {
        this.board = board;
        this.water = water;
        styles = ZoneStyle.ofHeads(water);
    }

    void draw() {
        Canvas canvas = board.canvas();
        canvas.beginLayer("arcs", "Arcs, throw and drip lines");
        for (Head head : water.heads()) {
            head.sector().ifPresent(sector -> arc(canvas, head, sector));
        }
        dripLines();
        canvas.endLayer();
    }

    /** Apart from the arcs, so that symbols lie above the pipes. */
    void drawSymbols() {
        Canvas canvas = board.canvas();
        canvas.beginLayer("heads", "Heads");
        for (Head head : water.heads()) {
            canvas.beginItem(title(head), "");
            symbol(canvas, head, board.x(head.at()), board.y(head.at()), style(head));
            canvas.endItem();
            legend(head);
            label(head);
        }
        canvas.endLayer();
    }

    /** One row of the legend for each zone. */
    void zoneLegend() {
        SortedMap<ZoneId, ZoneStyle> zones = ZoneStyle.of(water);
        int row = 0;
        for (Zone zone : water.zones()) {
            ZoneStyle style = zones.getOrDefault(zone.id(), ZoneStyle.NONE);
            String key = "7" + (char) ('A' + row / 26) + (char) ('A' + row % 26);
            row++;
            board.legend()
                    .add(
                            key,
                            "heads and arcs of " + Words.named(zone.id()) + ", " + Words.named(zone.valve()),
                            (c, box) -> {
                                c.shape(
                                        PenPath.line(box.left(), box.centreY(), box.right(), box.centreY()),
                                        style.arc());
                                c.shape(
                                        PenPath.circle(box.centreX(), box.centreY(), Symbols.HEAD_MM),
                                        Style.fill(style.colour()));
                            });
        }
    }

    private ZoneStyle style(Head head) {
        return styles.getOrDefault(head.id(), ZoneStyle.NONE);
    }

    private void arc(Canvas canvas, Head head, Sector sector) {
        canvas.shape(
                PenPath.arc(
                        board.x(sector.apex()),
                        board.y(sector.apex()),
                        board.view().mm(sector.radius().metres()),
                        sector.arc().start().degrees(),
                        sector.arc().sweep().degrees(),
                        true),
                style(head).arc());
    }

    private String title(Head head) {
        String throwing = head.sector()
                .map(sector -> ", " + board.show(sector.radius()) + ", "
                        + (sector.arc().isFull()
                                ? "full circle"
                                : board.show(sector.arc().sweep()) + " clockwise from a bearing of "
                                        + board.show(sector.arc().start())))
                .orElse("");
        String zone =
                water.zoneOf(head.id()).map(one -> ", " + Words.named(one.id())).orElse(", in no zone yet");
        return head.id() + ": " + HeadWords.shape(head) + throwing + zone + ", " + head.family()
                + board.computed(head.id());
    }

    private static void symbol(Canvas canvas, Head head, double x, double y, ZoneStyle style) {
        double middle = head.sector()
                .map(one -> one.arc().start().degrees() + one.arc().sweep().degrees() / 2)
                .orElse(0.0);
        boolean full = head.sector().map(one -> one.arc().isFull()).orElse(false);
        if (head instanceof Rotor) {
            if (full) {
                Symbols.fullRotor(canvas, x, y, style.colour());
            } else {
                Symbols.rotor(canvas, x, y, style.colour(), middle);
            }
        } else if (head instanceof Spray) {
            if (full) {
                Symbols.fullSpray(canvas, x, y, style.colour());
            } else {
                Symbols.spray(canvas, x, y, style.colour(), middle);
            }
        } else {
            Symbols.bubbler(canvas, x, y, style.colour());
        }
    }

    private void dripLines() {
        for (Head head : water.heads()) {
            if (head instanceof DripLine line) {
                double[] xy = board.sheet(line.path().points());
                board.canvas()
                        .beginItem(title(line) + ", " + board.show(line.path().length()), "");
                drip(board.canvas(), xy);
                board.canvas().endItem();
                board.callouts().avoid(xy);
            }
        }
    }

    private static void drip(Canvas canvas, double[] xy) {
        canvas.shape(PenPath.polyline(xy), Style.line(LineWidth.W018, Palette.GREEN));
        canvas.shape(
                PenPath.polyline(xy), Style.line(LineWidth.W070, Palette.GREEN).withDash(Dash.DOTTED));
    }

    private void label(Head head) {
        double x = board.x(head.at());
        double y = board.y(head.at());
        board.callouts().take(Box.around(x, y, Symbols.HEAD_MM + 0.4, Symbols.HEAD_MM + 0.4));
        board.callouts()
                .add(
                        "heads",
                        "head " + head.id(),
                        List.of(head.id().name()),
                        x,
                        y,
                        Symbols.HEAD_MM + 0.9,
                        Callouts.HEADS,
                        Lettering.small());
    }

    private void legend(Head head) {
        if (head instanceof DripLine) {
            board.legend().add("65", "drip line, fed at the diamond", (c, box) -> {
                drip(c, new double[] {box.left(), box.centreY(), box.right(), box.centreY()});
                Symbols.bubbler(c, box.left() + 1.5, box.centreY(), Palette.GREY);
            });
        } else if (head instanceof Bubbler) {
            board.legend()
                    .add("64", "bubbler", (c, box) -> Symbols.bubbler(c, box.centreX(), box.centreY(), Palette.GREY));
        } else if (head instanceof Rotor) {
            board.legend()
                    .add("60", "rotor: with a pointer it throws to that side, with an eye all round", (c, box) -> {
                        Symbols.rotor(c, box.centreX() - 3, box.centreY(), Palette.GREY, 60);
                        Symbols.fullRotor(c, box.centreX() + 3, box.centreY(), Palette.GREY);
                    });
        } else {
            board.legend()
                    .add("62", "spray: with a pointer it throws to that side, with an eye all round", (c, box) -> {
                        Symbols.spray(c, box.centreX() - 3, box.centreY(), Palette.GREY, 60);
                        Symbols.fullSpray(c, box.centreX() + 3, box.centreY(), Palette.GREY);
                    });
        }
    }
}
