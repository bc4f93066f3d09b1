package leat.calc.placement;

import static leat.model.plan.Parts.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.id.SurfaceId;
import leat.model.plan.Outline;
import leat.model.plan.Part;
import leat.model.plan.Place;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.quantity.UnitSystem;
import leat.model.site.Surface;
import leat.model.water.DripLine;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;

/** What holds for drip lines in beds of any shape. Every turn is a seed. */
@Tag("law")
class DripLawTest {

    private static final StandingData TABLES = StandingData.load(Yard.EDITION);

    /** Spots are looked at on such cells. */
    private static final double CELL_M = 0.05;

    /** Square ends: with ends 0.1 m from the edge the corner of a bed is that far from a line, before places are rounded. */
    @RepeatedTest(20)
    void eachSpotOfARectangleOrAnLIsWithinHalfADistanceOfALine(RepetitionInfo turn) {
        var random = random(turn);
        double rowsM = random.nextDouble(0.3, 0.6);
        Outline outline = turned(random, turn.getCurrentRepetition() % 2 == 0 ? rectangleOf(random) : elbow(random));
        Laid laid = new Laid(yardWith(random, List.of(bed("bed", outline).watering(DRIP))), rowsM);

        double worstM = laid.spots().stream().mapToDouble(laid::awayM).max().orElseThrow();

        assertTrue(worstM <= rowsM / 2 + CELL_M, worstM + " m from a line with rows " + rowsM + " m apart");
    }

    /** Slanting and round edges leave corners; those that reach out far are filled. */
    @RepeatedTest(30)
    void ofAnyBedNearlyAllIsWithinHalfADistanceAndAllWithinOne(RepetitionInfo turn) {
        var random = random(turn);
        double rowsM = random.nextDouble(0.3, 0.6);
        Laid laid = new Laid(yardWith(random, anyBed(random)), rowsM);
        List<Point> spots = laid.spots();

        long near = spots.stream()
                .filter(spot -> laid.awayM(spot) <= rowsM / 2 + CELL_M)
                .count();

        assertTrue(near >= 0.985 * spots.size(), near + " of " + spots.size() + " spots near a line");
        double worstM = spots.stream().mapToDouble(laid::awayM).max().orElseThrow();
        assertTrue(worstM <= rowsM + CELL_M, worstM + " m from a line with rows " + rowsM + " m apart");
    }

    @RepeatedTest(30)
    void noLineLeavesTheBedOrRunsThroughWhatStandsInIt(RepetitionInfo turn) {
        var random = random(turn);
        Laid laid = new Laid(yardWith(random, anyBed(random)), random.nextDouble(0.3, 0.6));

        for (DripLine line : laid.lines()) {
            double lengthM = line.path().lengthM();
            for (double atM = 0; atM <= lengthM; atM += 0.02) {
                Point spot = line.path().at(Length.metres(atM));
                assertTrue(laid.isOpen(spot), line.id() + " at " + spot);
            }
        }
    }

    @RepeatedTest(10)
    void planningAgainChangesNothing(RepetitionInfo turn) {
        var random = random(turn);
        Laid laid = new Laid(yardWith(random, anyBed(random)), random.nextDouble(0.3, 0.6));

        assertEquals(laid.yard, new Laid(laid.yard, laid.rowsM).yard);
    }

    /** A strip of the width of a distance belongs to each row; rows are laid closer so that they come out even, and are joined at their ends. */
    @RepeatedTest(20)
    void theLengthOfTubeIsNearTheAreaOverTheDistance(RepetitionInfo turn) {
        var random = random(turn);
        Laid laid = new Laid(yardWith(random, anyBed(random)), random.nextDouble(0.3, 0.6));
        double areaM2 = laid.spots().size() * CELL_M * CELL_M;

        double lengthM =
                laid.lines().stream().mapToDouble(line -> line.path().lengthM()).sum();

        double ratio = lengthM / (areaM2 / laid.rowsM);
        assertTrue(
                ratio > 1 && ratio < 1.75, "tube is " + ratio + " of area over distance"); // most for small round beds
    }

    @RepeatedTest(5)
    void aLineGivesNoMoreThanItsTubeCarries(RepetitionInfo turn) {
        var random = random(turn);
        Outline outline = rectangle(at(0, 0), metres(random.nextDouble(6, 14)), metres(random.nextDouble(5, 9)));
        Laid laid = new Laid(yardWith(random, List.of(bed("bed", outline).watering(DRIP))), 0.3);

        for (DripLine line : laid.lines()) {
            double flowM3PerS =
                    TABLES.catalog().head(line.family()).referenceFlow(line).si();
            assertTrue(
                    flowM3PerS <= DripParameters.defaults().mostFlow().si(),
                    line.id().name());
        }
    }

