package leat.draw;

/** The border of a sheet and the line between plan and column. */
public final class Frame {

    private Frame() {}

    public static void draw(Canvas canvas, SheetFit fit) {
        canvas.shape(PenPath.box(new Box(0, 0, fit.widthMm(), fit.heightMm())), Style.fill(Palette.WHITE));
        canvas.shape(PenPath.box(fit.frame()), Style.line(LineWidth.W070, Palette.BLACK));
        double x = fit.column().left();
        canvas.shape(
                PenPath.line(x, fit.frame().top(), x, fit.frame().bottom()), Style.line(LineWidth.W035, Palette.BLACK));
    }
}
