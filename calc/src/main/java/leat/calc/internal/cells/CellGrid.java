package leat.calc.internal.cells;

import leat.model.geometry.Bounds;

/**
 * Square cells over a rectangle of ground. Row 0 is the southernmost, column 0 the westernmost; a cell counts as its centre does.
 */
public final class CellGrid {

    private final double westM;
    private final double southM;
    private final double cellM;
    private final int columns;
    private final int rows;
    private final double cellsPerM;
    private final double[] centreXM;

    /**
     * @param westM  x of the western edge of column 0
     * @param southM y of the southern edge of row 0
     * @param cellM  side of a cell, more than 0
     */
    public CellGrid(double westM, double southM, double cellM, int columns, int rows) {
        this.westM = westM;
        this.southM = southM;
        this.cellM = cellM;
        this.columns = columns;
        this.rows = rows;
        cellsPerM = 1 / cellM;
        centreXM = new double[columns];
        for (int column = 0; column < columns; column++) {
            centreXM[column] = westM + (column + 0.5) * cellM;
        }
    }

    /** The smallest grid of whole cells from the south-western corner that covers the rectangle. */
    public static CellGrid over(double westM, double southM, double eastM, double northM, double cellM) {
        return new CellGrid(westM, southM, cellM, cellsIn(eastM - westM, cellM), cellsIn(northM - southM, cellM));
    }

    /** As {@link #over}, with the cell doubled until there are no more than {@code mostCells}. */
    public static CellGrid over(Bounds bounds, double cellM, int mostCells) {
        double side = cellM;
        while (Math.ceil(bounds.widthM() / side) * Math.ceil(bounds.heightM() / side) > mostCells) {
            side *= 2;
        }
        return over(bounds.leastXM(), bounds.leastYM(), bounds.mostXM(), bounds.mostYM(), side);
    }

    /** The same cells and as many more on each side. */
    public CellGrid grown(int cells) {
        return new CellGrid(
                westM - cells * cellM, southM - cells * cellM, cellM, columns + 2 * cells, rows + 2 * cells);
    }

    private static int cellsIn(double lengthM, double cellM) {
        // A length that is a whole number of cells but for rounding gets no extra cell.
        return Math.max(1, (int) Math.ceil(lengthM / cellM - 1e-9));
    }

    public double westM() {
        return westM;
    }

    public double southM() {
        return southM;
    }

    public double cellM() {
        return cellM;
    }

    public int columns() {
        return columns;
    }

    public int rows() {
        return rows;
    }

    public int cells() {
        return columns * rows;
    }

    public double cellAreaM2() {
        return cellM * cellM;
    }

    public double centreXM(int column) {
        return westM + (column + 0.5) * cellM;
    }

    public double centreYM(int row) {
        return southM + (row + 0.5) * cellM;
    }

    /** Centres of the columns, for the inner loops of this package only; not to be written. */
    double[] centresXM() {
        return centreXM;
    }

    /** First row whose centre is not south of {@code yM}; may be outside the grid. */
    int firstRowFrom(double yM) {
        return (int) Math.ceil((yM - southM) * cellsPerM - 0.5);
    }

    /** First column whose centre is not west of {@code xM}; outside the grid it is clipped to 0 and {@code columns}. */
    int firstColumnFrom(double xM) {
        double column = Math.ceil((xM - westM) * cellsPerM - 0.5);
        return column <= 0 ? 0 : column >= columns ? columns : (int) column;
    }

    /** One past the last column whose centre is not east of {@code xM}; clipped to 0 and {@code columns}. */
    int endColumnTo(double xM) {
        double column = Math.floor((xM - westM) * cellsPerM + 0.5);
        return column <= 0 ? 0 : column >= columns ? columns : (int) column;
    }
}
