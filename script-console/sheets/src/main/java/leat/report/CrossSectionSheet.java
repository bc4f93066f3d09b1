package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Drawing;
import leat.draw.Frame;
import leat.draw.Keynotes;
import leat.draw.Legend;
import leat.draw.Paper;
import leat.draw.Scale;
import leat.draw.ScaleBar;
import leat.draw.SheetFit;
import leat.draw.TitleBlock;
import leat.draw.View;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;

/** The sheet that shows each kind of trench cut across. */
final class CrossSectionSheet {

    static final String TITLE = "Trench sections";

    private static final List<Scale> US =
            List.of(new Scale(12, "1\" = 1'-0\""), new Scale(16, "3/4\" = 1'-0\""), new Scale(24, "1/2\" = 1'-0\""));
    private static final List<Scale> METRIC = List.of(new Scale(10, "1:10"), new Scale(20, "1:20"));

    private static final double PAD_MM = 5;
    private static final double GAP_MM = 6;

    private final Yard yard;
    private final List<TrenchKind> kinds;
    private final Scale scale;

    private CrossSectionSheet(Yard yard, List<TrenchKind> kinds, Scale scale) {
        this.yard = yard;
        this.kinds = kinds;
        this.scale = scale;
    }

    /** On the smallest sheet that has room for all, and there at the largest scale. */
    static Drawing draw(Yard yard, List<TrenchKind> kinds, String number) {
        boolean us = yard.units() == UnitSystem.US;
        List<Paper> papers = us ? Paper.ANSI : Paper.ISO;
        List<CrossSectionSheet> sheets = (us ? US : METRIC)
                .stream()
                        .map(scale -> new CrossSectionSheet(yard, kinds, scale))
                        .toList();
        for (Paper paper : papers) {
            for (CrossSectionSheet sheet : sheets) {
                SheetFit fit = sheet.fit(paper);
                if (sheet.places(fit.field()).size() == kinds.size()) {
                    return sheet.drawOn(fit, number);
                }
            }
        }
        CrossSectionSheet crowded = sheets.get(sheets.size() - 1);
        return crowded.drawOn(crowded.fit(papers.get(papers.size() - 1)), number);
    }

    private SheetFit fit(Paper paper) {
        Box frame = paper.inside(true);
        Box column = new Box(frame.right() - SheetFit.COLUMN_MM, frame.top(), frame.right(), frame.bottom());
        Box field = new Box(frame.left(), frame.top(), column.left(), frame.bottom());
        return new SheetFit(paper, true, scale, frame, field, column, new View(scale, 0, 0));
    }

    /** Upper left corners, row by row; fewer than kinds if the field is too small. */
    private List<double[]> places(Box field) {
        List<double[]> places = new ArrayList<>();
        double x = field.left() + PAD_MM;
        double y = field.top() + PAD_MM;
        double rowMm = 0;
        for (TrenchKind kind : kinds) {
            double widthMm = CrossSection.widthMm(kind, scale, yard.units());
            double heightMm = CrossSection.heightMm(kind, scale, yard.units());
            if (x + widthMm + PAD_MM > field.right() && x > field.left() + PAD_MM) {
                x = field.left() + PAD_MM;
                y += rowMm + GAP_MM;
                rowMm = 0;
            }
            if (y + heightMm > field.bottom()) {
                return places;
            }
            places.add(new double[] {x, y});
            x += widthMm + GAP_MM;
            rowMm = Math.max(rowMm, heightMm);
        }
        return places;
    }

    private Drawing drawOn(SheetFit fit, String number) {
        Canvas canvas = new Canvas();
        canvas.beginLayer("sheet", "Sheet");
        Frame.draw(canvas, fit);
        canvas.endLayer();
        Legend legend = new Legend();
        Keynotes notes = new Keynotes();
        notes.number(
                "Cut across, looking along the trench. Which trench is of which kind stands at each section and on the"
                        + " trench plan.");
        notes.number("What lies beside each other is spread over the width; keep power apart from everything else.");
        canvas.beginLayer("sections", "Sections");
        CrossSection section = new CrossSection(canvas, legend, scale, yard.units());
        List<double[]> places = places(fit.field());
        for (int i = 0; i < places.size(); i++) {
            section.draw(kinds.get(i), places.get(i)[0], places.get(i)[1]);
        }
        canvas.endLayer();
        if (places.size() < kinds.size()) {
            notes.number("No room on this sheet for sections from "
                    + kinds.get(places.size()).letter() + " on; the trench schedule has their figures.");
        }
        column(canvas, fit, legend, notes, number);
        return canvas.drawing(
                yard.name() + ": " + TITLE,
                "Each kind of trench of " + yard.name() + " cut across at " + scale.text()
                        + ". The trench schedule holds all figures of this drawing.",
                fit.widthMm(),
                fit.heightMm());
    }

    private void column(Canvas canvas, SheetFit fit, Legend legend, Keynotes notes, String number) {
        canvas.beginLayer("column", "Legend and title block");
        Box column = fit.column();
        double x = column.left() + PAD_MM;
        double widthMm = column.width() - 2 * PAD_MM;
        ScaleBar.draw(canvas, yard.units() == UnitSystem.US, scale, x, column.top() + PAD_MM, widthMm);
        double top = column.top() + PAD_MM + ScaleBar.HEIGHT_MM + PAD_MM;
        double y = legend.draw(canvas, x, top, widthMm) + PAD_MM;
        notes.draw(canvas, x, y, widthMm);
        TitleBlock block = PlanSheet.titleBlock(yard, TITLE, fit, number);
        block.draw(canvas, column);
        canvas.endLayer();
    }
}
