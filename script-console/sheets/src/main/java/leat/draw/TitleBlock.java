package leat.draw;

import java.util.List;

/**
 * What the sheet is: at the foot of the column, where ISO 7200 and common practice look for it.
 *
 * @param place whose yard it is, large
 * @param sheet what the sheet shows
 * @param lines further pairs of a word and its value, such as scale and sheet number
 * @param notice small sentences below
 */
public record TitleBlock(String place, String sheet, List<Line> lines, List<String> notice) {

    /** A word and its value. */
    public record Line(String word, String value) {}

    private static final double PAD_MM = 3;
    private static final Lettering PLACE = Lettering.of(5).inBold();
    private static final Lettering SHEET = Lettering.of(3.5);
    private static final Lettering WORD = Lettering.small().in(Palette.DARK_GREY);
    private static final Lettering VALUE = Lettering.of(2.5);
    private static final Lettering NOTICE = Lettering.small().in(Palette.DARK_GREY);
    private static final double ROW_MM = 5.2;

    public TitleBlock {
        lines = List.copyOf(lines);
        notice = List.copyOf(notice);
    }

    /** How high the block is in a column of this width. */
    public double heightMm(double widthMm) {
        double inner = widthMm - 2 * PAD_MM;
        double noticeMm = 0;
        for (String sentence : notice) {
            noticeMm += TextBlock.wrap(sentence, inner, NOTICE).size() * NOTICE.leadingMm() + 1;
        }
        int placeLines = TextBlock.wrap(place, inner, PLACE).size();
        int sheetLines = TextBlock.wrap(sheet, inner, SHEET).size();
        return 3 * PAD_MM
                + placeLines * PLACE.leadingMm()
                + sheetLines * SHEET.leadingMm()
                + lines.size() * ROW_MM
                + noticeMm;
    }

    /** Draws the block at the foot of the column. */
    public void draw(Canvas canvas, Box column) {
        double inner = column.width() - 2 * PAD_MM;
        double x = column.left() + PAD_MM;
        double top = column.bottom() - heightMm(column.width());
        canvas.shape(PenPath.line(column.left(), top, column.right(), top), Style.line(LineWidth.W050, Palette.BLACK));
        double y = TextBlock.draw(canvas, place, x, top + PAD_MM, inner, PLACE);
        y = TextBlock.draw(canvas, sheet, x, y - 1, inner, SHEET) + 0.5;
        double valueX = x + inner * 0.3;
        for (Line line : lines) {
            canvas.shape(PenPath.line(x, y, x + inner, y), Style.line(LineWidth.W013, Palette.GREY));
            canvas.text(x, y + 3.7, line.word(), WORD);
            canvas.text(valueX, y + 3.7, TextBlock.cut(line.value(), inner * 0.7, VALUE), VALUE);
            y += ROW_MM;
        }
        canvas.shape(PenPath.line(x, y, x + inner, y), Style.line(LineWidth.W013, Palette.GREY));
        y += 2;
        for (String sentence : notice) {
            y = TextBlock.draw(canvas, sentence, x, y, inner, NOTICE) + 1;
        }
    }
}
