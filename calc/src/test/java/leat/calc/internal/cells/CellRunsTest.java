package leat.calc.internal.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;

/** Sets of cells against the same asked cell by cell. */
@Tag("law")
class CellRunsTest {

    private static final CellGrid GRID = new CellGrid(-13, -13, 0.5, 52, 52);

    private static double[][] star(Random random) {
        return Scene.random(random.nextLong()).ringsM;
    }

    private static CellRuns raster(double[][] ringsM) {
        var runs = new CellRuns();
        new RegionRaster().rasterise(GRID, ringsM, runs);
        return runs;
    }

    @RepeatedTest(40)
    void aDifferenceHoldsWhatIsInOneAndNotInTheOther(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        CellRuns of = raster(star(random));
        CellRuns less = raster(star(random));
        var left = new CellRuns();
        left.difference(of, less);
        int cells = 0;
        for (int row = 0; row < GRID.rows(); row++) {
            for (int column = 0; column < GRID.columns(); column++) {
                boolean expected = of.contains(row, column) && !less.contains(row, column);
                assertEquals(expected, left.contains(row, column));
                cells += expected ? 1 : 0;
            }
        }
        assertEquals(cells, left.cells());
    }

    @RepeatedTest(20)
    void marginsKeepTheirDistanceFromTheBorder(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        double[][] ringsM = star(random);
        double marginM = random.nextDouble(0, 2);
        var inside = new CellRuns();
        var outside = new CellRuns();
        var margins = new Margins(GRID);
        margins.inside(ringsM, marginM, inside);
        margins.outside(ringsM, marginM, outside);
        CellRuns region = raster(ringsM);
        for (int row = 0; row < GRID.rows(); row++) {
            for (int column = 0; column < GRID.columns(); column++) {
                double awayM = Segments.distanceToBorderM(GRID.centreXM(column), GRID.centreYM(row), ringsM);
                boolean far = awayM > marginM;
                assertEquals(far && region.contains(row, column), inside.contains(row, column));
                assertEquals(far && !region.contains(row, column), outside.contains(row, column));
            }
        }
    }
}
