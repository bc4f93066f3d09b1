package leat.draw;

/** Which way north is: a slim arrow, one half dark, in a ring open to the north. North is always up on our sheets. */
public final class NorthArrow {

    public static final double HEIGHT_MM = 17;

    private NorthArrow() {}

    /** Draws the arrow with its middle at x and its upper edge at top. */
    public static void draw(Canvas canvas, double x, double top) {
        double middle = top + 11;
        canvas.beginItem("North", "North is up the sheet.");
        canvas.text(x, top + 3, "N", Lettering.of(3).inBold().anchored(Lettering.Anchor.MIDDLE));
        Style line = Style.line(LineWidth.W018, Palette.BLACK);
        canvas.shape(PenPath.arc(x, middle, 4, 35, 290, false), line);
        canvas.shape(
                PenPath.polygon(x, middle - 6.5, x - 1.6, middle + 5, x, middle + 3.2), line.withFill(Palette.BLACK));
        canvas.shape(
                PenPath.polygon(x, middle - 6.5, x + 1.6, middle + 5, x, middle + 3.2), line.withFill(Palette.WHITE));
        canvas.endItem();
    }
}
