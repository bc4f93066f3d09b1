package leat.calc.placement.internal;

import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.HeadArrays;

/**
 * The heads that the user stated, which stay as they are, and the grid on which evenness is measured.
 *
 * @param grid    that of the surface alone
 * @param surface its cells on that grid, in the same order as those of the plot
 * @param heads   all given heads that throw, wherever they stand
 * @param marked  for each the cells of the surface that it reaches
 */
public record Given(CellGrid grid, CellRuns surface, HeadArrays heads, long[][] marked) {

    /**
     * Works out what the given heads reach on the plot.
     *
     * @param reserveRatio share of their radius that does not count, 0 or more and less than 1
     */
    public static Given of(CellGrid grid, CellRuns surface, HeadArrays heads, Plot plot, double reserveRatio) {
        var reach = new HeadArrays(heads.size());
        for (int i = 0; i < heads.size(); i++) {
            reach.copy(i, heads, i);
            reach.radius(i, heads.radiusM(i) * (1 - reserveRatio));
        }
        var marks = new ReachMarks(plot, reach);
        long[][] marked = new long[heads.size()][];
        for (int i = 0; i < marked.length; i++) {
            marked[i] = new long[(plot.targetCells() + 63) / 64];
            marks.mark(i, marked[i]);
        }
        return new Given(grid, surface, heads, marked);
    }

    int count() {
        return marked.length;
    }

    long[] bits(int head) {
        return marked[head];
    }

    void copyTo(HeadArrays other, int head) {
        other.copy(head, heads, head);
    }
}
