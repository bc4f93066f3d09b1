package leat.calc.internal.cells;

import java.util.Arrays;

/**
 * What all heads together put on each cell: depth rate, and how many reach it. A head can be taken out and put back, so that
 * moving one costs two heads instead of all; each move may leave a rounding of the last digit in the depth, none in the reach.
 */
public final class Wetting {

    private final CellGrid grid;
    private final HeadArrays heads;
    private final SectorRows sector;

    /** One array a row: when all arrays of a loop share one index the compiler makes vector instructions of it. */
    private final double[][] rateMPerS;

    /**
     * Where reach rises and falls along each row: a head adds 1 where a run begins and takes 1 where it ends. One entry more
     * than columns. Sums along the row give the reach, so a head costs a row two writes and not one a cell.
     */
    private final int[][] step;

    public Wetting(CellGrid grid, HeadArrays heads) {
        this.grid = grid;
        this.heads = heads;
        sector = new SectorRows(grid, heads);
        rateMPerS = new double[grid.rows()][grid.columns()];
        step = new int[grid.rows()][grid.columns() + 1];
    }

    public CellGrid grid() {
        return grid;
    }

    public HeadArrays heads() {
        return heads;
    }

    /** Starts again from dry ground and adds all heads, in order. */
    public void wetAll() {
        clear();
        for (int head = 0; head < heads.size(); head++) {
            add(head);
        }
    }

    public void clear() {
        for (int row = 0; row < grid.rows(); row++) {
            Arrays.fill(rateMPerS[row], 0);
            Arrays.fill(step[row], 0);
        }
    }

    public void add(int head) {
        apply(head, 1);
    }

    /** Takes out a head that was added; it must not have been changed since. */
    public void remove(int head) {
        apply(head, -1);
    }

    private void apply(int head, int sign) {
        sector.turnTo(head);
        int endRow = sector.endRow();
        for (int row = sector.firstRow(); row < endRow; row++) {
            sector.seek(row);
            if (sector.fromA() < sector.endA()) {
                applyRun(head, row, sector.fromA(), sector.endA(), sign);
            }
            if (sector.fromB() < sector.endB()) {
                applyRun(head, row, sector.fromB(), sector.endB(), sign);
            }
        }
    }

    private void applyRun(int head, int row, int from, int end, int sign) {
        step[row][from] += sign;
        step[row][end] -= sign;
        double xM = heads.xM(head);
        double northM = grid.centreYM(row) - heads.yM(head);
        double squaredNorthM2 = northM * northM;
        double rate = sign * heads.meanRateMPerS(head);
        double perRadius = 1 / heads.radiusM(head);
        DepthCurve profile = heads.profile(head);
        if (profile.isStraight()) {
            double atCentre = rate * profile.straightAtCentre();
            double slopePerM = rate * profile.straightSlope() * perRadius;
            addStraight(rateMPerS[row], grid.centresXM(), from, end, xM, squaredNorthM2, atCentre, slopePerM);
        } else {
            addBent(rateMPerS[row], grid.centresXM(), from, end, xM, squaredNorthM2, rate, perRadius, profile);
        }
    }

    private static void addStraight(
            double[] rateMPerS,
            double[] centreXM,
            int from,
            int end,
            double xM,
            double squaredNorthM2,
            double atCentre,
            double slopePerM) {
        for (int column = from; column < end; column++) {
            double eastM = centreXM[column] - xM;
            rateMPerS[column] += atCentre + slopePerM * Math.sqrt(eastM * eastM + squaredNorthM2);
        }
    }

    private static void addBent(
            double[] rateMPerS,
            double[] centreXM,
            int from,
            int end,
            double xM,
            double squaredNorthM2,
            double rate,
            double perRadius,
            DepthCurve profile) {
        for (int column = from; column < end; column++) {
            double eastM = centreXM[column] - xM;
            double fraction = Math.sqrt(eastM * eastM + squaredNorthM2) * perRadius;
            rateMPerS[column] += rate * profile.relativeDepth(fraction);
        }
    }

    public double rateMPerS(int row, int column) {
        return rateMPerS[row][column];
    }

    /** For the loops of this package only; not to be written. */
    double[] ratesMPerS(int row) {
        return rateMPerS[row];
    }

    /** For the loops of this package only; see {@link #step}. */
    int[] steps(int row) {
        return step[row];
    }

    /** Writes to {@code out}, one entry a column, how many heads reach each cell of a row. */
    public void reach(int row, int[] out) {
        int[] rowStep = step[row];
        int count = 0;
        for (int column = 0; column < grid.columns(); column++) {
            count += rowStep[column];
            out[column] = count;
        }
    }
}