    /** Small seeds begin with much the same figure. */
    private static Random random(RepetitionInfo turn) {
        return new Random(turn.getCurrentRepetition() * 0x9E3779B97F4A7C15L);
    }

    /** A bed with its lines. */
    private static final class Laid {

        private final Yard yard;
        private final double rowsM;
        private final Surface bed;
        private final List<Region> others;

        Laid(Yard bare, double rowsM) {
            this.rowsM = rowsM;
            var parameters = PlacementParameters.defaults();
            yard = Placement.run(
                            TABLES.siteOf(bare),
                            parameters.withDrip(parameters.drip().withRows(Length.metres(rowsM))),
                            Progress.NONE)
                    .yard();
            bed = yard.terrain().surface(new SurfaceId("bed")).orElseThrow();
            others = yard.terrain().surfaces().stream()
                    .filter(other -> !other.equals(bed))
                    .map(Surface::region)
                    .toList();
        }

        List<DripLine> lines() {
            return yard.water().heads().stream().map(DripLine.class::cast).toList();
        }

        boolean isOpen(Point spot) {
            return bed.region().contains(spot) && others.stream().noneMatch(other -> other.contains(spot));
        }

        List<Point> spots() {
            var bounds = bed.region().bounds();
            List<Point> spots = new ArrayList<>();
            for (double xM = bounds.leastXM() + CELL_M / 2; xM < bounds.mostXM(); xM += CELL_M) {
                for (double yM = bounds.leastYM() + CELL_M / 2; yM < bounds.mostYM(); yM += CELL_M) {
                    Point spot = new Point(xM, yM);
                    if (isOpen(spot)) {
                        spots.add(spot);
                    }
                }
            }
            return spots;
        }

        double awayM(Point spot) {
            return lines().stream()
                    .mapToDouble(line -> line.path().nearest(spot).distanceM(spot))
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
        }
    }

    private static Yard yardWith(Random random, List<Part> parts) {
        return yard("beds")
                .units(random.nextBoolean() ? UnitSystem.METRIC : UnitSystem.US)
                .with(parts.toArray(Part[]::new));
    }

    /** Corners in metres. */
    private static double[] rectangleOf(Random random) {
        double width = random.nextDouble(1, 6);
        double height = random.nextDouble(0.6, 4);
        return new double[] {0, 0, width, 0, width, height, 0, height};
    }

    /** With a corner at least a row away from the other sides. */
    private static double[] elbow(Random random) {
        double arm = random.nextDouble(0.8, 2);
        double leg = random.nextDouble(0.8, 2);
        double width = arm + random.nextDouble(0.8, 4);
        double height = leg + random.nextDouble(0.8, 3);
        return new double[] {0, 0, width, 0, width, leg, arm, leg, arm, height, 0, height};
    }

    private static Outline turned(Random random, double[] xyM) {
        double angle = random.nextDouble(0, Math.PI);
        double eastM = random.nextDouble(0, 10);
        double northM = random.nextDouble(0, 10);
        Place[] corners = new Place[xyM.length / 2];
        for (int i = 0; i < corners.length; i++) {
            double xM = eastM + Math.cos(angle) * xyM[2 * i] - Math.sin(angle) * xyM[2 * i + 1];
            double yM = northM + Math.sin(angle) * xyM[2 * i] + Math.cos(angle) * xyM[2 * i + 1];
            corners[i] = at(metres(xM), metres(yM));
        }
        return polygon(corners);
    }

    /** A four-sided, an L-shaped or a round bed, or a round one around a pond, a building or nothing but a stool. */
    private static List<Part> anyBed(Random random) {
        double radiusM = random.nextDouble(1.2, 3);
        double innerM = random.nextDouble(0.15, 0.4) * radiusM;
        Place middle = at(metres(radiusM), metres(radiusM));
        Outline round = circle(middle, metres(radiusM));
        return switch (random.nextInt(5)) {
            case 0 -> List.of(bed("bed", turned(random, fourSided(random))).watering(DRIP));
            case 1 -> List.of(bed("bed", turned(random, elbow(random))).watering(DRIP));
            case 2 -> List.of(bed("bed", round).watering(DRIP));
            case 3 -> List.of(bed("bed", round).watering(DRIP), pond("pond", circle(middle, metres(innerM))));
            default ->
                List.of(
                        bed("bed", round).watering(DRIP),
                        structure("hut", rectangle(middle, metres(innerM), metres(1.5 * innerM))));
        };
    }

    private static double[] fourSided(Random random) {
        return new double[] {
            0,
            0,
            random.nextDouble(3, 6),
            random.nextDouble(-0.5, 0.5),
            random.nextDouble(2, 4),
            random.nextDouble(2, 4),
            random.nextDouble(-0.5, 1),
            random.nextDouble(1, 2.5)
        };
    }
}
