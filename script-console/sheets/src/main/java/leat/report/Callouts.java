package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Colour;
import leat.draw.LabelPlacer;
import leat.draw.LabelPlacer.Label;
import leat.draw.LabelPlacer.Placed;
import leat.draw.LabelPlacer.Placement;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;
import org.jspecify.annotations.Nullable;

/** Collects what is to be lettered on the plan while painters draw, then finds room for all of it at once. */
final class Callouts {

    /** Which labels choose their place first. */
    static final int SURFACES = 0;

    static final int DEVICES = 1;
    static final int HEADS = 2;
    static final int NAMES = 3;
    static final int FINDINGS = 4;
    static final int SIZES = 5;

    private static final double FRAME_PAD_MM = 1.1;

    private record Words(
            String layer,
            List<String> lines,
            Lettering lettering,
            @Nullable Style frame) {

        double widthMm() {
            double widest = lines.stream().mapToDouble(lettering::widthMm).max().orElse(0);
            return widest + (frame == null ? 0 : 2 * FRAME_PAD_MM);
        }

        double heightMm() {
            return lettering.capitalMm()
                    + (lines.size() - 1) * lettering.leadingMm()
                    + (frame == null ? 0.4 : 2 * FRAME_PAD_MM);
        }
    }

    /** A line that is broken by letters. */
    private record Lettered(String layer, String letter, Colour colour, double[] xy) {}

    private final LabelPlacer placer;
    private final List<Lettered> lines = new ArrayList<>();
    private final SortedMap<String, Words> words = new TreeMap<>();
    private final List<Label> labels = new ArrayList<>();

    Callouts(Box field) {
        placer = new LabelPlacer(field);
    }

    void take(Box box) {
        placer.take(box);
    }

    /** Keeps labels off a line where possible. */
    void avoid(double... xy) {
        for (int i = 0; i + 3 < xy.length; i += 2) {
            placer.avoid(xy[i], xy[i + 1], xy[i + 2], xy[i + 3]);
        }
    }

    /** Asks for letters on a line, and keeps labels off it where possible. */
    void letters(String layer, String letter, Colour colour, double[] xy) {
        lines.add(new Lettered(layer, letter, colour, xy.clone()));
        avoid(xy);
    }

    /**
     * Asks for room.
     *
     * @param layer whose text layer it goes to
     * @param key unique in the sheet
     * @param clearMm from the place to where the label may begin; 0 if it may stand on it
     */
    void add(
            String layer,
            String key,
            List<String> lines,
            double x,
            double y,
            double clearMm,
            int priority,
            Lettering lettering) {
        add(key, new Words(layer, List.copyOf(lines), lettering, null), x, y, clearMm, priority);
    }

    void addFramed(
            String layer,
            String key,
            List<String> lines,
            double x,
            double y,
            double clearMm,
            int priority,
            Lettering lettering,
            Style frame) {
        add(key, new Words(layer, List.copyOf(lines), lettering, frame), x, y, clearMm, priority);
    }

    private void add(String key, Words text, double x, double y, double clearMm, int priority) {
        words.put(key, text);
        labels.add(new Label(key, x, y, clearMm, text.widthMm(), text.heightMm(), priority));
    }

    /**
     * Letters everything, one text layer for each of the given layers.
     *
     * @return keys of labels for which there was no room
     */
    List<String> draw(Canvas canvas, List<String> layers) {
        // Letters first: they must stand on their lines, labels can stand aside.
        List<List<double[]>> letters = lines.stream().map(this::room).toList();
        Placement placement = placer.place(labels);
        for (String layer : layers) {
            canvas.beginLayer(layer + "-text", "Lettering of " + layer);
            for (int i = 0; i < lines.size(); i++) {
                Lettered line = lines.get(i);
                if (line.layer().equals(layer)) {
                    letters.get(i)
                            .forEach(at -> LetteredLine.letter(canvas, at[0], at[1], line.letter(), line.colour()));
                }
            }
            for (Placed placed : placement.placed()) {
                Words text = words.get(placed.label().id());
                if (text != null && text.layer().equals(layer)) {
                    draw(canvas, placed, text);
                }
            }
            canvas.endLayer();
        }
        return placement.withoutRoom().stream().map(Label::id).toList();
    }

    private List<double[]> room(Lettered line) {
        return LetteredLine.places(line.xy(), at -> {
            Box room = LetteredLine.room(at[0], at[1], line.letter());
            boolean free = placer.isFree(room);
            if (free) {
                placer.take(room);
            }
            return free;
        });
    }

    private static void draw(Canvas canvas, Placed placed, Words text) {
        Box box = placed.box();
        if (placed.leader()) {
            canvas.shape(
                    PenPath.line(placed.label().x(), placed.label().y(), placed.leaderX(), placed.leaderY()),
                    Style.line(LineWidth.W013, Palette.DARK_GREY));
        }
        if (text.frame() != null) {
            canvas.shape(PenPath.box(box), text.frame());
        }
        double y = box.top()
                + (text.frame() == null ? 0.2 : FRAME_PAD_MM)
                + text.lettering().capitalMm();
        boolean list = text.lines().size() > 1;
        double x = list ? box.left() + FRAME_PAD_MM : box.centreX();
        Lettering lettering = text.lettering().anchored(list ? Lettering.Anchor.START : Lettering.Anchor.MIDDLE);
        for (String line : text.lines()) {
            canvas.text(x, y, line, text.frame() == null ? lettering.withHalo() : lettering);
            y += lettering.leadingMm();
        }
    }
}
