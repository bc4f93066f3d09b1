package leat.calc.internal.cells;

import java.util.Arrays;

/** The cells of a grid that belong to a surface, as runs along the rows. Filled by {@link RegionRaster}; can be filled again. */
public final class CellRuns {

    private int[] firstRun = new int[1];
    private int[] from = new int[16];
    private int[] end = new int[16];
    private int runs;
    private int rows;
    private int cells;

    /** Forgets all runs; rows are then opened one after the other. */
    void clear(int rowsToCome) {
        if (firstRun.length < rowsToCome + 1) {
            firstRun = new int[rowsToCome + 1];
        }
        rows = 0;
        runs = 0;
        cells = 0;
        firstRun[0] = 0;
    }

    /** Adds a run to the row being filled; empty ones are left out, and one that touches the last is joined to it. */
    void add(int fromColumn, int endColumn) {
        if (fromColumn >= endColumn) {
            return;
        }
        cells += endColumn - fromColumn;
        if (runs > firstRun[rows] && end[runs - 1] == fromColumn) {
            end[runs - 1] = endColumn;
            return;
        }
        if (runs == from.length) {
            from = Arrays.copyOf(from, 2 * runs);
            end = Arrays.copyOf(end, 2 * runs);
        }
        from[runs] = fromColumn;
        end[runs] = endColumn;
        runs++;
    }

    void endRow() {
        rows++;
        firstRun[rows] = runs;
    }

    public int rows() {
        return rows;
    }

    /** Number of cells in all runs. */
    public int cells() {
        return cells;
    }

    /** First run of a row; the runs of the row end before {@code firstRun(row + 1)}. */
    public int firstRun(int row) {
        return firstRun[row];
    }

    /** First column of a run. */
    public int from(int run) {
        return from[run];
    }

    /** One past the last column of a run. */
    public int end(int run) {
        return end[run];
    }

    public boolean contains(int row, int column) {
        for (int run = firstRun[row]; run < firstRun[row + 1]; run++) {
            if (column >= from[run] && column < end[run]) {
                return true;
            }
        }
        return false;
    }

    /** Makes this what is left of another surface when the cells of a third are taken away. */
    public void difference(CellRuns of, CellRuns less) {
        clear(of.rows);
        for (int row = 0; row < of.rows; row++) {
            int cut = less.firstRun[row];
            for (int run = of.firstRun[row]; run < of.firstRun[row + 1]; run++) {
                int at = of.from[run];
                while (cut < less.firstRun[row + 1] && less.from[cut] < of.end[run]) {
                    add(at, Math.min(less.from[cut], of.end[run]));
                    at = Math.max(at, less.end[cut]);
                    if (less.end[cut] > of.end[run]) {
                        break; // it may cut the next run too
                    }
                    cut++;
                }
                add(at, of.end[run]);
            }
            endRow();
        }
    }

    /** How many cells of {@code fromColumn} to before {@code endColumn} in the row belong to the surface. */
    int overlap(int row, int fromColumn, int endColumn) {
        int count = 0;
        for (int run = firstRun[row]; run < firstRun[row + 1]; run++) {
            count += Math.max(0, Math.min(end[run], endColumn) - Math.max(from[run], fromColumn));
        }
        return count;
    }
}
