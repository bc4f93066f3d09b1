package leat.model.geometry;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.model.quantity.Length;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class PolylineTest {

    private static Polyline route(Random random) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 2 + random.nextInt(6); i++) {
            points.add(new Point(20 * i + 10 * random.nextDouble(), 40 * random.nextDouble()));
        }
        points.add(new Point(300, 0));
        return new Polyline(points);
    }

    @Tag("law")
    @RepeatedTest(200)
    void stationsLeadToPlacesAndBack(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        Polyline route = route(random);
        double stationM = random.nextDouble() * route.lengthM();
        Point there = route.at(Length.metres(stationM));
        assertEquals(stationM, route.stationOf(there).metres(), 1e-9 * route.lengthM());
        assertEquals(0, route.nearest(there).distanceM(there), 1e-9);
        assertEquals(route.start(), route.at(Length.metres(-1)));
        assertEquals(route.end(), route.at(Length.metres(route.lengthM() + 1)));
        assertEquals(route.start(), route.at(Length.ZERO));
    }

    @Tag("law")
    @RepeatedTest(100)
    void noPlaceOfTheRouteIsNearerThanTheNearest(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        Polyline route = route(random);
        Point point = new Point(random.nextDouble() * 400 - 50, random.nextDouble() * 200 - 80);
        double nearestM = route.nearest(point).distanceM(point);
        for (int i = 0; i <= 500; i++) {
            Point sample = route.at(Length.metres(route.lengthM() * i / 500));
            assertTrue(nearestM <= sample.distanceM(point) + 1e-9);
        }
    }

    @Tag("law")
    @RepeatedTest(50)
    void theWayBackIsAsLong(RepetitionInfo turn) {
        Polyline route = route(new Random(turn.getCurrentRepetition()));
        assertEquals(route.lengthM(), route.reversed().lengthM(), 1e-9);
        assertEquals(route, route.reversed().reversed());
        assertEquals(route.start(), route.reversed().end());
    }

    @Tag("law")
    @Test
    void aRouteThatCrossesItselfTakesTheFirstStation() {
        Polyline loop =
                Polyline.of(new Point(0, 0), new Point(10, 0), new Point(10, 5), new Point(5, 5), new Point(5, -5));
        assertEquals(5, loop.stationOf(new Point(5, 0)).metres(), 1e-12);
    }

    @Tag("pinned")
    @Test
    void refusals() {
        refused("route: points is a list of 1; it must be a list of at least 2", () -> Polyline.of(new Point(0, 0)));
        refused(
                "route: points[1] is the same as the one before; it must be another place",
                () -> Polyline.of(new Point(0, 0), new Point(-0.0, 0)));
        refused("point: x is NaN; it must be a finite number", () -> new Point(Double.NaN, 0));
        refused("bounds: points is none; it must be at least one", () -> Bounds.around(List.of()));
    }

    @Tag("law")
    @RepeatedTest(50)
    void boundsHoldAllPoints(RepetitionInfo turn) {
        Polyline a = route(new Random(turn.getCurrentRepetition()));
        Polyline b = route(new Random(1_000 + turn.getCurrentRepetition()));
        Bounds both = Bounds.around(a.points()).union(Bounds.around(b.points()));
        List<Point> all = new ArrayList<>(a.points());
        all.addAll(b.points());
        assertEquals(Bounds.around(all), both);
        assertEquals(both.widthM() + 4, both.grown(2).widthM(), 1e-9);
        assertEquals(both.heightM() - 2, both.grown(-1).heightM(), 1e-9);
    }
}
