package leat.report;

import java.util.List;
import java.util.function.IntBinaryOperator;
import java.util.function.ToIntFunction;
import leat.calc.coverage.CoverageResult;
import leat.calc.coverage.SurfaceCoverage;
import leat.calc.coverage.WetCells;
import leat.draw.CellOutline;
import leat.draw.Hatch;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;

/**
 * Draws how evenly water falls: each spot by its share of the mean of its own surface, in seven classes, one path each;
 * spots within reach of fewer heads than wanted are hatched over.
 */
final class CoveragePainter {

    /** Upper ends of all classes but the last, as shares of the mean. */
    private static final double[] ENDS = {0.25, 0.5, 0.75, 1, 1.25, 1.5};

    private static final List<String> LABELS = List.of(
            "under 25 % of the surface's mean",
            "25 to 50 %", "50 to 75 %", "75 to 100 %", "100 to 125 %", "125 to 150 %", "over 150 % of the mean");

    private static final int OUTSIDE = -1;
    private static final int SHORT = 1;
    private static final Hatch SHORT_HATCH =
            new Hatch(Hatch.Pattern.CROSSED_LINES, 1.6, 45, LineWidth.W018, Palette.VERMILION);

    private final Board board;
    private final CoverageResult coverage;

    CoveragePainter(Board board, CoverageResult coverage) {
        this.board = board;
        this.coverage = coverage;
    }

    void draw() {
        board.canvas().beginLayer("coverage", "Depth of water");
        for (int i = 0; i < LABELS.size(); i++) {
            int wanted = i;
            Style style = Style.fill(Palette.HEAT.get(i));
            paint(LABELS.get(i), style, surface -> wanted, CoveragePainter::classes);
            board.legend()
                    .add(
                            "25-" + i,
                            LABELS.get(i),
                            (c, box) -> c.shape(
                                    PenPath.box(box),
                                    Style.line(LineWidth.W013, Palette.GREY).withFill(Palette.HEAT.get(wanted))));
        }
        board.canvas().endLayer();
        board.canvas().beginLayer("short", "Spots short of reach");
        String text = "within reach of fewer heads than wanted: two on a lawn, one on a bed";
        if (paint(text, Style.hatch(SHORT_HATCH), surface -> SHORT, CoveragePainter::shortage)) {
            board.legend().add("26", text, (c, box) -> c.shape(PenPath.box(box), Style.hatch(SHORT_HATCH)));
        }
        board.canvas().endLayer();
    }

    /** What a kind of map says of each cell of a surface. */
    @FunctionalInterface
    private interface Classes {
        IntBinaryOperator of(SurfaceCoverage surface);
    }

    private boolean paint(String title, Style style, ToIntFunction<SurfaceCoverage> wanted, Classes classes) {
        PenPath.Builder path = PenPath.builder();
        for (SurfaceCoverage surface : coverage.surfaces().values()) {
            WetCells cells = surface.cells();
            double cellMm = board.view().mm(cells.cell().metres());
            CellOutline.trace(
                    path,
                    cells.columns(),
                    cells.rows(),
                    classes.of(surface),
                    wanted.applyAsInt(surface),
                    board.x(cells.southWest()),
                    board.y(cells.southWest()) - cells.rows() * cellMm,
                    cellMm);
        }
        if (path.isEmpty()) {
            return false;
        }
        board.canvas().beginItem(title, "");
        board.canvas().shape(path.build(), style);
        board.canvas().endItem();
        return true;
    }

    /** Sheets count rows from the top, cells from the south. */
    private static IntBinaryOperator classes(SurfaceCoverage surface) {
        WetCells cells = surface.cells();
        double mean = surface.mean().metresPerSecond();
        return (column, fromTop) -> {
            int row = cells.rows() - 1 - fromTop;
            if (!cells.holds(row, column)) {
                return OUTSIDE;
            }
            return mean == 0 ? 0 : classOf(cells.rate(row, column).metresPerSecond() / mean);
        };
    }

    static int classOf(double shareOfMean) {
        int index = 0;
        while (index < ENDS.length && shareOfMean >= ENDS[index]) {
            index++;
        }
        return index;
    }

    private static IntBinaryOperator shortage(SurfaceCoverage surface) {
        WetCells cells = surface.cells();
        return (column, fromTop) -> {
            int row = cells.rows() - 1 - fromTop;
            boolean isShort = cells.holds(row, column)
                    && cells.reach(row, column) < surface.wanted().value();
            return isShort ? SHORT : 0;
        };
    }
}
