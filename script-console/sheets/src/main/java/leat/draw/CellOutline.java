package leat.draw;

import java.util.function.IntBinaryOperator;

/**
 * Outlines of the cells of a grid that share a class, as one path: a heat map is one path for each class, not a
 * rectangle for each cell, and has no seams. Holes come out by the even-odd rule.
 */
public final class CellOutline {

    /** Directions of walking with the cells of the class at the right hand, on the sheet (y down). */
    private static final int EAST = 0;

    private static final int SOUTH = 1;
    private static final int WEST = 2;
    private static final int NORTH = 3;
    private static final int[] COLUMN_STEP = {1, 0, -1, 0};
    private static final int[] ROW_STEP = {0, 1, 0, -1};

    private final int columns;
    private final int rows;
    private final boolean[] inside;
    private final boolean[][] edges;

    private CellOutline(int columns, int rows, IntBinaryOperator classAt, int wanted) {
        this.columns = columns;
        this.rows = rows;
        inside = new boolean[columns * rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                inside[row * columns + column] = classAt.applyAsInt(column, row) == wanted;
            }
        }
        edges = edges();
    }

    /**
     * Adds the outlines of all cells of one class to a path.
     *
     * @param classAt class of the cell at (column, row); column 0 is leftmost, row 0 topmost on the sheet
     * @param wanted the class to outline
     * @param left of column 0, in millimetres
     * @param top of row 0, in millimetres
     * @param cellMm side of a cell
     */
    public static void trace(
            PenPath.Builder path,
            int columns,
            int rows,
            IntBinaryOperator classAt,
            int wanted,
            double left,
            double top,
            double cellMm) {
        CellOutline outline = new CellOutline(columns, rows, classAt, wanted);
        int across = columns + 1;
        for (int corner = 0; corner < across * (rows + 1); corner++) {
            for (int direction = EAST; direction <= NORTH; direction++) {
                if (outline.edges[direction][corner]) {
                    outline.loop(corner, direction, path, left, top, cellMm);
                }
            }
        }
    }

    private boolean at(int column, int row) {
        return column >= 0 && row >= 0 && column < columns && row < rows && inside[row * columns + column];
    }

    /** For each direction and corner, whether an edge of the outline leaves the corner in that direction. */
    private boolean[][] edges() {
        int across = columns + 1;
        boolean[][] leaving = new boolean[4][across * (rows + 1)];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                if (!at(column, row)) {
                    continue;
                }
                leaving[EAST][row * across + column] = !at(column, row - 1);
                leaving[SOUTH][row * across + column + 1] = !at(column + 1, row);
                leaving[WEST][(row + 1) * across + column + 1] = !at(column, row + 1);
                leaving[NORTH][(row + 1) * across + column] = !at(column - 1, row);
            }
        }
        return leaving;
    }

    /** Walks one loop, turning right where two meet at a corner, and writes only the corners where it turns. */
    private void loop(int start, int firstDirection, PenPath.Builder path, double left, double top, double cellMm) {
        int across = columns + 1;
        int corner = start;
        int direction = firstDirection;
        int last = -1;
        boolean first = true;
        while (edges[direction][corner]) {
            edges[direction][corner] = false;
            if (direction != last) {
                int column = corner % across;
                int row = corner / across;
                double x = left + column * cellMm;
                double y = top + row * cellMm;
                if (first) {
                    path.moveTo(x, y);
                    first = false;
                } else {
                    path.lineTo(x, y);
                }
            }
            last = direction;
            corner += ROW_STEP[direction] * across + COLUMN_STEP[direction];
            direction = next(corner, direction);
        }
        path.close();
    }

    private int next(int corner, int direction) {
        int right = (direction + 1) % 4;
        int leftTurn = (direction + 3) % 4;
        if (edges[right][corner]) {
            return right;
        }
        return edges[direction][corner] ? direction : leftTurn;
    }
}
