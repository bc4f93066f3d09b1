package leat.calc.internal.cells;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import leat.calc.internal.cells.Scene.HeadAt;
import leat.calc.internal.cells.Scene.Measured;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds for every lawn and every set of heads. */
@Tag("law")
class CoverageLawTest {

    private static final CellGrid GRID = new CellGrid(-13, -13, 0.25, 104, 104);

    @RepeatedTest(40)
    void turningTheYardChangesNoMeasure(RepetitionInfo turn) {
        Scene scene = Scene.random(turn.getCurrentRepetition());
        assertSameMeasures(
                new Measured(scene, GRID), new Measured(scene.moved(turn.getCurrentRepetition() % 4, 0, 0), GRID));
    }

    @RepeatedTest(40)
    void shiftingTheYardChangesNoMeasure(RepetitionInfo turn) {
        Scene scene = Scene.random(turn.getCurrentRepetition());
        Measured shifted = new Measured(scene.moved(0, 512, -256), new CellGrid(499, -269, 0.25, 104, 104));
        assertSameMeasures(new Measured(scene, GRID), shifted);
    }

    @RepeatedTest(40)
    void enlargingTheYardChangesNoMeasure(RepetitionInfo turn) {
        Scene scene = Scene.random(turn.getCurrentRepetition());
        Measured larger = new Measured(scene.scaled(3), new CellGrid(-39, -39, 0.75, 104, 104));
        assertSameMeasures(new Measured(scene, GRID), larger);
    }

    @RepeatedTest(40)
    void moreWaterFromEveryHeadIsAsEven(RepetitionInfo turn) {
        Scene scene = Scene.random(turn.getCurrentRepetition());
        HeadAt[] stronger = Arrays.stream(scene.heads)
                .map(h -> new HeadAt(h.xM(), h.yM(), h.radiusM(), h.startDeg(), h.sweepDeg(), 7 * h.rateMPerS()))
                .toArray(HeadAt[]::new);
        Measured before = new Measured(scene, GRID);
        Measured after = new Measured(new Scene(scene.ringsM, scene.profile, stronger), GRID);
        assertEquals(7 * before.evenness.meanRateMPerS(), after.evenness.meanRateMPerS(), 1e-17);
        assertEquals(before.evenness.christiansen(), after.evenness.christiansen(), 1e-12);
        assertEquals(before.evenness.lowQuarter(), after.evenness.lowQuarter(), 1e-12);
    }

    @RepeatedTest(40)
    void anotherHeadNeverTakesReachOrWaterAway(RepetitionInfo turn) {
        Scene scene = Scene.random(turn.getCurrentRepetition());
        HeadAt[] fewer = Arrays.copyOf(scene.heads, scene.heads.length - 1);
        Measured before = new Measured(new Scene(scene.ringsM, scene.profile, fewer), GRID);
        Measured after = new Measured(scene, GRID);
        for (int row = 0; row < GRID.rows(); row++) {
            for (int column = 0; column < GRID.columns(); column++) {
                assertTrue(after.reach(row, column) >= before.reach(row, column));
                double lost = before.wetting.rateMPerS(row, column) - after.wetting.rateMPerS(row, column);
                assertTrue(lost < 1e-18); // the wedge ends at nothing, give or take a rounding
            }
        }
    }

    @RepeatedTest(40)
    void movingHeadsOneByOneIsAsGoodAsStartingAgain(RepetitionInfo turn) {
        Scene from = Scene.random(turn.getCurrentRepetition());
        var moved = new Measured(from, GRID);
        var random = new Random(turn.getCurrentRepetition());
        HeadAt[] heads = from.heads.clone();
        for (int i = 0; i < heads.length; i++) {
            HeadAt h = heads[i];
            heads[i] = new HeadAt(
                    h.xM() + random.nextDouble(-1, 1),
                    h.yM(),
                    h.radiusM() + 0.1,
                    h.startDeg() + 10,
                    h.sweepDeg(),
                    h.rateMPerS());
            moved.wetting.remove(i);
            from.set(moved.heads, i, heads[i]);
            moved.wetting.add(i);
        }
        moved.evenness.measure(moved.wetting, moved.surface);
        assertSameMeasures(new Measured(new Scene(from.ringsM, from.profile, heads), GRID), moved);
    }

    /** As much water as the heads give falls on the ground; 0.1 m cells catch narrow sectors to half a hundredth. */
    @RepeatedTest(20)
    void noWaterIsLost(RepetitionInfo turn) {
        Scene scene = Scene.random(turn.getCurrentRepetition());
        double[] everywhere = {-22, -22, 22, -22, 22, 22, -22, 22};
        var measured = new Measured(
                new Scene(new double[][] {everywhere}, scene.profile, scene.heads),
                CellGrid.over(-22, -22, 22, 22, 0.1));
        double givenM3PerS = 0;
        for (int head = 0; head < scene.heads.length; head++) {
            givenM3PerS += measured.heads.meanRateMPerS(head) * measured.heads.wettedAreaM2(head);
        }
        double caughtM3PerS = measured.evenness.meanRateMPerS() * measured.evenness.cells() * 0.01;
        assertEquals(1, caughtM3PerS / givenM3PerS, 0.005);
    }

