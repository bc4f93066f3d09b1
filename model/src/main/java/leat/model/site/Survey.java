package leat.model.site;

import java.util.ArrayList;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;

/**
 * The lot boundary by bearings and distances. See docs/theory/survey.md.
 *
 * @param start   the first corner
 * @param courses in order around the lot; at least 2 if the last side is left to be drawn, else at least 3
 * @param closing whether the last course returns to the start or the last side is drawn to it
 */
public record Survey(Point start, List<Course> courses, Closing closing) {

    /** How the boundary gets back to its start. */
    public enum Closing {
        /** All sides were measured; the error of closure is spread by the compass rule. */
        MEASURED,
        /** The last side was not measured; it is drawn straight back to the start. */
        DRAWN
    }

    public Survey {
        Require.present("survey", "start", start);
        Require.present("survey", "closing", closing);
        courses = Require.entries("survey", "courses", courses);
        int least = closing == Closing.MEASURED ? 3 : 2;
        if (courses.size() < least) {
            throw new InvalidValueException(
                    "survey", "courses", "a list of " + courses.size(), "a list of at least " + least);
        }
        try {
            Region.of(corners(start, courses, closing));
        } catch (InvalidValueException e) {
            throw e.within("survey"); // a boundary that crosses itself bounds nothing
        }
    }

    /** Distance between the end of the last course and the start; zero by definition when the last side is drawn. */
    public Length misclosure() {
        return closing == Closing.DRAWN
                ? Length.ZERO
                : start.distance(walked(start, courses).get(courses.size()));
    }

    /** Sum of the distances; the side that is drawn is not among them. */
    public Length perimeter() {
        return new Length(courses.stream()
                .mapToDouble(course -> course.distance().metres())
                .sum());
    }

    /** Misclosure as a share of the perimeter; surveyors print it as 1 in so many: one over this. */
    public Ratio closureRatio() {
        return Ratio.of(misclosure().metres() / perimeter().metres());
    }

    /**
     * The corners, adjusted: each takes a share of the misclosure in proportion to the distance walked to it. Compass
     * (Bowditch) rule, in any surveying text.
     */
    public List<Point> corners() {
        return corners(start, courses, closing);
    }

    private static List<Point> corners(Point start, List<Course> courses, Closing closing) {
        List<Point> walked = walked(start, courses);
        int last = courses.size();
        if (closing == Closing.DRAWN) {
            return walked;
        }
        double errorXM = walked.get(last).xM() - start.xM();
        double errorYM = walked.get(last).yM() - start.yM();
        double perimeterM = courses.stream()
                .mapToDouble(course -> course.distance().metres())
                .sum();
        double walkedM = 0;
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < last; i++) {
            double share = walkedM / perimeterM;
            Point raw = walked.get(i);
            corners.add(new Point(raw.xM() - share * errorXM, raw.yM() - share * errorYM));
            walkedM += courses.get(i).distance().metres();
        }
        return List.copyOf(corners);
    }

    /** The lot. */
    public Region boundary() {
        return Region.of(corners());
    }

    private static List<Point> walked(Point start, List<Course> courses) {
        List<Point> walked = new ArrayList<>();
        Point here = start;
        walked.add(here);
        for (Course course : courses) {
            here = here.moved(course.bearing(), course.distance());
            walked.add(here);
        }
        return walked;
    }
}
