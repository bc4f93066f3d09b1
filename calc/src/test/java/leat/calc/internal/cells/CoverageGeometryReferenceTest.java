package leat.calc.internal.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import leat.calc.internal.cells.Scene.HeadAt;
import leat.calc.internal.cells.Scene.Measured;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

/**
 * Source: areas of sectors, of the overlap of two circles and of an L-shaped yard, from geometry; see checks/coverage.json.
 * A count of cells of 0.05 ft is taken for the area: along a border of length L it is off by less than L times a tenth of a cell.
 */
@Tag("reference")
class CoverageGeometryReferenceTest {

    private static final double CELL_FT = 0.05;
    private static final double BORDER_ERROR_FT = CELL_FT / 10;
    private static final double[] SQUARE_FT = {-16, -16, 31, -16, 31, 16, -16, 16};

    @TestFactory
    Stream<DynamicTest> areaOfASector() {
        return Checks.startingWith("ge-sector").stream().map(check -> {
            double radius = Checks.input(check, "radius_ft");
            double sweep = Checks.input(check, "arc_deg");
            Measured measured = measured(Scene.of(SQUARE_FT, new HeadAt(0.013, 0.017, radius, 20, sweep, 1)));
            double border = radius * (2 + Math.toRadians(sweep));
            double area = measured.evenness.cellsReachedByOne() * CELL_FT * CELL_FT;
            return DynamicTest.dynamicTest(
                    check.get("id").asString(),
                    () -> assertEquals(Checks.expected(check, "area_ft2"), area, border * BORDER_ERROR_FT));
        });
    }

    @Test
    void overlapOfTwoCircles() {
        JsonNode check = Checks.named("ge-lens");
        double radius = Checks.input(check, "radius_ft");
        double distance = Checks.input(check, "distance_ft");
        Measured measured = measured(
                Scene.of(SQUARE_FT, new HeadAt(0, 0, radius, 0, 360, 1), new HeadAt(distance, 0, radius, 0, 360, 1)));
        double border = 2 * radius * 2 * Math.acos(distance / 2 / radius);
        assertEquals(
                Checks.expected(check, "area_ft2"),
                measured.evenness.cellsReachedByTwo() * CELL_FT * CELL_FT,
                border * BORDER_ERROR_FT);
    }

    /** The corners lie on cell corners, so the count is exact. */
    @Test
    void areaOfAnLShapedYard() {
        JsonNode check = Checks.named("ge-shoelace-L");
        JsonNode points = check.get("inputs").get("points_ft");
        double[] ring = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            ring[2 * i] = points.get(i).get(0).asDouble();
            ring[2 * i + 1] = points.get(i).get(1).asDouble();
        }
        var surface = new CellRuns();
        new RegionRaster().rasterise(CellGrid.over(0, 0, 60, 70, 0.25), new double[][] {ring}, surface);
        assertEquals(Checks.expected(check, "area_ft2"), surface.cells() / 16.0, 1e-9);
    }

    private static Measured measured(Scene scene) {
        return new Measured(scene, CellGrid.over(-16, -16, 31, 16, CELL_FT));
    }
}