    /** Edges through cell centres: a square split along its diagonals into four quarters is reached everywhere. */
    @Test
    void sectorsThatShareAnEdgeLeaveNoGap() {
        double[] square = {-5, -5, 5, -5, 5, 5, -5, 5};
        Scene quarters = Scene.of(
                square,
                new HeadAt(0, 0, 8, 45, 90, 1),
                new HeadAt(0, 0, 8, 135, 90, 1),
                new HeadAt(0, 0, 8, 225, 90, 1),
                new HeadAt(0, 0, 8, 315, 90, 1));
        var measured = new Measured(quarters, CellGrid.over(-5, -5, 5, 5, 0.25));
        assertEquals(measured.evenness.cells(), measured.evenness.cellsReachedByOne());
        assertEquals(80, measured.evenness.cellsReachedByTwo()); // the diagonals, and they only
    }

    @Test
    void aRowLevelWithTheHeadBelongsToTheSidesOfItsArc() {
        double[] square = {-4.5, -4.5, 4.5, -4.5, 4.5, 4.5, -4.5, 4.5};
        CellGrid grid = CellGrid.over(-4.5, -4.5, 4.5, 4.5, 1);
        assertArrayEquals(new int[] {0, 0, 0, 0, 1, 1, 1, 1, 0}, rowOfHead(square, grid, 0, 90));
        assertArrayEquals(new int[] {0, 1, 1, 1, 1, 0, 0, 0, 0}, rowOfHead(square, grid, 90, 90));
        assertArrayEquals(new int[] {0, 1, 1, 1, 1, 1, 1, 1, 0}, rowOfHead(square, grid, 180, 180));
        assertArrayEquals(new int[] {0, 0, 0, 0, 1, 0, 0, 0, 0}, rowOfHead(square, grid, 30, 90));
        assertArrayEquals(new int[] {0, 0, 0, 0, 1, 1, 1, 1, 0}, rowOfHead(square, grid, 200, 300));
    }

    private static int[] rowOfHead(double[] square, CellGrid grid, double startDeg, double sweepDeg) {
        int[] reach = new int[grid.columns()];
        new Measured(Scene.of(square, new HeadAt(0, 0, 3, startDeg, sweepDeg, 1)), grid).wetting.reach(4, reach);
        return reach;
    }

    @Test
    void surfacesThatShareAnEdgeShareNoCell() {
        double[] west = {0, 0, 2.125, 0, 2.125, 3, 0, 3};
        double[] east = {2.125, 0, 4, 0, 4, 3, 2.125, 3};
        var grid = CellGrid.over(0, 0, 4, 3, 0.25);
        var westRuns = new CellRuns();
        var eastRuns = new CellRuns();
        new RegionRaster().rasterise(grid, new double[][] {west}, westRuns);
        new RegionRaster().rasterise(grid, new double[][] {east}, eastRuns);
        assertEquals(grid.cells(), westRuns.cells() + eastRuns.cells());
    }

    @RepeatedTest(20)
    void oversprayIsWhatReachSaysOfOneHead(RepetitionInfo turn) {
        Scene scene = Scene.random(turn.getCurrentRepetition());
        Scene one = new Scene(scene.ringsM, scene.profile, scene.heads[0]);
        var measured = new Measured(one, GRID);
        int cells = new ReachedCells(GRID, measured.heads).cells(0, measured.surface);
        assertEquals(measured.evenness.cellsReachedByOne(), cells);
    }

    private static void assertSameMeasures(Measured expected, Measured actual) {
        // A cell whose centre lies on a border to the last digit may fall to either side when the numbers change.
        double oneCell = 1.0 / expected.evenness.cells();
        assertEquals(expected.evenness.cells(), actual.evenness.cells(), 1);
        assertEquals(expected.evenness.cellsReachedByOne(), actual.evenness.cellsReachedByOne(), 1);
        assertEquals(expected.evenness.cellsReachedByTwo(), actual.evenness.cellsReachedByTwo(), 1);
        assertEquals(expected.evenness.meanRateMPerS(), actual.evenness.meanRateMPerS(), oneCell * 1e-6);
        assertEquals(expected.evenness.christiansen(), actual.evenness.christiansen(), oneCell);
        assertEquals(expected.evenness.lowQuarter(), actual.evenness.lowQuarter(), oneCell);
    }
}
