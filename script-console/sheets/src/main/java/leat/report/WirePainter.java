package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.PenPath;
import leat.model.id.Id;
import leat.model.power.Cable;
import leat.model.power.Conduit;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;

/**
 * Draws conduits as double lines with what passes through them, and cables as single lines where they lie in no
 * conduit.
 */
final class WirePainter {

    private static final double WALL_MM = 0.75;
    private static final double SPACING_MM = 2.6;
    private static final String LAYER_CONDUITS = "conduits";
    private static final String LAYER_CABLES = "cables";

    private final Board board;
    private final PowerSystem power;
    private final SortedMap<String, double[]> drawn;

    WirePainter(Board board, PowerSystem power) {
        this.board = board;
        this.power = power;
        drawn = new TreeMap<>();
        List<Lanes.Line> lines = lines();
        SortedMap<String, double[]> lanes = Lanes.of(lines, SPACING_MM);
        lines.forEach(line -> drawn.put(line.name(), tied(line.xy(), lanes.getOrDefault(line.name(), line.xy()))));
    }

    /** Beside others on the way, but beginning and ending in its true places. */
    private static double[] tied(double[] trueXy, double[] lane) {
        if (lane == trueXy) {
            return trueXy;
        }
        double[] tied = new double[lane.length + 4];
        System.arraycopy(trueXy, 0, tied, 0, 2);
        System.arraycopy(lane, 0, tied, 2, lane.length);
        System.arraycopy(trueXy, trueXy.length - 2, tied, lane.length + 2, 2);
        return tied;
    }

    private List<Lanes.Line> lines() {
        List<Lanes.Line> lines = new ArrayList<>();
        power.conduits()
                .forEach(one -> lines.add(
                        new Lanes.Line(key(one), "", board.sheet(one.route().points()))));
        power.cables().forEach(cable -> {
            int number = 0;
            for (double[] way : ways(cable)) {
                lines.add(new Lanes.Line(key(cable, number++), "", way));
            }
        });
        return lines;
    }

    private List<double[]> ways(Cable cable) {
        List<double[]> conduits = cable.conduits().stream()
                .flatMap(one -> power.conduit(one).stream())
                .map(one -> board.sheet(one.route().points()))
                .toList();
        return BareWays.of(board.sheet(cable.route().points()), conduits);
    }

    private static String key(Conduit conduit) {
        return "conduit " + conduit.id();
    }

    private static String key(Cable cable, int number) {
        return "cable " + cable.id() + " " + number;
    }

    void draw() {
        board.canvas().beginLayer(LAYER_CONDUITS, "Conduits");
        power.conduits().forEach(this::conduit);
        board.canvas().endLayer();
        board.canvas().beginLayer(LAYER_CABLES, "Cables outside conduits");
        power.cables().forEach(this::cable);
        board.canvas().endLayer();
    }

    private void conduit(Conduit conduit) {
        List<Cable> held = power.cablesIn(conduit.id());
        WireStyle style = WireStyle.of(power, conduit, held);
        PhaseStyle phase = PhaseStyle.of(conduit.existing(), conduit.phase());
        double[] xy =
                drawn.getOrDefault(key(conduit), board.sheet(conduit.route().points()));
        Canvas canvas = board.canvas();
        canvas.beginItem(title(conduit, held, style, phase), "");
        conduit(canvas, xy, style, phase, LetteredLine.EVERY_MM);
        canvas.endItem();
        keepClear(xy);
        phase.explain(board.legend());
        board.legend()
                .add(
                        "50-" + style.ordinal(),
                        style == WireStyle.SPARE
                                ? "spare conduit, with a pull string"
                                : "conduit with " + style.label(),
                        (c, box) -> conduit(c, across(box), style, PhaseStyle.NOW, box.width()));
        String size = conduit.size().orElse("size open");
        label(
                LAYER_CONDUITS,
                key(conduit),
                List.of(size + (conduit.existing() ? " exist." : ""), held.isEmpty() ? "spare" : users(held)),
                xy,
                style);
    }

