package leat.model.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.model.Checks;
import leat.model.Checks.Check;
import leat.model.geometry.Bearing;
import leat.model.geometry.Point;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Source: checks/survey.json: traverses of the Open Access Surveying Library (Mahun) and of a textbook problem with
 * printed answers, both read; their areas were recomputed by a second program.
 */
@Tag("reference")
class SurveyReferenceTest {

    /** Records write {@code S68-05-35W} for S 68°05'35" W. */
    private static Course course(JsonNode json) {
        String deed = json.required("bearing")
                .asString()
                .replaceFirst("([NS])(\\d+)-(\\d+)-(\\d+)([EW])", "$1 $2°$3'$4\" $5");
        return new Course(
                Bearing.parse(deed), Length.feet(json.required("length_ft").asDouble()));
    }

    private static Survey survey(Check check, Point start) {
        List<Course> courses = new ArrayList<>();
        check.inputs().required("courses").forEach(json -> courses.add(course(json)));
        return new Survey(start, courses, Survey.Closing.MEASURED);
    }

    static Stream<Check> with(String field) {
        return Checks.of("survey").stream()
                .filter(check -> check.json().required("expected").has(field));
    }

    static Stream<Check> lines() {
        return with("latitude_ft");
    }

    static Stream<Check> closures() {
        return with("misclosure_ft");
    }

    static Stream<Check> areas() {
        return with("area_ft2");
    }

    @ParameterizedTest
    @MethodSource("lines")
    void latitudesAndDepartures(Check check) {
        Course course = course(check.inputs());
        Point end = new Point(0, 0).moved(course.bearing(), course.distance());
        check.expect("latitude_ft", end.north().inFeet());
        check.expect("departure_ft", end.east().inFeet());
    }

    @ParameterizedTest
    @MethodSource("closures")
    void misclosurePerimeterAndPrecision(Check check) {
        Survey survey = survey(check, new Point(30, 40));
        check.expect("misclosure_ft", survey.misclosure().inFeet());
        if (check.json().required("expected").has("perimeter_ft")) {
            check.expect("perimeter_ft", survey.perimeter().inFeet());
            double sumLatitude = 0;
            double sumDeparture = 0;
            for (Course course : survey.courses()) {
                sumLatitude +=
                        course.distance().inFeet() * Math.cos(course.bearing().inRadians());
                sumDeparture +=
                        course.distance().inFeet() * Math.sin(course.bearing().inRadians());
            }
            check.expect("sum_latitude_ft", sumLatitude);
            check.expect("sum_departure_ft", sumDeparture);
        } else {
            check.expect("precision_denominator", 1 / survey.closureRatio().value());
        }
    }

    @ParameterizedTest
    @MethodSource("areas")
    void areaAfterTheCompassRule(Check check) {
        check.expect(
                "area_ft2", survey(check, new Point(0, 0)).boundary().area().inSquareFeet());
        check.expect(
                "area_ft2", survey(check, new Point(4e5, 5e6)).boundary().area().inSquareFeet());
    }

    /**
     * Source: the compass rule as the same library states it, worked out here for each corner: correction = minus
     * misclosure times distance so far over perimeter.
     */
    @ParameterizedTest
    @MethodSource("areas")
    void adjustedCorners(Check check) {
        Survey survey = survey(check, new Point(0, 0));
        double eastFt = 0;
        double northFt = 0;
        double soFarFt = 0;
        List<double[]> raw = new ArrayList<>();
        for (Course course : survey.courses()) {
            raw.add(new double[] {eastFt, northFt, soFarFt});
            Angle bearing = course.bearing();
            eastFt += course.distance().inFeet() * Math.sin(bearing.inRadians());
            northFt += course.distance().inFeet() * Math.cos(bearing.inRadians());
            soFarFt += course.distance().inFeet();
        }
        List<Point> corners = survey.corners();
        assertEquals(raw.size(), corners.size());
        for (int i = 0; i < raw.size(); i++) {
            double share = raw.get(i)[2] / soFarFt;
            assertEquals(raw.get(i)[0] - share * eastFt, corners.get(i).east().inFeet(), 1e-9);
            assertEquals(raw.get(i)[1] - share * northFt, corners.get(i).north().inFeet(), 1e-9);
        }
    }
}
