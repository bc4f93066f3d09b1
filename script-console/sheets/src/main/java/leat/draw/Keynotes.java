package leat.draw;

import java.util.ArrayList;
import java.util.List;

/** Numbered notes beside a plan: a number on the plan, the sentence in the column. The same sentence has one number. */
public final class Keynotes {

    private static final double RADIUS_MM = 2.1;
    private static final double INDENT_MM = 6;

    private final List<String> notes = new ArrayList<>();

    /** The number of this note, from 1. */
    public int number(String note) {
        int at = notes.indexOf(note);
        if (at >= 0) {
            return at + 1;
        }
        notes.add(note);
        return notes.size();
    }

    public boolean isEmpty() {
        return notes.isEmpty();
    }

    /** The ringed number itself. */
    public static void mark(Canvas canvas, int number, double x, double y) {
        canvas.shape(
                PenPath.circle(x, y, RADIUS_MM),
                Style.line(LineWidth.W018, Palette.BLACK).withFill(Palette.WHITE));
        canvas.text(x, y + 1.1, Integer.toString(number), Lettering.small().anchored(Lettering.Anchor.MIDDLE));
    }

    /**
     * Draws heading and notes.
     *
     * @return lower edge
     */
    public double draw(Canvas canvas, double x, double top, double widthMm) {
        Lettering heading = Lettering.of(2.5).inBold();
        Lettering text = Lettering.small();
        canvas.text(x, top + heading.capitalMm(), "Notes", heading);
        double y = top + heading.capitalMm() + 3;
        for (int i = 0; i < notes.size(); i++) {
            mark(canvas, i + 1, x + RADIUS_MM, y + text.capitalMm() / 2);
            y = TextBlock.draw(canvas, notes.get(i), x + INDENT_MM, y, widthMm - INDENT_MM, text) + 1.2;
        }
        return y;
    }
}
