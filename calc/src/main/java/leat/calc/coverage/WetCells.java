package leat.calc.coverage;

import java.util.Arrays;
import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.Wetting;
import leat.model.geometry.Point;
import leat.model.quantity.Length;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Ratio;

/**
 * A surface cell by cell: how many heads reach each, and how fast water falls there while all of them run. Row 0 is the
 * southernmost, column 0 the westernmost. Immutable.
 */
public final class WetCells {

    private static final int OUTSIDE = -1;

    private final Point southWest;
    private final Length cell;
    private final int columns;
    private final int rows;
    private final int[] reach;
    private final double[] rateMPerS;

    private WetCells(CellGrid grid) {
        southWest = new Point(grid.westM(), grid.southM());
        cell = new Length(grid.cellM());
        columns = grid.columns();
        rows = grid.rows();
        reach = new int[grid.cells()];
        rateMPerS = new double[grid.cells()];
    }

    static WetCells of(Wetting wetting, CellRuns surface) {
        WetCells cells = new WetCells(wetting.grid());
        int[] rowReach = new int[cells.columns];
        for (int row = 0; row < cells.rows; row++) {
            int first = row * cells.columns;
            Arrays.fill(cells.reach, first, first + cells.columns, OUTSIDE);
            wetting.reach(row, rowReach);
            for (int run = surface.firstRun(row); run < surface.firstRun(row + 1); run++) {
                for (int column = surface.from(run); column < surface.end(run); column++) {
                    cells.reach[first + column] = rowReach[column];
                    cells.rateMPerS[first + column] = Math.max(0, wetting.rateMPerS(row, column));
                }
            }
        }
        return cells;
    }

    /** The corner of row 0, column 0 from which columns run east and rows north. */
    public Point southWest() {
        return southWest;
    }

    /** Side of a cell. */
    public Length cell() {
        return cell;
    }

    public int columns() {
        return columns;
    }

    public int rows() {
        return rows;
    }

    public Point centre(int row, int column) {
        return new Point(southWest.xM() + (column + 0.5) * cell.metres(), southWest.yM() + (row + 0.5) * cell.metres());
    }

    /** Whether the cell belongs to the surface; rows and columns from 0. */
    public boolean holds(int row, int column) {
        return reach[index(row, column)] != OUTSIDE;
    }

    /** How many heads reach the cell; 0 outside the surface. */
    public int reach(int row, int column) {
        return Math.max(0, reach[index(row, column)]);
    }

    /** Depth of water in a time on the cell; none outside the surface. */
    public PrecipitationRate rate(int row, int column) {
        return new PrecipitationRate(rateMPerS[index(row, column)]);
    }

    /** The highest rate of all cells. */
    public PrecipitationRate mostRate() {
        return new PrecipitationRate(Arrays.stream(rateMPerS).max().orElse(0));
    }

    /** Share of the surface that is within reach of at least so many heads; 0 for a surface smaller than a cell. */
    public Ratio reachedBy(int heads) {
        long all = Arrays.stream(reach).filter(count -> count != OUTSIDE).count();
        long reached = Arrays.stream(reach)
                .filter(count -> count != OUTSIDE && count >= heads)
                .count();
        return Ratio.of(all == 0 ? 0 : (double) reached / all);
    }

    private int index(int row, int column) {
        if (row < 0 || row >= rows || column < 0 || column >= columns) {
            throw new IndexOutOfBoundsException("cell " + row + ", " + column + " of " + rows + " by " + columns);
        }
        return row * columns + column;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WetCells that
                && southWest.equals(that.southWest)
                && cell.equals(that.cell)
                && columns == that.columns
                && Arrays.equals(reach, that.reach)
                && Arrays.equals(rateMPerS, that.rateMPerS);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(reach) + Arrays.hashCode(rateMPerS);
    }

    @Override
    public String toString() {
        return rows + " by " + columns + " cells of " + cell;
    }
}
