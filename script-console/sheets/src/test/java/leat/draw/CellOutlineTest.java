package leat.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class CellOutlineTest {

    /** Shoelace sum over the loops of a path. */
    private static final class Area implements PenPath.Pen {
        private double startX;
        private double startY;
        private double x;
        private double y;
        private double twice;
        private int corners;

        @Override
        public void moveTo(double toX, double toY) {
            startX = x = toX;
            startY = y = toY;
            corners++;
        }

        @Override
        public void lineTo(double toX, double toY) {
            twice += x * toY - toX * y;
            x = toX;
            y = toY;
            corners++;
        }

        @Override
        public void arcTo(double radius, boolean large, boolean clockwise, double toX, double toY) {
            throw new AssertionError("no arcs here");
        }

        @Override
        public void close() {
            twice += x * startY - startX * y;
        }
    }

    @RepeatedTest(50)
    void theOutlineHoldsExactlyTheAreaOfItsCells(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        int[][] grid = new int[17][23];
        int cells = 0;
        for (int[] row : grid) {
            for (int column = 0; column < row.length; column++) {
                row[column] = random.nextInt(3);
                cells += row[column] == 1 ? 1 : 0;
            }
        }
        Area area = new Area();
        PenPath.Builder path = PenPath.builder();
        CellOutline.trace(path, 23, 17, (column, row) -> grid[row][column], 1, 5, 7, 2);
        path.build().trace(area);
        assertEquals(cells * 4.0, Math.abs(area.twice / 2), 1e-9);
    }

    @Test
    void aSquareOfManyCellsHasFourCorners() {
        Area area = new Area();
        PenPath.Builder path = PenPath.builder();
        CellOutline.trace(path, 10, 10, (column, row) -> 0, 0, 0, 0, 1);
        path.build().trace(area);
        assertEquals(4, area.corners);
    }

    @Test
    void aClassWithoutCellsGivesNothing() {
        PenPath.Builder path = PenPath.builder();
        CellOutline.trace(path, 3, 3, (column, row) -> 0, 1, 0, 0, 1);
        assertTrue(path.isEmpty());
    }
}
