package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Drawing;
import leat.draw.Frame;
import leat.draw.Keynotes;
import leat.draw.Legend;
import leat.draw.NorthArrow;
import leat.draw.ScaleBar;
import leat.draw.SheetFit;
import leat.draw.TitleBlock;
import leat.model.geometry.Bounds;
import leat.model.geometry.Point;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;
import leat.model.water.Head;
import leat.model.water.WaterSystem;

/** The plan drawing of a yard on one sheet, to scale, with legend, notes and title block. */
final class PlanSheet {

    /** Layers of the sheet itself. */
    static final List<String> FURNITURE = List.of("sheet", "column");

    private static final double PAD_MM = 4;
    private static final double GAP_MM = 5;

    /** What makes one sheet differ from another. */
    interface Content {
        String title();

        /** Draws into the field, between the frame and the lettering. */
        void paint(Board board);

        /** Layers that want their lettering drawn. */
        List<String> letteredLayers();

        List<String> notes();
    }

    private final Yard yard;
    private final ReportFigures figures;
    private final Content content;
    private final Bounds bounds;

    private PlanSheet(Yard yard, ReportFigures figures, Content content) {
        this.yard = yard;
        this.figures = figures;
        this.content = content;
        bounds = extent(yard);
    }

    static Drawing draw(Yard yard, ReportFigures figures, Content content, String number) {
        PlanSheet sheet = new PlanSheet(yard, figures, content);
        SheetFit fit = sheet.fit(0);
        // The legend is known only when all is drawn; if the column is too low for it, draw on a larger sheet.
        double neededMm = sheet.drawOn(fit, number).columnMm();
        if (neededMm > fit.column().height()) {
            fit = sheet.fit(neededMm);
        }
        return sheet.drawOn(fit, number).drawing();
    }

    private record Drawn(Drawing drawing, double columnMm) {}

    private SheetFit fit(double columnMm) {
        boolean us = yard.units() == UnitSystem.US;
        return SheetFit.choose(us, bounds.leastXM(), bounds.leastYM(), bounds.mostXM(), bounds.mostYM(), columnMm);
    }

    private Drawn drawOn(SheetFit fit, String number) {
        Canvas canvas = new Canvas();
        canvas.beginLayer("sheet", "Sheet");
        Frame.draw(canvas, fit);
        canvas.endLayer();
        Callouts callouts = new Callouts(fit.field().grown(-1));
        Board board = new Board(canvas, fit.view(), yard.units(), figures, new Legend(), callouts);
        content.paint(board);
        Keynotes notes = new Keynotes();
        List<String> withoutRoom = callouts.draw(canvas, content.letteredLayers());
        content.notes().forEach(notes::number);
        if (!withoutRoom.isEmpty()) {
            notes.number(
                    "Not lettered for want of room: " + String.join(", ", withoutRoom) + ". The schedules have them.");
        }
        double columnMm = column(canvas, fit, board.legend(), notes, number);
        String about = content.title() + " of " + yard.name() + " at "
                + fit.scale().text() + ". North is up. The tables of the report hold all figures of this drawing.";
        return new Drawn(
                canvas.drawing(yard.name() + ": " + content.title(), about, fit.widthMm(), fit.heightMm()), columnMm);
    }

    /** Draws the column; returns how high it would have to be. */
    private double column(Canvas canvas, SheetFit fit, Legend legend, Keynotes notes, String number) {
        canvas.beginLayer("column", "Legend and title block");
        Box column = fit.column();
        double x = column.left() + PAD_MM;
        double widthMm = column.width() - 2 * PAD_MM;
        NorthArrow.draw(canvas, x + 4, column.top() + PAD_MM);
        boolean us = yard.units() == UnitSystem.US;
        ScaleBar.draw(canvas, us, fit.scale(), x + 12, column.top() + PAD_MM, widthMm - 12);
        double y = column.top() + PAD_MM + NorthArrow.HEIGHT_MM + GAP_MM;
        y = legend.draw(canvas, x, y, widthMm) + GAP_MM - 1.5;
        if (!notes.isEmpty()) {
            y = notes.draw(canvas, x, y, widthMm) + GAP_MM;
        }
        TitleBlock block = titleBlock(yard, content.title(), fit, number);
        block.draw(canvas, column);
        canvas.endLayer();
        return y - column.top() + block.heightMm(column.width());
    }

    /** The same on every sheet of a yard. */
    static TitleBlock titleBlock(Yard yard, String title, SheetFit fit, String number) {
        List<TitleBlock.Line> lines = new ArrayList<>();
        lines.add(new TitleBlock.Line(
                "Scale", fit.scale().text() + " on " + fit.paper().title()));
        lines.add(new TitleBlock.Line("Sheet", number));
        lines.add(new TitleBlock.Line("Units", yard.units() == UnitSystem.US ? "feet" : "metres"));
        lines.add(new TitleBlock.Line("Tables", "edition " + yard.edition()));
        return new TitleBlock(
                yard.name(),
                title,
                lines,
                List.of("True scale only when printed at 100 %: check the bar with a rule.", Cautions.GENERAL));
    }

    private static Bounds extent(Yard yard) {
        List<Point> points = new ArrayList<>();
        yard.terrain().lot().ifPresent(lot -> points.addAll(lot.outer()));
        yard.terrain()
                .surfaces()
                .forEach(surface -> points.addAll(surface.region().outer()));
        WaterSystem water = yard.water();
        water.heads().stream().map(Head::at).forEach(points::add);
        water.sources().forEach(source -> points.add(source.at()));
        water.manifolds().forEach(manifold -> points.add(manifold.at()));
        water.bibs().forEach(bib -> points.add(bib.at()));
        water.pipes().forEach(pipe -> points.addAll(pipe.route().points()));
        yard.power().loads().forEach(load -> points.add(load.at()));
        yard.power().panels().forEach(panel -> points.add(panel.at()));
        yard.power().cables().forEach(cable -> points.addAll(cable.route().points()));
        yard.power().conduits().forEach(conduit -> points.addAll(conduit.route().points()));
        if (points.isEmpty()) {
            points.add(new Point(0, 0));
            points.add(new Point(1, 1));
        }
        return Bounds.around(points);
    }
}
