package leat.model.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.model.Checks;
import leat.model.Checks.Check;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Source: checks/geometry.json. Most of its records are plain geometry worked out by a second program (standing
 * "recomputed"); the chart of grade against degrees was read.
 */
@Tag("reference")
class GeometryReferenceTest {

    private static Point feet(double x, double y) {
        return Point.at(Length.feet(x), Length.feet(y));
    }

    @Test
    void areaAndPerimeterOfAnAngledYard() {
        Check check = Checks.one("geometry", "ge-shoelace-L");
        List<Point> corners = new ArrayList<>();
        for (JsonNode corner : check.inputs().required("points_ft")) {
            corners.add(feet(corner.get(0).asDouble(), corner.get(1).asDouble()));
        }
        check.expect("area_ft2", Region.of(corners).area().inSquareFeet());
        corners.add(corners.get(0));
        check.expect("perimeter_ft", new Polyline(corners).length().inFeet());
    }

    /** A bed beside a base line, by its depth every so often: straight between, which is what the trapezoidal rule says. */
    @Test
    void areaOfABedByOffsetsFromALine() {
        Check check = Checks.one("geometry", "ge-trapezoid");
        List<Point> edge = new ArrayList<>();
        for (JsonNode offset : check.inputs().required("offsets_ft")) {
            edge.add(feet(edge.size() * check.input("interval_ft"), offset.asDouble()));
        }
        check.expect("area_ft2", Region.of(edge).area().inSquareFeet());
    }

    @ParameterizedTest
    @MethodSource("sectors")
    void sectors(Check check) {
        Sector sector =
                new Sector(feet(3, 4), Arc.degrees(30, check.input("arc_deg")), Length.feet(check.input("radius_ft")));
        check.expect("area_ft2", sector.area().inSquareFeet());
    }

    static Stream<Check> sectors() {
        return Checks.of("geometry", "ge-sector");
    }

    @ParameterizedTest
    @MethodSource("rightAngles")
    void distancesAcross(Check check) {
        check.expect(
                "c_ft",
                feet(0, 0)
                        .distance(feet(check.input("a_ft"), check.input("b_ft")))
                        .inFeet());
    }

    static Stream<Check> rightAngles() {
        return Stream.of(Checks.one("geometry", "ge-345"), Checks.one("geometry", "ge-diagonal"));
    }

    @Test
    void offsetAndStationOfAPointBesideAFence() {
        Check check = Checks.one("geometry", "ge-offset");
        Polyline fence =
                Polyline.of(feet(check.input("x1"), check.input("y1")), feet(check.input("x2"), check.input("y2")));
        Point point = feet(check.input("px"), check.input("py"));
        check.expect("station_ft", fence.stationOf(point).inFeet());
        check.expect("offset_ft", fence.nearest(point).distance(point).inFeet());
    }

    @Test
    void gradesInDegreesAndAlongTheSlope() {
        Check chart = Checks.one("geometry", "ge-45deg");
        double rise = Ratio.percent(chart.input("grade_percent")).value();
        chart.expect("degrees", Angle.radians(Math.atan(rise)).degrees());
        Check slope = Checks.one("geometry", "ge-slope");
        slope.expect(
                "grade_percent",
                Ratio.of(slope.input("rise_ft") / slope.input("run_ft")).inPercent());
        slope.expect(
                "slope_length_ft",
                feet(0, 0)
                        .distance(feet(slope.input("run_ft"), slope.input("rise_ft")))
                        .inFeet());
    }

    /** Source: the definition of a bearing: clockwise from north. */
    @Test
    void bearingsOfTheCompass() {
        Point here = feet(10, 10);
        assertEquals(0, here.bearingTo(feet(10, 20)).degrees(), 1e-12);
        assertEquals(90, here.bearingTo(feet(20, 10)).degrees(), 1e-12);
        assertEquals(180, here.bearingTo(feet(10, 0)).degrees(), 1e-12);
        assertEquals(270, here.bearingTo(feet(0, 10)).degrees(), 1e-12);
        assertEquals(Angle.ZERO, here.bearingTo(here));
    }
}
