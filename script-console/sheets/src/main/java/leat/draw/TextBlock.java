package leat.draw;

import java.util.ArrayList;
import java.util.List;

/** Texts of several lines. */
public final class TextBlock {

    private TextBlock() {}

    /** Breaks at spaces so that no line is wider, but for single words that are. */
    public static List<String> wrap(String text, double widthMm, Lettering lettering) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            if (!line.isEmpty() && lettering.widthMm(line + " " + word) > widthMm) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** As much of the text as the width holds, with three dots if some is missing. */
    public static String cut(String text, double widthMm, Lettering lettering) {
        if (lettering.widthMm(text) <= widthMm) {
            return text;
        }
        int end = text.length();
        while (end > 0 && lettering.widthMm(text.substring(0, end).stripTrailing() + "…") > widthMm) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).stripTrailing() + "…";
    }

    /**
     * Draws a wrapped text.
     *
     * @param top upper edge of the first line's capitals
     * @return upper edge of the capitals of a line that would follow
     */
    public static double draw(Canvas canvas, String text, double x, double top, double widthMm, Lettering lettering) {
        double y = top;
        for (String line : wrap(text, widthMm, lettering)) {
            canvas.text(x, y + lettering.capitalMm(), line, lettering);
            y += lettering.leadingMm();
        }
        return y;
    }
}
