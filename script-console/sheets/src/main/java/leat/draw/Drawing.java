package leat.draw;

import java.util.List;

/**
 * A finished drawing of one sheet.
 *
 * @param title for people
 * @param description what the sheet shows, for those who cannot see it
 * @param widthMm of the sheet
 * @param heightMm of the sheet
 * @param marks in the order in which they were drawn, layers and items properly closed
 */
public record Drawing(String title, String description, double widthMm, double heightMm, List<Mark> marks) {

    public Drawing {
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException(
                    "drawing " + title + ": size is " + widthMm + " by " + heightMm + " mm; both must be more than 0");
        }
        marks = List.copyOf(marks);
    }

    /** Layers in drawing order. */
    public List<Mark.LayerBegin> layers() {
        return marks.stream()
                .filter(Mark.LayerBegin.class::isInstance)
                .map(Mark.LayerBegin.class::cast)
                .toList();
    }
}
