package leat.model.site;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import leat.model.geometry.Point;
import leat.model.id.ObstacleId;
import leat.model.quantity.Length;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class GroundTest {

    private static SpotLevel spot(double x, double y, double level) {
        return new SpotLevel(new Point(x, y), Length.metres(level));
    }

    private static List<SpotLevel> spots(Random random) {
        List<SpotLevel> spots = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(12); i++) {
            spots.add(spot(random.nextDouble() * 50, random.nextDouble() * 50, random.nextDouble() * 4 - 2));
        }
        return spots;
    }

    /**
     * Source: D. H. McLain, Drawing contours from arbitrary data points, The Computer Journal 17 (1974), pages 318 to
     * 324: least squares with weights 1 / d^4 (formula from memory). By hand at (0, 0): levels 1 at (1, 0), 3 at (-1, 0),
     * 4 at (0, 1), 8 at (0, -1) weigh the same, so the plane is level at their mean 4 there; a fifth one, 12 at
     * (10, 0), weighs 1e-4.
     */
    @Tag("reference")
    @Test
    void spotsAsFarAwayCountAsMuchAndFarOnesHardlyCount() {
        List<SpotLevel> near = List.of(spot(1, 0, 1), spot(-1, 0, 3), spot(0, 1, 4), spot(0, -1, 8));
        assertEquals(4, new Ground(near, List.of()).levelAsItIs(new Point(0, 0)).metres(), 1e-12);
        List<SpotLevel> more = new ArrayList<>(near);
        more.add(spot(10, 0, 12));
        assertEquals(4, new Ground(more, List.of()).levelAsItIs(new Point(0, 0)).metres(), 0.01);
    }

    @Tag("law")
    @RepeatedTest(100)
    void aPlaneIsMetExactly(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double eastSlope = random.nextDouble() / 5 - 0.1;
        double northSlope = random.nextDouble() / 5 - 0.1;
        List<SpotLevel> three = List.of(spot(0, 0, 0), spot(50, 5, 0), spot(20, 50, 0));
        List<SpotLevel> spots = Stream.concat(three.stream(), spots(random).stream())
                .map(s -> spot(s.at().xM(), s.at().yM(), 3 + eastSlope * s.at().xM() + northSlope * s.at().yM()))
                .toList();
        double x = random.nextDouble() * 50;
        double y = random.nextDouble() * 50;
        double level = new Ground(spots, List.of()).levelAsItIs(new Point(x, y)).metres();
        assertEquals(3 + eastSlope * x + northSlope * y, level, 1e-9);
    }

    @Tag("law")
    @Test
    void twoSpotsGiveASlopeAlongTheirLine() {
        Ground ground = new Ground(List.of(spot(0, 0, 0), spot(3, 0, 5)), List.of());
        assertEquals(5.0 / 3, ground.levelAsItIs(new Point(1, 0)).metres(), 1e-12);
        assertEquals(2.5, ground.levelAsItIs(new Point(1.5, 7)).metres(), 1e-12);
    }

    @Tag("law")
    @RepeatedTest(200)
    void exactAtSpotsAndNeverFarOutsideTheirRange(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        List<SpotLevel> spots = spots(random);
        Ground ground = new Ground(spots, List.of());
        double least = spots.stream().mapToDouble(s -> s.level().metres()).min().orElseThrow();
        double most = spots.stream().mapToDouble(s -> s.level().metres()).max().orElseThrow();
        spots.forEach(s -> assertEquals(s.level(), ground.levelAsItIs(s.at())));
        double level = ground.levelAsItIs(new Point(random.nextDouble() * 80 - 10, random.nextDouble() * 80 - 10))
                .metres();
        assertTrue(level >= 2 * least - most - 1e-9 && level <= 2 * most - least + 1e-9);
    }

    @Tag("law")
    @RepeatedTest(50)
    void theOrderOfTheSpotsDoesNotMatter(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        List<SpotLevel> spots = spots(random);
        List<SpotLevel> shuffled = new ArrayList<>(spots);
        Collections.shuffle(shuffled, random);
        assertEquals(new Ground(spots, List.of()), new Ground(shuffled, List.of()));
    }

    @Tag("law")
    @RepeatedTest(100)
    void gradingOneCornerLeavesTheOthersAlone(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        List<SpotLevel> spots = spots(random);
        SpotLevel graded = new SpotLevel(spots.get(0).at(), Length.metres(9));
        Ground ground = new Ground(spots, List.of(graded, spot(200, 200, 3)));
        for (SpotLevel spot : spots) {
            Length expected = spot.at().equals(graded.at()) ? graded.level() : spot.level();
            assertEquals(expected, ground.levelFinished(spot.at()));
            assertEquals(spot.level(), ground.levelAsItIs(spot.at()));
        }
        assertEquals(Length.metres(3), ground.levelFinished(new Point(200, 200)));
        Point somewhere = new Point(17, 23);
        Ground asIfSurveyed = new Ground(ground.finished(), List.of());
        List<SpotLevel> all = new ArrayList<>(spots.subList(1, spots.size()));
        all.addAll(ground.finished());
        Ground merged = new Ground(all, List.of());
        assertEquals(merged.levelAsItIs(somewhere), ground.levelFinished(somewhere));
        assertEquals(asIfSurveyed.levelAsItIs(graded.at()), ground.levelFinished(graded.at()));
    }

    @Tag("law")
    @Test
    void flatWithoutSpotsAndEverywhereWithOne() {
        assertEquals(Length.ZERO, Ground.FLAT.levelAsItIs(new Point(3, 4)));
        assertEquals(Length.ZERO, Ground.FLAT.levelFinished(new Point(3, 4)));
        Ground one = new Ground(List.of(spot(0, 0, 2)), List.of());
        assertEquals(2, one.levelFinished(new Point(300, 400)).metres(), 1e-12);
    }

    @Tag("law")
    @Test
    void aHairFromASpotIsNoOverflow() {
        Ground ground = new Ground(List.of(spot(0, 0, 2), spot(10, 0, 4)), List.of());
        for (double hair : new double[] {1e-300, 1e-160, 1e-155, 1e-100, 1e-12, 1e-9, 1e-8}) {
            assertEquals(2, ground.levelAsItIs(new Point(hair, 0)).metres(), 1e-8, "at " + hair);
        }
    }

    @Tag("pinned")
    @Test
    void twoLevelsAtOnePlaceAreRefused() {
        refused(
                "ground: asItIs is given twice at 1 m, 2 m; it must be one level for a place",
                () -> new Ground(List.of(spot(1, 2, 0), spot(0, 0, 0), spot(1, 2, 1)), List.of()));
    }

    /** Source: common practice, no source: a foot of root zone for each inch of trunk. */
    @Tag("reference")
    @Test
    void rootsReachAFootForEachInchOfTrunk() {
        Obstacle.Tree tree = new Obstacle.Tree(new ObstacleId("oak"), new Point(0, 0), Length.inches(14));
        assertEquals(14, tree.rootZone().inFeet(), 1e-12);
    }
}
