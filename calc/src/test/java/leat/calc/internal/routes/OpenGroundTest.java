package leat.calc.internal.routes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Costs of straight lines against a general geometry library (JTS); ways around obstacles against plane geometry. */
class OpenGroundTest {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    @Tag("reference")
    @RepeatedTest(200)
    void lengthOnDearGroundAgreesWithAGeneralLibrary(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        Patch paving = star(random, 10 * random.nextDouble(), 10 * random.nextDouble());
        Patch bed = star(random, 10 * random.nextDouble(), 10 * random.nextDouble());
        var tolls = new Tolls();
        tolls.add(paving, 4);
        tolls.add(bed, 1.5);
        double[] at = random.doubles(4, -3, 13).toArray();
        Geometry line =
                SHAPES.createLineString(new Coordinate[] {new Coordinate(at[0], at[1]), new Coordinate(at[2], at[3])});
        double paved = line.intersection(polygon(paving)).getLength();
        double bedOnly =
                line.intersection(polygon(bed).difference(polygon(paving))).getLength();
        double expected = line.getLength() + 3 * paved + 0.5 * bedOnly;
        assertEquals(expected, tolls.costM(at[0], at[1], at[2], at[3]), 1e-5);
    }

    @Tag("law")
    @RepeatedTest(100)
    void lineCostsTheSameThereAndBack(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        var tolls = new Tolls();
        tolls.add(star(random, 5, 5), 1 + 5 * random.nextDouble());
        double[] at = random.doubles(4, 0, 10).toArray();
        assertEquals(tolls.costM(at[0], at[1], at[2], at[3]), tolls.costM(at[2], at[3], at[0], at[1]), 1e-9);
    }

    /** A rectangle 4 m wide and 2 m deep lies midway; the shortest way bends at two corners, and plane geometry gives it. */
    @Tag("reference")
    @Test
    void wayRoundAnObstacleBendsAtItsCornersWithTheClearance() {
        var ground = new OpenGround(List.of(box(0, 0, 20, 20)), List.of(OpenGround.grown(box(8, 9, 12, 11), 0.5)), 0);
        double expected = 2 * Math.hypot(2.5, 5 - 1.5) + 3;
        // Turned by a quarter: from (10, 5) to (10, 15) round the side at x = 7.5 or 12.5, between y = 8.5 and y =
        // 11.5.
        assertEquals(expected, shortest(ground, 10, 5, 10, 15), 1e-6);
    }

    @Tag("reference")
    @Test
    void wayStaysInsideTheLotLessItsSetback() {
        Patch corner = Patch.of(new double[] {0, 20, 20, 10, 10, 0}, new double[] {0, 0, 10, 10, 20, 20});
        var ground = new OpenGround(List.of(corner), List.of(), 1);
        double expected = Math.hypot(4, 10) + Math.hypot(10, 4);
        assertEquals(expected, shortest(ground, 5, 19, 19, 5), 1e-6);
        assertTrue(!ground.allows(0.5, 5) && ground.allows(1, 5));
    }

    @Tag("reference")
    @Test
    void pavingIsPassedByItsCornerWhenThatIsCheaper() {
        var ground = new OpenGround(List.of(box(0, 0, 40, 40)), List.of(), 0);
        ground.addDear(box(18, 0, 20, 22), 10, 0);
        double round = Math.hypot(8, 2) + 2 + Math.hypot(10, 2);
        assertEquals(round, shortest(ground, 10, 20, 30, 20), 1e-6);
    }

    private static double shortest(OpenGround ground, double x1, double y1, double x2, double y2) {
        var ways = new Ways(ground.tolls());
        int[] ends = {ways.add(x1, y1), ways.add(x2, y2)};
        for (double[] corner : ground.corners()) {
            ways.add(corner[0], corner[1]);
        }
        return SteinerSearch.solve(ways.graph(), ends, 1, new Effort(100_000, () -> false))
                .cost();
    }

    private static Patch box(double west, double south, double east, double north) {
        return Patch.of(new double[] {west, east, east, west}, new double[] {south, south, north, north});
    }

    private static Patch star(Random random, double x, double y) {
        int corners = 3 + random.nextInt(9);
        double[] xM = new double[corners];
        double[] yM = new double[corners];
        for (int i = 0; i < corners; i++) {
            double radius = 1 + 4 * random.nextDouble();
            xM[i] = x + radius * Math.cos(2 * Math.PI * i / corners);
            yM[i] = y + radius * Math.sin(2 * Math.PI * i / corners);
        }
        return Patch.of(xM, yM);
    }

    private static Polygon polygon(Patch patch) {
        double[] xM = patch.xM()[0];
        double[] yM = patch.yM()[0];
        Coordinate[] at = new Coordinate[xM.length + 1];
        for (int i = 0; i < at.length; i++) {
            at[i] = new Coordinate(xM[i % xM.length], yM[i % xM.length]);
        }
        return SHAPES.createPolygon(at);
    }
}
