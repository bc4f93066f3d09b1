package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.id.PipeId;
import leat.model.water.Lateral;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/**
 * The lines of the pipes as drawn: side by side where they share a trench, yet beginning on what feeds them and ending
 * at their heads.
 */
final class PipeLines {

    private static final double SAME_PLACE_MM = 0.01;

    private final Board board;
    private final WaterSystem water;
    private final SortedMap<PipeId, double[]> drawn = new TreeMap<>();

    PipeLines(Board board, WaterSystem water) {
        this.board = board;
        this.water = water;
    }

    /** In millimetres on the sheet: x, y, x, y …. */
    SortedMap<PipeId, double[]> drawn() {
        List<Lanes.Line> lines = new ArrayList<>();
        List<PipeRun> runs = water.pipes().toList();
        for (PipeRun run : runs) {
            String after = run.from() instanceof PipeId upstream ? upstream.name() : "";
            lines.add(new Lanes.Line(
                    run.id().name(), after, board.sheet(run.route().points())));
        }
        SortedMap<String, double[]> lanes = Lanes.of(lines);
        List<PipeId> toHeads = new ArrayList<>();
        for (Lateral lateral : water.laterals()) {
            toHeads.addAll(lateral.heads().values());
        }
        for (PipeRun run : runs) {
            double[] trueXy = board.sheet(run.route().points());
            double[] shifted = lanes.getOrDefault(run.id().name(), trueXy);
            drawn.put(run.id(), tied(run, trueXy, shifted, toHeads.contains(run.id())));
        }
        return drawn;
    }

    private double[] tied(PipeRun run, double[] trueXy, double[] shifted, boolean toHead) {
        List<Double> xy = new ArrayList<>();
        double[] upstream = run.from() instanceof PipeId pipe ? drawn.get(pipe) : null;
        double[] start =
                upstream == null ? new double[] {trueXy[0], trueXy[1]} : nearest(upstream, shifted[0], shifted[1]);
        add(xy, start[0], start[1]);
        for (int i = 0; i + 1 < shifted.length; i += 2) {
            add(xy, shifted[i], shifted[i + 1]);
        }
        if (toHead) {
            add(xy, trueXy[trueXy.length - 2], trueXy[trueXy.length - 1]);
        }
        return xy.size() < 4
                ? trueXy
                : xy.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void add(List<Double> xy, double x, double y) {
        int last = xy.size() - 2;
        if (last < 0 || Math.hypot(x - xy.get(last), y - xy.get(last + 1)) > SAME_PLACE_MM) {
            xy.add(x);
            xy.add(y);
        }
    }

    /**
     * The place of a line that is nearest to a point; a point far off, which the findings tell of, is left where it
     * is.
     */
    private static double[] nearest(double[] line, double x, double y) {
        double[] best = {x, y};
        double leastMm = 4 * Lanes.SPACING_MM;
        for (int i = 0; i + 3 < line.length; i += 2) {
            double dx = line[i + 2] - line[i];
            double dy = line[i + 3] - line[i + 1];
            double share = ((x - line[i]) * dx + (y - line[i + 1]) * dy) / (dx * dx + dy * dy);
            double clipped = Math.max(0, Math.min(1, share));
            double atX = line[i] + clipped * dx;
            double atY = line[i + 1] + clipped * dy;
            double awayMm = Math.hypot(x - atX, y - atY);
            if (awayMm < leastMm) {
                leastMm = awayMm;
                best = new double[] {atX, atY};
            }
        }
        return best;
    }
}
