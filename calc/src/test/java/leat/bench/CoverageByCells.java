package leat.bench;

import java.util.Arrays;

/** What the rivals of coverage share: a depth and a count for every cell, and the figures that a program of its own makes of them. */
abstract class CoverageByCells implements Entrant {

    final CoverageInstance instance;
    final double[] depth;
    final int[] reach;
    final boolean[] lawn;
    private int cells;
    private double mean;
    private double christiansen;
    private double lowQuarter;
    private double shareByTwo;

    CoverageByCells(CoverageInstance instance) {
        this.instance = instance;
        int all = instance.columns() * instance.rows();
        depth = new double[all];
        reach = new int[all];
        lawn = new boolean[all];
    }

    /** Fills depth and reach of the cells on the lawn, and says which these are. */
    abstract void fill();

    @Override
    public final double solve() {
        Arrays.fill(depth, 0);
        Arrays.fill(reach, 0);
        fill();
        double[] onLawn = new double[depth.length];
        cells = 0;
        int byTwo = 0;
        double sum = 0;
        for (int i = 0; i < depth.length; i++) {
            if (lawn[i]) {
                onLawn[cells++] = depth[i];
                sum += depth[i];
                byTwo += reach[i] >= 2 ? 1 : 0;
            }
        }
        mean = sum / cells;
        double deviations = 0;
        for (int i = 0; i < cells; i++) {
            deviations += Math.abs(onLawn[i] - mean);
        }
        christiansen = 1 - deviations / sum;
        int quarter = cells / 4;
        lowQuarter = Selection.sumOfSmallest(onLawn, cells, quarter) / quarter / mean;
        shareByTwo = (double) byTwo / cells;
        return christiansen + lowQuarter;
    }

    @Override
    public final Answer answer() {
        return CoverageInstance.answer(cells, mean, christiansen, lowQuarter, shareByTwo);
    }

    final double christiansen() {
        return christiansen;
    }

    final double lowQuarter() {
        return lowQuarter;
    }

    final void findLawnByCrossings() {
        for (int row = 0; row < instance.rows(); row++) {
            for (int column = 0; column < instance.columns(); column++) {
                lawn[row * instance.columns() + column] =
                        instance.onLawn(instance.centreM(column), instance.centreM(row));
            }
        }
    }

    /** Depth rate in mm/h right at a head. */
    final double depthAtHead(int head) {
        return 6
                * instance.flowLPerH()[head]
                / (Math.toRadians(instance.sweepDeg()[head]) * instance.radiusM()[head] * instance.radiusM()[head]);
    }
}
