package leat.model.geometry;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import leat.model.fault.InvalidValueException;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RegionTest {

    private static List<Point> line(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return points;
    }

    private static List<Point> square(double x, double y, double side) {
        return line(x, y, x + side, y, x + side, y + side, x, y + side);
    }

    /** A line around the origin that sees each of its corners: simple by construction. */
    private static List<Point> star(Random random, double x, double y, double scale) {
        int corners = 3 + random.nextInt(12);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double turn = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double radius = scale * (0.3 + random.nextDouble());
            points.add(new Point(x + radius * Math.cos(turn), y + radius * Math.sin(turn)));
        }
        return points;
    }

    @Tag("law")
    @RepeatedTest(200)
    void eitherWayRoundIsTheSameGround(RepetitionInfo turn) {
        List<Point> points = star(new Random(turn.getCurrentRepetition()), 5, -3, 10);
        List<Point> backwards = new ArrayList<>(points.subList(1, points.size()));
        Collections.reverse(backwards);
        backwards.add(0, points.get(0));
        Region region = Region.of(points);
        assertEquals(points, region.outer(), "counter-clockwise already");
        assertEquals(region, Region.of(backwards));
        List<Point> closed = new ArrayList<>(points);
        closed.add(points.get(0));
        assertEquals(region, Region.of(closed), "written closed, kept open");
        assertTrue(region.area().squareMetres() > 0);
    }

    /** Slow and sure: the angles under which the sides are seen add up to a full circle inside and to none outside. */
    private static boolean windsAround(List<Point> ring, Point p) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            double ax = a.xM() - p.xM();
            double ay = a.yM() - p.yM();
            double bx = b.xM() - p.xM();
            double by = b.yM() - p.yM();
            sum += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
        }
        return Math.abs(sum) > Math.PI;
    }

    @Tag("law")
    @RepeatedTest(100)
    void containsAgreesWithTheWindingOfTheLine(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        Region region = Region.of(star(random, 0, 0, 10)).without(Region.of(square(-0.1, -0.1, 0.2)));
        for (int i = 0; i < 50; i++) {
            Point p = new Point(random.nextDouble() * 30 - 15, random.nextDouble() * 30 - 15);
            boolean expected =
                    windsAround(region.outer(), p) && region.holes().stream().noneMatch(hole -> windsAround(hole, p));
            assertEquals(expected, region.contains(p), p.toString());
        }
    }

    @Tag("law")
    @RepeatedTest(100)
    void areaIsTheSameWhereverTheDatumIs(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        List<Point> points = star(random, 0, 0, 10);
        double shift = Math.rint(random.nextDouble() * 1e6);
        List<Point> far = points.stream()
                .map(p -> new Point(p.xM() + shift, p.yM() + 4 * shift))
                .toList();
        double here = Region.of(points).area().squareMetres();
        assertEquals(here, Region.of(far).area().squareMetres(), 1e-7 * here, "grid coordinates of a national datum");
    }

    @Tag("law")
    @Test
    void holesRunTheOtherWayAndTakeTheirAreaAway() {
        Region region =
                Region.of(square(0, 0, 10)).without(Region.of(square(1, 1, 2))).without(Region.of(square(5, 5, 3)));
        assertEquals(100 - 4 - 9, region.area().squareMetres(), 1e-12);
        assertEquals(line(1, 1, 1, 3, 3, 3, 3, 1), region.holes().get(0));
        assertEquals(3, region.rings().size());
        assertFalse(region.contains(new Point(2, 2)));
        assertTrue(region.contains(new Point(4, 4)));
        assertEquals(new Bounds(0, 0, 10, 10), region.bounds());
        assertEquals(region, new Region(region.outer(), region.holes()), "what was kept is taken as it is");
    }

    static Stream<Arguments> faultyLines() {
        return Stream.of(
                Arguments.of("bow tie", line(0, 0, 10, 10, 10, 0, 0, 10)),
                Arguments.of("a corner on a side", line(0, 0, 10, 0, 10, 10, 5, 0, 0, 10)),
                Arguments.of("two corners in one place", line(0, 0, 10, 0, 5, 5, 10, 10, 0, 10, 5, 5)),
                Arguments.of("the same corner twice in a row", line(0, 0, 10, 0, 10, 0, 10, 10)),
                Arguments.of("the first corner twice at the start", line(0, 0, 0, 0, 10, 0, 10, 10)),
                Arguments.of("closed twice", line(0, 0, 10, 0, 10, 10, 0, 0, 0, 0)),
                Arguments.of("a spike", line(0, 0, 10, 0, 10, 10, 10, 20, 10, 10, 0, 10)),
                Arguments.of("a spike at the first corner", line(0, 0, -5, 0, 10, 0, 10, 10)),
                Arguments.of("a spike at the last corner", line(0, 0, 10, 0, 10, 10, 0, 10, 0, 20)),
                Arguments.of("no area", line(0, 0, 10, 0, 20, 0)),
                Arguments.of("out and back", line(0, 0, 10, 0, 20, 0, 10, 0)),
                Arguments.of("a side along another", line(0, 0, 10, 0, 10, 10, 8, 10, 8, 0, 2, 0, 2, 10, 0, 10)),
                Arguments.of("figure of eight through a corner", line(0, 0, 5, 5, 10, 0, 10, 10, 5, 5, 0, 10)));
    }

    @Tag("law")
    @ParameterizedTest(name = "{0}")
    @MethodSource("faultyLines")
    void linesThatBoundNothingAreRefused(String what, List<Point> points) {
        for (int shift = 0; shift < points.size(); shift++) {
            List<Point> turned = new ArrayList<>(points);
            Collections.rotate(turned, shift);
            if (turned.get(0).equals(turned.get(turned.size() - 1)) && !what.equals("closed twice")) {
                continue; // turned so that it reads as a line written closed, which is no fault
            }
            assertThrows(InvalidValueException.class, () -> Region.of(turned), what);
            Collections.reverse(turned);
            assertThrows(InvalidValueException.class, () -> Region.of(turned), what + " backwards");
        }
    }

    @Tag("law")
    @Test
    void cornersInAStraightLineAreNoFault() {
        assertEquals(
                100, Region.of(line(0, 0, 5, 0, 10, 0, 10, 10, 0, 10)).area().squareMetres(), 1e-12);
    }

    @Tag("law")
    @RepeatedTest(100)
    void twoCornersThatChangedPlacesAreNoticed(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        int count = 5 + random.nextInt(8);
        List<Point> circle = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = 2 * Math.PI * i / count;
            circle.add(new Point(10 * Math.cos(angle), 10 * Math.sin(angle)));
        }
        int i = random.nextInt(count);
        Collections.swap(circle, i, (i + 2) % count);
        assertThrows(InvalidValueException.class, () -> Region.of(circle));
    }

    @Tag("pinned")
    @Test
    void refusalsSayWhichSidesMeet() {
        refused(
                "region: outer is a line whose side 3 meets its side 1; it must be one that neither crosses nor touches itself",
                () -> Region.of(line(0, 0, 10, 10, 10, 0, 0, 10)));
        refused(
                "region: outer is a line of 2 points; it must be one of at least 3",
                () -> Region.of(line(0, 0, 10, 0)));
        refused("region: outer is missing; it must be given", () -> Region.of((List<Point>) null));
        refused(
                "region: outer[1] is missing; it must be given",
                () -> Region.of(Arrays.asList(new Point(0, 0), null, new Point(1, 1))));
        Region plot = Region.of(square(0, 0, 10));
        refused(
                "region: holes[0] is outside the region; it must be inside its outer line",
                () -> plot.without(Region.of(square(20, 20, 1))));
        refused(
                "region: holes[0] is touching another line; it must be apart from the other lines",
                () -> plot.without(Region.of(square(0, 4, 1))));
        refused(
                "region: holes[1] is touching another line; it must be apart from the other lines",
                () -> plot.without(Region.of(square(2, 2, 3))).without(Region.of(square(4, 4, 3))));
    }

    @Tag("law")
    @Test
    void aHoleAroundTheRegionOrInsideAnotherHoleIsRefused() {
        Region plot = Region.of(square(0, 0, 10));
        assertThrows(InvalidValueException.class, () -> plot.without(Region.of(square(-5, -5, 20))));
        Region pond = plot.without(Region.of(square(2, 2, 6)));
        assertThrows(InvalidValueException.class, () -> pond.without(Region.of(square(4, 4, 1))));
        assertThrows(
                InvalidValueException.class,
                () -> plot.without(Region.of(square(3, 3, 1))).without(Region.of(square(2, 2, 6))));
    }
}
