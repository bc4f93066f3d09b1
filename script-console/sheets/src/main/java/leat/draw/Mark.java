package leat.draw;

/** One thing that was put on a canvas, in the order in which it was put there. */
public sealed interface Mark {

    /**
     * What can be switched as a whole.
     *
     * @param id letters, digits and hyphens, unique in the drawing
     * @param name for people
     * @param shown whether it shows before anybody switches
     */
    record LayerBegin(String id, String name, boolean shown) implements Mark {}

    record LayerEnd() implements Mark {}

    /**
     * What belongs to one thing of the plan, and what to say about it when asked.
     *
     * @param title a line or a few: name and figures
     * @param description more, or empty
     */
    record ItemBegin(String title, String description) implements Mark {}

    record ItemEnd() implements Mark {}

    record Shape(PenPath path, Style style) implements Mark {}

    /**
     * One line of text.
     *
     * @param x of the anchor, in millimetres
     * @param y of the foot of the letters, in millimetres
     */
    record Text(double x, double y, String text, Lettering lettering) implements Mark {}
}
