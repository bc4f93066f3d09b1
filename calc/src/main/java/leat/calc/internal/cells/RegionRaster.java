package leat.calc.internal.cells;

import java.util.Arrays;

/**
 * Finds the cells whose centres lie in a region: for each row the crossings with all rings, sorted, are taken in pairs, so that
 * holes need no care and rings may turn either way. A centre on a southern or western edge belongs to the region, one on a
 * northern or eastern edge to its neighbour; regions that share an edge therefore share no cell.
 */
public final class RegionRaster {

    private double[] crossingXM = new double[16];

    /**
     * @param ringsM for each ring its corners x0, y0, x1, y1, …; not closed by repeating the first
     * @param out    takes the runs
     */
    public void rasterise(CellGrid grid, double[][] ringsM, CellRuns out) {
        out.clear(grid.rows());
        for (int row = 0; row < grid.rows(); row++) {
            int crossings = crossingsOf(grid.centreYM(row), ringsM);
            Arrays.sort(crossingXM, 0, crossings);
            for (int i = 0; i + 1 < crossings; i += 2) {
                out.add(grid.firstColumnFrom(crossingXM[i]), grid.firstColumnFrom(crossingXM[i + 1]));
            }
            out.endRow();
        }
    }

    private int crossingsOf(double yM, double[][] ringsM) {
        int crossings = 0;
        for (double[] ringM : ringsM) {
            double x0 = ringM[ringM.length - 2];
            double y0 = ringM[ringM.length - 1];
            for (int i = 0; i < ringM.length; i += 2) {
                double x1 = ringM[i];
                double y1 = ringM[i + 1];
                if ((y0 <= yM) != (y1 <= yM)) {
                    if (crossings == crossingXM.length) {
                        crossingXM = Arrays.copyOf(crossingXM, 2 * crossings);
                    }
                    crossingXM[crossings++] = x0 + (x1 - x0) * ((yM - y0) / (y1 - y0));
                }
                x0 = x1;
                y0 = y1;
            }
        }
        return crossings;
    }
}
