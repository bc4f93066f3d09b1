package leat.report;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import leat.draw.Canvas;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.PenPath;
import leat.model.id.PipeId;
import leat.model.id.ValveId;
import leat.model.water.Lateral;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/** Draws main and laterals: colour and letter tell the water, width main or lateral, the line when it is laid. */
final class PipePainter {

    private static final double SIZE_FROM_MM = 9;

    private final Board board;
    private final WaterSystem water;
    private final SortedMap<PipeId, double[]> drawn;

    PipePainter(Board board, WaterSystem water) {
        this.board = board;
        this.water = water;
        drawn = new PipeLines(board, water).drawn();
    }

    void draw() {
        Canvas canvas = board.canvas();
        canvas.beginLayer("laterals", "Laterals");
        for (Lateral lateral : water.laterals()) {
            lateral.runs()
                    .forEach(run -> run(run, "lateral of " + Words.named(lateral.zone()), LineWidth.W035, "laterals"));
        }
        canvas.endLayer();
        canvas.beginLayer("main", "Main");
        water.main().runs().forEach(run -> run(run, "main", LineWidth.W070, "main"));
        canvas.endLayer();
    }

    private void run(PipeRun run, String role, LineWidth width, String layer) {
        WaterStyle style = WaterStyle.of(water.waterIn(run.id()));
        double[] xy = drawn.getOrDefault(run.id(), board.sheet(run.route().points()));
        Canvas canvas = board.canvas();
        canvas.beginItem(title(run, role, style), "");
        canvas.shape(PenPath.polyline(xy), phase(run).line(width, style.colour()));
        canvas.endItem();
        board.callouts().letters(layer, style.letter(), style.lettering(), xy);
        legend(style, width, phase(run), layer);
        size(run, xy, style, layer);
    }

    private String title(PipeRun run, String role, WaterStyle style) {
        String size = run.tradeSize().map(Object::toString).orElse("size open, " + run.series());
        return run.id() + ": " + role + ", " + size + ", "
                + board.show(run.route().length()) + ", " + style.label()
                + phase(run).words()
                + board.computed(run.id());
    }

    private static PhaseStyle phase(PipeRun run) {
        return PhaseStyle.of(run.existing(), run.phase());
    }

    private void legend(WaterStyle style, LineWidth width, PhaseStyle phase, String layer) {
        phase.explain(board.legend());
        boolean main = layer.equals("main");
        board.legend()
                .add(
                        "5" + (main ? 0 : 1) + style.ordinal(),
                        (main ? "main, " : "lateral, ") + style.label(),
                        (c, box) -> LetteredLine.sample(
                                c, box, PhaseStyle.NOW.line(width, style.colour()), style.letter(), style.lettering()));
    }

    /** Sizes stand where they change, and on every run that is long enough. */
    private void size(PipeRun run, double[] xy, WaterStyle style, String layer) {
        if (run.size().isEmpty() || longestMm(xy) < SIZE_FROM_MM && !changes(run)) {
            return;
        }
        int piece = LetteredLine.longest(xy);
        board.callouts()
                .add(
                        layer,
                        "size " + run.id(),
                        List.of(valve(run) + run.size().get() + (run.existing() ? " exist." : "")),
                        (xy[piece] + xy[piece + 2]) / 2,
                        (xy[piece + 1] + xy[piece + 3]) / 2,
                        0.9,
                        Callouts.SIZES,
                        Lettering.small().in(style.lettering()));
    }

    /** The first run of a lateral says whose it is. */
    private static String valve(PipeRun run) {
        return run.from() instanceof ValveId valve ? valve + ": " : "";
    }

    private boolean changes(PipeRun run) {
        if (!(run.from() instanceof PipeId upstream)) {
            return true;
        }
        Optional<PipeRun> feeds = water.pipe(upstream);
        return feeds.isEmpty() || !feeds.get().tradeSize().equals(run.tradeSize());
    }

    private static double longestMm(double[] xy) {
        int piece = LetteredLine.longest(xy);
        return Math.hypot(xy[piece + 2] - xy[piece], xy[piece + 3] - xy[piece + 1]);
    }
}
