package leat.calc.placement.internal;

import java.util.Arrays;
import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;

/**
 * The ground in and around a surface that wants heads, cell by cell. The grid is that of the coverage of the surface, grown on all
 * sides by as much as a head may throw.
 */
public final class Plot {

    /** Nothing is drawn there: water is lost, but does no harm. */
    static final byte BARE = 0;

    /** Planted or open water. */
    static final byte FREE = 1;

    /** The surface itself. */
    static final byte TARGET = 2;

    /** Must stay dry. */
    static final byte DRY = 3;

    private final CellGrid grid;
    private final double[][] ringsM;
    private final int wanted;
    private final KeepOff lines;
    private final byte[] cover;
    private final CellRuns target;
    private final int[] targetIndex;

    /**
     * @param ringsM border of what is open of the surface: outer lines and holes
     * @param wanted heads that are to reach each cell, 1 or 2
     * @param target cells of the surface
     * @param free   cells that may be thrown on; those of the target take precedence
     * @param lines  in the ground
     * @param dry    cells that must not be thrown on; they take precedence over free ones
     */
    public Plot(
            CellGrid grid,
            double[][] ringsM,
            int wanted,
            CellRuns target,
            CellRuns[] free,
            CellRuns[] dry,
            KeepOff lines) {
        this.lines = lines;
        this.grid = grid;
        this.ringsM = ringsM;
        this.wanted = wanted;
        this.target = target;
        cover = new byte[grid.cells()];
        targetIndex = new int[grid.cells()];
        Arrays.fill(targetIndex, -1);
        for (CellRuns runs : free) {
            paint(runs, FREE);
        }
        for (CellRuns runs : dry) {
            paint(runs, DRY);
        }
        paint(target, TARGET);
        int next = 0;
        for (int cell = 0; cell < cover.length; cell++) {
            if (cover[cell] == TARGET) {
                targetIndex[cell] = next++;
            }
        }
    }

    private void paint(CellRuns runs, byte kind) {
        for (int row = 0; row < grid.rows(); row++) {
            for (int run = runs.firstRun(row); run < runs.firstRun(row + 1); run++) {
                Arrays.fill(cover, row * grid.columns() + runs.from(run), row * grid.columns() + runs.end(run), kind);
            }
        }
    }

    CellGrid grid() {
        return grid;
    }

    double[][] ringsM() {
        return ringsM;
    }

    KeepOff lines() {
        return lines;
    }

    int wanted() {
        return wanted;
    }

    CellRuns target() {
        return target;
    }

    int targetCells() {
        return target.cells();
    }

    byte cover(int row, int column) {
        return cover[row * grid.columns() + column];
    }

    /** Number of a cell among those of the surface, or -1. */
    int targetIndex(int row, int column) {
        return targetIndex[row * grid.columns() + column];
    }

    /** Whether a point is on the surface, by the cell it falls in. */
    boolean isTarget(double xM, double yM) {
        int column = (int) Math.floor((xM - grid.westM()) / grid.cellM());
        int row = (int) Math.floor((yM - grid.southM()) / grid.cellM());
        return row >= 0 && row < grid.rows() && column >= 0 && column < grid.columns() && cover(row, column) == TARGET;
    }
}
