package leat.calc.internal.cells;

import java.util.Arrays;

/** Cells well inside or well outside a region: those whose centres are farther from its border than a margin. */
public final class Margins {

    private final CellGrid grid;
    private final boolean[] nearBorder;
    private final RegionRaster raster = new RegionRaster();
    private final CellRuns inside = new CellRuns();

    public Margins(CellGrid grid) {
        this.grid = grid;
        nearBorder = new boolean[grid.cells()];
    }

    /** Writes to {@code out} the cells inside the region and farther than the margin from its border. */
    public void inside(double[][] ringsM, double marginM, CellRuns out) {
        prepare(ringsM, marginM);
        write(true, out);
    }

    /** Writes to {@code out} the cells of the grid outside the region and farther than the margin from its border. */
    public void outside(double[][] ringsM, double marginM, CellRuns out) {
        prepare(ringsM, marginM);
        write(false, out);
    }

    private void prepare(double[][] ringsM, double marginM) {
        raster.rasterise(grid, ringsM, inside);
        Arrays.fill(nearBorder, false);
        for (double[] ringM : ringsM) {
            for (int i = 0, before = ringM.length - 2; i < ringM.length; before = i, i += 2) {
                mark(ringM[before], ringM[before + 1], ringM[i], ringM[i + 1], marginM);
            }
        }
    }

    private void mark(double x0M, double y0M, double x1M, double y1M, double marginM) {
        int endRow = Math.min(grid.rows(), grid.firstRowFrom(Math.max(y0M, y1M) + marginM) + 1);
        int from = grid.firstColumnFrom(Math.min(x0M, x1M) - marginM);
        int end = grid.endColumnTo(Math.max(x0M, x1M) + marginM);
        for (int row = Math.max(0, grid.firstRowFrom(Math.min(y0M, y1M) - marginM)); row < endRow; row++) {
            for (int column = from; column < end; column++) {
                double awayM = Segments.distanceM(grid.centreXM(column), grid.centreYM(row), x0M, y0M, x1M, y1M);
                nearBorder[row * grid.columns() + column] |= awayM <= marginM;
            }
        }
    }

    private void write(boolean wanted, CellRuns out) {
        out.clear(grid.rows());
        for (int row = 0; row < grid.rows(); row++) {
            int run = inside.firstRun(row);
            for (int column = 0; column < grid.columns(); column++) {
                while (run < inside.firstRun(row + 1) && inside.end(run) <= column) {
                    run++;
                }
                boolean in = run < inside.firstRun(row + 1) && inside.from(run) <= column;
                if (in == wanted && !nearBorder[row * grid.columns() + column]) {
                    out.add(column, column + 1);
                }
            }
            out.endRow();
        }
    }
}
