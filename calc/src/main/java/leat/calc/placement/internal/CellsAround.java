package leat.calc.placement.internal;

import leat.calc.internal.cells.CellGrid;

/**
 * The cells around a spot, row by row, each with the directions that it fills as seen from there. Directions are counted
 * clockwise from north in {@link #STEPS} equal steps. Can be used again and again; allocates only when more cells are seen
 * than ever before.
 */
final class CellsAround {

    static final int STEPS = 720;
    static final double STEP_DEG = 360.0 / STEPS;

    private static final double HALF_CELL_DEG = Math.toDegrees(0.5);

    private final Plot plot;
    private int count;
    private double[] awayM = new double[0];
    private int[] firstStep = new int[0];
    private int[] steps = new int[0];
    private byte[] cover = new byte[0];

    CellsAround(Plot plot) {
        this.plot = plot;
    }

    /** Sees the cells whose centres lie so near to the spot; one that lies on it has no direction and is left out. */
    void look(Spot spot, double withinM) {
        CellGrid grid = plot.grid();
        double cellM = grid.cellM();
        int firstRow = Math.max(0, (int) ((spot.yM() - withinM - grid.southM()) / cellM));
        int lastRow = Math.min(grid.rows() - 1, (int) ((spot.yM() + withinM - grid.southM()) / cellM));
        int firstColumn = Math.max(0, (int) ((spot.xM() - withinM - grid.westM()) / cellM));
        int lastColumn = Math.min(grid.columns() - 1, (int) ((spot.xM() + withinM - grid.westM()) / cellM));
        count = 0;
        allow(Math.max(0, lastRow - firstRow + 1) * Math.max(0, lastColumn - firstColumn + 1));
        for (int row = firstRow; row <= lastRow; row++) {
            double northM = grid.centreYM(row) - spot.yM();
            for (int column = firstColumn; column <= lastColumn; column++) {
                double eastM = grid.centreXM(column) - spot.xM();
                double away = Math.sqrt(eastM * eastM + northM * northM);
                if (away <= withinM && away > 0) {
                    cover[count] = plot.cover(row, column);
                    awayM[count] = away;
                    face(Math.toDegrees(Math.atan2(eastM, northM)), Math.min(90, HALF_CELL_DEG * cellM / away));
                }
            }
        }
    }

    private void face(double bearingDeg, double halfDeg) {
        int from = (int) Math.floor((bearingDeg - halfDeg) / STEP_DEG);
        int end = Math.max(from + 1, (int) Math.ceil((bearingDeg + halfDeg) / STEP_DEG));
        firstStep[count] = Math.floorMod(from, STEPS);
        steps[count++] = Math.min(end - from, STEPS);
    }

    private void allow(int cells) {
        if (cells > cover.length) {
            awayM = new double[cells];
            firstStep = new int[cells];
            steps = new int[cells];
            cover = new byte[cells];
        }
    }

    int count() {
        return count;
    }

    double awayM(int cell) {
        return awayM[cell];
    }

    /** From 0 to less than {@link #STEPS}. */
    int firstStep(int cell) {
        return firstStep[cell];
    }

    /** How many steps it fills from its first one on, past north if need be: from 1 to {@link #STEPS}. */
    int steps(int cell) {
        return steps[cell];
    }

    byte cover(int cell) {
        return cover[cell];
    }

    /** How many cells of the surface lie so near. */
    int targetsWithin(double withinM) {
        int targets = 0;
        for (int cell = 0; cell < count; cell++) {
            targets += cover[cell] == Plot.TARGET && awayM[cell] <= withinM ? 1 : 0;
        }
        return targets;
    }
}
