package leat.calc.internal.cells;

/**
 * The cells that one head reaches, row by row: a row of a sector is at most two runs of columns, the western one A and the
 * eastern one B. The sector is closed. Its rim is settled by squared distances of cell centres, its edges to {@link #EDGE_SLACK_M}.
 */
public final class SectorRows {

    /** Absorbs the rounding of an edge that runs exactly through cell centres, as diagonals from a corner do. */
    static final double EDGE_SLACK_M = 1e-9;

    private final CellGrid grid;
    private final HeadArrays heads;
    private int head;
    private double xM;
    private double yM;
    private double squaredRadiusM2;
    private int fromA;
    private int endA;
    private int fromB;
    private int endB;

    public SectorRows(CellGrid grid, HeadArrays heads) {
        this.grid = grid;
        this.heads = heads;
    }

    /** Turns to a head; {@link #firstRow} and {@link #endRow} then bound the rows worth asking for. */
    public void turnTo(int newHead) {
        head = newHead;
        xM = heads.xM(head);
        yM = heads.yM(head);
        squaredRadiusM2 = heads.radiusM(head) * heads.radiusM(head);
    }

    public int firstRow() {
        return Math.max(0, grid.firstRowFrom(yM - heads.radiusM(head)));
    }

    public int endRow() {
        return Math.min(grid.rows(), grid.firstRowFrom(yM + heads.radiusM(head)) + 1);
    }

    /** Finds the runs of a row; an empty one ends where it starts. */
    public void seek(int row) {
        double northM = grid.centreYM(row) - yM;
        double squaredHalfM2 = squaredRadiusM2 - northM * northM;
        fromB = 0;
        endB = 0;
        if (squaredHalfM2 < 0) {
            fromA = 0;
            endA = 0;
            return;
        }
        double halfM = Math.sqrt(squaredHalfM2);
        double distanceM = Math.abs(northM);
        if (distanceM < EDGE_SLACK_M) {
            // Level with the head an edge has no cotangent; the head's own cell is always reached.
            double westM = heads.reachesWest(head) ? -halfM : -EDGE_SLACK_M;
            double eastM = heads.reachesEast(head) ? halfM : EDGE_SLACK_M;
            fromA = fromColumn(westM, -halfM, squaredHalfM2);
            endA = endColumn(eastM, halfM, squaredHalfM2);
            return;
        }
        int interval = HeadArrays.INTERVALS * head + (northM > 0 ? 0 : 2);
        fromA = fromColumn(heads.west(interval) * distanceM - EDGE_SLACK_M, -halfM, squaredHalfM2);
        endA = endColumn(heads.east(interval) * distanceM + EDGE_SLACK_M, halfM, squaredHalfM2);
        if (heads.west(interval + 1) < Double.POSITIVE_INFINITY) {
            fromB = fromColumn(heads.west(interval + 1) * distanceM - EDGE_SLACK_M, -halfM, squaredHalfM2);
            endB = endColumn(heads.east(interval + 1) * distanceM + EDGE_SLACK_M, halfM, squaredHalfM2);
            fromB = Math.max(fromB, endA); // no cell between two near edges may count twice
        }
    }

    private int fromColumn(double edgeM, double rimM, double squaredHalfM2) {
        if (edgeM > rimM) {
            return grid.firstColumnFrom(xM + edgeM);
        }
        int column = grid.firstColumnFrom(xM + rimM);
        return column < grid.columns() && isBeyond(column, squaredHalfM2)
                ? column + 1
                : column > 0 && !isBeyond(column - 1, squaredHalfM2) ? column - 1 : column;
    }

    private int endColumn(double edgeM, double rimM, double squaredHalfM2) {
        if (edgeM < rimM) {
            return grid.endColumnTo(xM + edgeM);
        }
        int column = grid.endColumnTo(xM + rimM);
        return column > 0 && isBeyond(column - 1, squaredHalfM2)
                ? column - 1
                : column < grid.columns() && !isBeyond(column, squaredHalfM2) ? column + 1 : column;
    }

    private boolean isBeyond(int column, double squaredHalfM2) {
        double eastM = grid.centreXM(column) - xM;
        return eastM * eastM > squaredHalfM2;
    }

    public int fromA() {
        return fromA;
    }

    public int endA() {
        return endA;
    }

    public int fromB() {
        return fromB;
    }

    public int endB() {
        return endB;
    }
}