    private static String users(List<Cable> held) {
        return held.stream()
                .map(cable ->
                        cable instanceof PowerCable wires ? wires.circuit().name() : "valve wires")
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private String title(Conduit conduit, List<Cable> held, WireStyle style, PhaseStyle phase) {
        String holds = held.isEmpty()
                ? "spare"
                : "holds "
                        + held.stream().map(Cable::id).map(Id::name).collect(Collectors.joining(", ")) + " ("
                        + style.label() + ")";
        return conduit.id() + ": conduit " + conduit.series() + " "
                + conduit.size().orElse("of a size to be chosen") + ", "
                + board.show(conduit.route().length()) + ", " + holds + phase.words() + board.computed(conduit.id());
    }

    private static void conduit(Canvas canvas, double[] xy, WireStyle style, PhaseStyle phase, double everyMm) {
        canvas.shape(PenPath.polyline(Parallels.beside(xy, WALL_MM)), phase.line(LineWidth.W025, style.colour()));
        canvas.shape(PenPath.polyline(Parallels.beside(xy, -WALL_MM)), phase.line(LineWidth.W025, style.colour()));
        LetteredLine.letters(canvas, xy, style.letter(), style.lettering(), everyMm);
    }

    private void cable(Cable cable) {
        WireStyle style = WireStyle.of(power, cable);
        PhaseStyle phase = PhaseStyle.of(cable.existing(), cable.phase());
        int number = 0;
        for (double[] way : ways(cable)) {
            double[] xy = drawn.getOrDefault(key(cable, number), way);
            board.canvas().beginItem(title(cable, style, phase), "");
            cable(board.canvas(), xy, style, phase, LetteredLine.EVERY_MM);
            board.canvas().endItem();
            keepClear(xy);
            phase.explain(board.legend());
            board.legend()
                    .add(
                            "51-" + style.ordinal(),
                            bare(style),
                            (c, box) -> cable(c, across(box), style, PhaseStyle.NOW, box.width()));
            if (number == 0 && cable.conduits().isEmpty()) {
                label(LAYER_CABLES, "cable " + cable.id(), List.of(cableWords(cable)), xy, style);
            }
            number++;
        }
    }

    private static String bare(WireStyle style) {
        return switch (style) {
            case POWER -> "power cable in no conduit";
            case LAMPS -> "low-voltage cable in no conduit";
            case CONTROL, SPARE -> "valve wires in no conduit";
        };
    }

    private static String cableWords(Cable cable) {
        String what = cable instanceof PowerCable wires ? wires.circuit().name() : "valve wires";
        return what + cable.conductor().map(size -> ", " + size).orElse("");
    }

    private String title(Cable cable, WireStyle style, PhaseStyle phase) {
        return cable.id() + ": " + style.label() + " from " + Words.named(cable.from()) + " to "
                + Words.named(cable.to())
                + cable.conductor().map(size -> ", size " + size).orElse(", size to be chosen") + ", "
                + board.show(cable.route().length()) + phase.words() + board.computed(cable.id());
    }

    private static void cable(Canvas canvas, double[] xy, WireStyle style, PhaseStyle phase, double everyMm) {
        LetteredLine.draw(
                canvas, xy, phase.line(LineWidth.W050, style.colour()), style.letter(), style.lettering(), everyMm);
    }

    private static double[] across(Box box) {
        return new double[] {box.left(), box.centreY(), box.right(), box.centreY()};
    }

    private void keepClear(double[] xy) {
        board.callouts().avoid(xy);
        LetteredLine.places(xy, LetteredLine.EVERY_MM)
                .forEach(at -> board.callouts().take(Box.around(at[0], at[1], 1.3, 1.3)));
    }

    private void label(String layer, String key, List<String> lines, double[] xy, WireStyle style) {
        int piece = LetteredLine.longest(xy);
        board.callouts()
                .add(
                        layer,
                        key,
                        lines,
                        (xy[piece] + xy[piece + 2]) / 2,
                        (xy[piece + 1] + xy[piece + 3]) / 2,
                        1.4,
                        Callouts.SIZES,
                        Lettering.small().in(style.lettering()));
    }
}
