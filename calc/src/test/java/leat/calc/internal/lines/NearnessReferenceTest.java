package leat.calc.internal.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Source: a general geometry library (JTS) on random lines. */
@Tag("reference")
class NearnessReferenceTest {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    @RepeatedTest(300)
    void distanceAndCrossingAgreeWithAGeneralLibrary(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        double[] x1 = random.doubles(2 + random.nextInt(4), 0, 10).toArray();
        double[] y1 = random.doubles(x1.length, 0, 10).toArray();
        double[] x2 = random.doubles(2, 0, 10).toArray();
        double[] y2 = random.doubles(2, 0, 10).toArray();
        LineString one = line(x1, y1);
        LineString other = line(x2, y2);
        assertEquals(one.distance(other), Nearness.leastDistanceM(x1, y1, x2, y2), 1e-9);
        assertEquals(
                one.intersects(other) ? one.intersection(other).getNumGeometries() : 0,
                Nearness.crossings(x1, y1, x2, y2));
    }

    private static LineString line(double[] x, double[] y) {
        Coordinate[] at = new Coordinate[x.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = new Coordinate(x[i], y[i]);
        }
        return SHAPES.createLineString(at);
    }
}
