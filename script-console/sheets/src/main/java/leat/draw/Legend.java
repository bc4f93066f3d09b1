package leat.draw;

import java.util.Map;
import java.util.TreeMap;

/**
 * The key to the symbols of a sheet. Whoever draws a symbol adds it here, so that the legend holds those used and no
 * others; entries stand in the order of their keys.
 */
public final class Legend {

    /** Draws a sample of a symbol into a box. */
    @FunctionalInterface
    public interface Sample {
        void draw(Canvas canvas, Box box);
    }

    private record Entry(String text, Sample sample) {}

    /** Size of the box of a sample. */
    private static final double SAMPLE_WIDTH_MM = 13;

    private static final double SAMPLE_HEIGHT_MM = 3.6;
    private static final double GAP_MM = 2.5;
    private static final double ROW_GAP_MM = 0.8;

    private final Map<String, Entry> entries = new TreeMap<>();

    /**
     * Adds an entry unless its key is there already.
     *
     * @param key gives the order, such as {@code "3-rotor"}
     */
    public void add(String key, String text, Sample sample) {
        entries.putIfAbsent(key, new Entry(text, sample));
    }

    /**
     * Draws the legend.
     *
     * @return lower edge
     */
    public double draw(Canvas canvas, double x, double top, double widthMm) {
        Lettering heading = Lettering.of(2.5).inBold();
        Lettering text = Lettering.small();
        canvas.text(x, top + heading.capitalMm(), "Legend", heading);
        double y = top + heading.capitalMm() + 2.8;
        double textX = x + SAMPLE_WIDTH_MM + GAP_MM;
        double textWidth = widthMm - SAMPLE_WIDTH_MM - GAP_MM;
        for (Entry entry : entries.values()) {
            entry.sample().draw(canvas, new Box(x, y, x + SAMPLE_WIDTH_MM, y + SAMPLE_HEIGHT_MM));
            double first = y + (SAMPLE_HEIGHT_MM - text.capitalMm()) / 2;
            double after = TextBlock.draw(canvas, entry.text(), textX, first, textWidth, text);
            double textEnd = after - text.leadingMm() + text.capitalMm();
            y = Math.max(y + SAMPLE_HEIGHT_MM, textEnd) + ROW_GAP_MM;
        }
        return y;
    }
}
