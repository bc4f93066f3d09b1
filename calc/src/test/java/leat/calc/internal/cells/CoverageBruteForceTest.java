package leat.calc.internal.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.calc.internal.cells.Scene.HeadAt;
import leat.calc.internal.cells.Scene.Measured;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The kernels against slow ways: every cell against every head by trigonometry, and exact areas of polygons by JTS. */
@Tag("law")
class CoverageBruteForceTest {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    @RepeatedTest(60)
    void everyCellIsAsTrigonometrySays(RepetitionInfo turn) {
        Scene scene = Scene.random(turn.getCurrentRepetition());
        var measured = new Measured(scene, CellGrid.over(-12.1, -12.2, 12.3, 12.4, 0.31));
        Polygon lawn = lawn(scene);
        List<Double> rates = new ArrayList<>();
        int reachedByOne = 0;
        int reachedByTwo = 0;
        for (int row = 0; row < measured.grid.rows(); row++) {
            for (int column = 0; column < measured.grid.columns(); column++) {
                double x = measured.grid.centreXM(column);
                double y = measured.grid.centreYM(row);
                int reach = 0;
                double rate = 0;
                for (HeadAt head : scene.heads) {
                    if (reaches(head, x, y)) {
                        reach++;
                        double fraction = Math.hypot(x - head.xM(), y - head.yM()) / head.radiusM();
                        rate += head.rateMPerS() * scene.profile.relativeDepth(fraction);
                    }
                }
                boolean onLawn = lawn.contains(FACTORY.createPoint(new Coordinate(x, y)));
                assertEquals(onLawn, measured.surface.contains(row, column));
                assertEquals(reach, measured.reach(row, column));
                assertEquals(rate, measured.wetting.rateMPerS(row, column), 1e-12 * (rate + 1e-6));
                if (onLawn) {
                    rates.add(rate);
                    reachedByOne += reach >= 1 ? 1 : 0;
                    reachedByTwo += reach >= 2 ? 1 : 0;
                }
            }
        }
        double[] all = rates.stream().mapToDouble(rate -> rate).toArray();
        assertEquals(all.length, measured.evenness.cells());
        assertEquals(reachedByOne, measured.evenness.cellsReachedByOne());
        assertEquals(reachedByTwo, measured.evenness.cellsReachedByTwo());
        assertEquals(Arrays.stream(all).average().orElse(0), measured.evenness.meanRateMPerS(), 1e-18);
        assertEquals(Uniformity.christiansen(all), measured.evenness.christiansen(), 1e-12);
        Arrays.sort(all);
        double low = Arrays.stream(all, 0, all.length / 4).average().orElse(0);
        double mean = measured.evenness.meanRateMPerS();
        assertEquals(mean > 0 ? low / mean : 0, measured.evenness.lowQuarter(), 1e-12);
    }

    private static boolean reaches(HeadAt head, double x, double y) {
        double angle = Math.toDegrees(Math.atan2(y - head.yM(), x - head.xM())) - head.startDeg();
        return Math.hypot(x - head.xM(), y - head.yM()) <= head.radiusM()
                && angle - 360 * Math.floor(angle / 360) <= head.sweepDeg();
    }

    /** Cells of 0.1 m against areas: the shares may differ by a tenth of a cell along all borders, which is well under 0.3 %. */
    @RepeatedTest(12)
    void sharesAreThoseOfExactAreas(RepetitionInfo turn) {
        Scene scene = Scene.random(1000 + turn.getCurrentRepetition());
        var measured = new Measured(scene, CellGrid.over(-12.1, -12.2, 12.3, 12.4, 0.1));
        Polygon lawn = lawn(scene);
        List<Geometry> sectors = new ArrayList<>();
        List<Geometry> twice = new ArrayList<>();
        for (HeadAt head : scene.heads) {
            Geometry sector = OverlayNGRobust.overlay(sector(head), lawn, OverlayNG.INTERSECTION);
            for (Geometry other : sectors) {
                twice.add(OverlayNGRobust.overlay(sector, other, OverlayNG.INTERSECTION));
            }
            sectors.add(sector);
        }
        double cells = measured.evenness.cells();
        assertEquals(lawn.getArea(), cells * 0.01, 0.003 * lawn.getArea());
        assertEquals(area(sectors) / lawn.getArea(), measured.evenness.cellsReachedByOne() / cells, 0.003);
        assertEquals(area(twice) / lawn.getArea(), measured.shareReachedByTwo(), 0.003);
    }

    private static double area(List<Geometry> parts) {
        List<Geometry> polygons =
                parts.stream().filter(part -> part.getDimension() == 2).toList();
        return polygons.isEmpty() ? 0 : OverlayNGRobust.union(polygons).getArea();
    }

    private static Polygon lawn(Scene scene) {
        return FACTORY.createPolygon(ring(scene.ringsM[0]), new LinearRing[] {ring(scene.ringsM[1])});
    }

    private static LinearRing ring(double[] ringM) {
        Coordinate[] corners = new Coordinate[ringM.length / 2 + 1];
        for (int i = 0; i < corners.length; i++) {
            int k = 2 * i % ringM.length;
            corners[i] = new Coordinate(ringM[k], ringM[k + 1]);
        }
        return FACTORY.createLinearRing(corners);
    }

    /** A polygon of the same area as the sector, one corner a degree. */
    private static Polygon sector(HeadAt head) {
        int steps = Math.max(2, (int) Math.ceil(head.sweepDeg()));
        double step = Math.toRadians(head.sweepDeg()) / steps;
        double radius = head.radiusM() * Math.sqrt(step / Math.sin(step));
        List<Coordinate> corners = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double angle = Math.toRadians(head.startDeg()) + i * step;
            corners.add(new Coordinate(head.xM() + radius * Math.cos(angle), head.yM() + radius * Math.sin(angle)));
        }
        if (head.sweepDeg() >= 360) {
            corners.remove(steps);
        } else {
            corners.add(new Coordinate(head.xM(), head.yM()));
        }
        corners.add(corners.get(0).copy());
        return FACTORY.createPolygon(corners.toArray(new Coordinate[0]));
    }
}
