package leat.calc.internal.cells;

import java.util.List;
import leat.model.site.Surface;

/** What covers the ground where surfaces are drawn over each other: buildings lie on paving, paving on beds, beds on lawns. */
public final class Covers {

    private Covers() {}

    /** The cells of a surface that no surface of a higher rank covers. */
    public static CellRuns openCells(CellGrid grid, Surface surface, List<Surface> all) {
        var raster = new RegionRaster();
        var open = new CellRuns();
        raster.rasterise(grid, Rings.of(surface.region()), open);
        for (Surface other : all) {
            if (isAbove(other, surface)) {
                var above = new CellRuns();
                raster.rasterise(grid, Rings.of(other.region()), above);
                if (above.cells() > 0) {
                    var left = new CellRuns();
                    left.difference(open, above);
                    open = left;
                }
            }
        }
        return open;
    }

    /** Whether the other surface covers this one where both are drawn. */
    public static boolean isAbove(Surface other, Surface surface) {
        return other.kind().rank() > surface.kind().rank();
    }
}
