package leat.calc.placement.internal;

import leat.calc.internal.cells.HeadArrays;
import leat.calc.internal.cells.SectorRows;

/** Marks the cells of a plot's surface that a head reaches, and counts what else it throws on. */
final class ReachMarks {

    private final Plot plot;
    private final SectorRows sector;
    private int bare;
    private int dry;

    ReachMarks(Plot plot, HeadArrays heads) {
        this.plot = plot;
        sector = new SectorRows(plot.grid(), heads);
    }

    /** Sets a bit for each cell of the surface within reach. */
    void mark(int head, long[] bits) {
        bare = 0;
        dry = 0;
        sector.turnTo(head);
        int endRow = sector.endRow();
        for (int row = sector.firstRow(); row < endRow; row++) {
            sector.seek(row);
            mark(row, sector.fromA(), sector.endA(), bits);
            mark(row, sector.fromB(), sector.endB(), bits);
        }
    }

    private void mark(int row, int from, int end, long[] bits) {
        for (int column = from; column < end; column++) {
            int index = plot.targetIndex(row, column);
            if (index >= 0) {
                bits[index >>> 6] |= 1L << index;
            }
            byte cover = plot.cover(row, column);
            bare += cover == Plot.BARE ? 1 : 0;
            dry += cover == Plot.DRY ? 1 : 0;
        }
    }

    /** Cells on which the head marked last throws for nothing. */
    int bare() {
        return bare;
    }

    /** Cells on which it throws though they must stay dry. */
    int dry() {
        return dry;
    }
}
