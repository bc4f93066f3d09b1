package leat.calc.internal.cells;

/** How much of a surface a head reaches, counted in cells. */
public final class ReachedCells {

    private final CellGrid grid;
    private final SectorRows sector;

    public ReachedCells(CellGrid grid, HeadArrays heads) {
        this.grid = grid;
        sector = new SectorRows(grid, heads);
    }

    /** Area of those cells of the surface that the head reaches. */
    public double areaM2(int head, CellRuns surface) {
        return cells(head, surface) * grid.cellAreaM2();
    }

    public int cells(int head, CellRuns surface) {
        sector.turnTo(head);
        int endRow = sector.endRow();
        int cells = 0;
        for (int row = sector.firstRow(); row < endRow; row++) {
            sector.seek(row);
            cells += surface.overlap(row, sector.fromA(), sector.endA());
            cells += surface.overlap(row, sector.fromB(), sector.endB());
        }
        return cells;
    }
}
