package leat.calc.placement.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.HeadArrays;
import leat.calc.internal.cells.RegionRaster;
import leat.document.StandingData;
import leat.model.catalog.Catalog;
import leat.model.catalog.HeadFamily;
import leat.model.geometry.Bounds;
import leat.model.plan.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class LayoutLawTest {

    private static final double[][] SQUARE = {{0, 0, 12, 0, 12, 12, 0, 12}};

    private final CellGrid grid = CellGrid.over(new Bounds(0, 0, 12, 12), 0.25, 1_000_000);
    private final CellRuns cells = new CellRuns();

    /** A head turned down to three quarters waters (4/3)² = 1.78 times as fast, since its flow goes by the arc alone. */
    @Test
    void headsThatCannotRunTogetherCost() {
        new RegionRaster().rasterise(grid, SQUARE, cells);
        var plot = new Plot(grid, SQUARE, 2, cells, new CellRuns[0], new CellRuns[0], KeepOff.NOTHING);
        assertEquals(0.15, cost(plot, 1.7) - cost(plot, 1.8), 1e-12);
        assertEquals(0, cost(plot, 1.8) - cost(plot, 9), 1e-12);
    }

    private double cost(Plot plot, double paceRatio) {
        Catalog catalog = StandingData.load(Yard.EDITION).catalog();
        HeadFamily family = catalog.head("multi-4_9");
        Offer offer = Offer.of(0, family, catalog.profile(family.jet().profile()));
        var pool = new Pool(plot, 0, KeepOff.NOTHING);
        var spots = new Spots(plot);
        Candidate full = pool.best(spots.inner(3, 6).orElseThrow(), offer).orElseThrow();
        Candidate other = pool.best(spots.inner(9, 6).orElseThrow(), offer).orElseThrow();
        var turnedDown = new Candidate(
                other.spot(),
                offer,
                0.75 * full.radiusM(),
                other.startDeg(),
                other.sweepDeg(),
                other.bits(),
                other.reached(),
                other.bare());
        var layout = new Layout(plot, Given.of(grid, cells, new HeadArrays(0), plot, 0), paceRatio, 2);
        layout.add(full);
        layout.add(turnedDown);
        return layout.cost();
    }
}
