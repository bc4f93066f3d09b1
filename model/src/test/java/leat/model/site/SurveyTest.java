package leat.model.site;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.model.geometry.Point;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class SurveyTest {

    private static Course course(double degrees, double metres) {
        return new Course(Angle.degrees(degrees), Length.metres(metres));
    }

    private static List<Course> around(List<Point> corners) {
        List<Course> courses = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point next = corners.get((i + 1) % corners.size());
            courses.add(
                    new Course(corners.get(i).bearingTo(next), corners.get(i).distance(next)));
        }
        return courses;
    }

    private static List<Point> lot(Random random) {
        List<Point> corners = new ArrayList<>();
        int count = 3 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            double turn = 2 * Math.PI * i / count;
            double radius = 20 + 20 * random.nextDouble();
            corners.add(new Point(radius * Math.cos(turn), radius * Math.sin(turn)));
        }
        return corners;
    }

    @Tag("law")
    @RepeatedTest(100)
    void aPerfectTraverseIsLeftAsItIs(RepetitionInfo turn) {
        List<Point> corners = lot(new Random(turn.getCurrentRepetition()));
        Survey survey = new Survey(corners.get(0), around(corners), Survey.Closing.MEASURED);
        assertEquals(0, survey.misclosure().metres(), 1e-9);
        for (int i = 0; i < corners.size(); i++) {
            assertEquals(0, corners.get(i).distanceM(survey.corners().get(i)), 1e-9);
        }
    }

    @Tag("law")
    @RepeatedTest(100)
    void theLastSideThatIsDrawnClosesTheLot(RepetitionInfo turn) {
        List<Point> corners = lot(new Random(turn.getCurrentRepetition()));
        List<Course> allButOne = around(corners).subList(0, corners.size() - 1);
        Survey survey = new Survey(corners.get(0), allButOne, Survey.Closing.DRAWN);
        assertEquals(Length.ZERO, survey.misclosure());
        assertEquals(corners.size(), survey.corners().size());
        assertEquals(
                0, corners.get(corners.size() - 1).distanceM(survey.corners().get(corners.size() - 1)), 1e-9);
    }

    @Tag("law")
    @RepeatedTest(100)
    void noCornerMovesFurtherThanTheMisclosure(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        List<Point> corners = lot(random);
        List<Course> tape = new ArrayList<>();
        for (Course course : around(corners)) {
            tape.add(new Course(course.bearing(), course.distance().times(1 + 0.002 * (random.nextDouble() - 0.5))));
        }
        Survey survey = new Survey(corners.get(0), tape, Survey.Closing.MEASURED);
        Point walked = corners.get(0);
        for (int i = 0; i < tape.size(); i++) {
            assertTrue(walked.distanceM(survey.corners().get(i))
                    <= survey.misclosure().metres() + 1e-9);
            walked = walked.moved(tape.get(i).bearing(), tape.get(i).distance());
        }
        assertEquals(corners.get(0), survey.corners().get(0), "the start stays");
        assertEquals(
                survey.misclosure().metres() / survey.perimeter().metres(),
                survey.closureRatio().value(),
                1e-15);
    }

    @Tag("pinned")
    @Test
    void refusals() {
        refused(
                "survey: courses is a list of 2; it must be a list of at least 3",
                () -> new Survey(new Point(0, 0), List.of(course(0, 10), course(120, 10)), Survey.Closing.MEASURED));
        refused(
                "survey, region: outer is a line whose side 3 meets its side 1; it must be one that neither crosses nor touches itself",
                () -> new Survey(
                        new Point(0, 0),
                        List.of(course(45, 10), course(180, 10), course(315, 20)),
                        Survey.Closing.DRAWN));
        refused("course: distance is 0 m; it must be more than 0 m", () -> course(90, 0));
        refused(
                "survey: courses is missing; it must be given",
                () -> new Survey(new Point(0, 0), null, Survey.Closing.DRAWN));
    }
}
