package leat.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class HatchLinesTest {

    /** Straight strokes of a path, as x1, y1, x2, y2. */
    private static List<double[]> strokes(PenPath.Builder path) {
        List<double[]> strokes = new ArrayList<>();
        path.build().trace(new PenPath.Pen() {
            private double atX;
            private double atY;

            @Override
            public void moveTo(double x, double y) {
                atX = x;
                atY = y;
            }

            @Override
            public void lineTo(double x, double y) {
                strokes.add(new double[] {atX, atY, x, y});
                moveTo(x, y);
            }

            @Override
            public void arcTo(double radius, boolean large, boolean clockwise, double x, double y) {
                throw new AssertionError("a hatch has no arcs");
            }

            @Override
            public void close() {
                throw new AssertionError("a hatch has no closed parts");
            }
        });
        return strokes;
    }

    private static Hatch hatch(Hatch.Pattern pattern, double spacingMm, double angleDegrees) {
        return new Hatch(pattern, spacingMm, angleDegrees, LineWidth.W013, Palette.GREEN);
    }

    private static double lengthMm(List<double[]> strokes) {
        return strokes.stream()
                .mapToDouble(s -> Math.hypot(s[2] - s[0], s[3] - s[1]))
                .sum();
    }

    /** Lines a step apart over an area are as long together as the area over the step (Cavalieri). */
    @Test
    void linesAreAsLongTogetherAsTheAreaOverTheirSpacing() {
        for (double angle = -90; angle < 180; angle += 15) {
            var ring = PenPath.builder().circle(60, 50, 40).circle(70, 50, 15).build();
            double areaMm2 = Math.PI * (40 * 40 - 15 * 15);
            double linesMm = lengthMm(strokes(HatchLines.within(ring, hatch(Hatch.Pattern.LINES, 0.5, angle))));
            assertEquals(areaMm2 / 0.5, linesMm, 0.005 * areaMm2 / 0.5, "at " + angle);
            double crossedMm =
                    lengthMm(strokes(HatchLines.within(ring, hatch(Hatch.Pattern.CROSSED_LINES, 0.5, angle))));
            assertEquals(2 * areaMm2 / 0.5, crossedMm, 0.01 * areaMm2 / 0.5, "at " + angle);
        }
    }

    @Test
    void arcsOfEveryKindBoundAsTheyAreDrawn() {
        for (double sweep : new double[] {30, 90, 179, 181, 270, 355}) {
            PenPath sector = PenPath.arc(50, 50, 30, 20, sweep, true);
            double areaMm2 = Math.PI * 30 * 30 * sweep / 360;
            double linesMm = lengthMm(strokes(HatchLines.within(sector, hatch(Hatch.Pattern.LINES, 0.5, 30))));
            assertEquals(areaMm2 / 0.5, linesMm, 0.01 * areaMm2 / 0.5, "over " + sweep);
        }
    }

    /** Inside or not: java.awt.geom.Path2D of the JDK, a shape that crosses itself by the even-odd rule. */
    @RepeatedTest(10)
    void noStrokeLeavesTheOutline(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        double[] xy = random.doubles(14, 20, 180).toArray();
        var shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        shape.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            shape.lineTo(xy[i], xy[i + 1]);
        }
        shape.closePath();
        for (Hatch.Pattern pattern : Hatch.Pattern.values()) {
            double angle = random.nextInt(360);
            var path = HatchLines.within(PenPath.polygon(xy), hatch(pattern, 3, angle));
            assertFalse(path.isEmpty());
            for (double[] stroke : strokes(path)) {
                // A row of dots begins with a dot and ends just past the last.
                double share = pattern == Hatch.Pattern.DOTS ? 0 : 0.5;
                double x = stroke[0] + share * (stroke[2] - stroke[0]);
                double y = stroke[1] + share * (stroke[3] - stroke[1]);
                // Coordinates are to a hundredth of a millimetre.
                assertTrue(shape.intersects(x - 0.02, y - 0.02, 0.04, 0.04), pattern + " at " + angle);
            }
        }
    }

    @Test
    void aSmallBoxOfALegendShowsEachPattern() {
        PenPath box = PenPath.box(new Box(101.3, 47.7, 110.3, 51.2));
        for (Hatch.Pattern pattern : Hatch.Pattern.values()) {
            assertFalse(HatchLines.within(box, hatch(pattern, 11, 0)).isEmpty(), pattern.name());
        }
    }

    @Test
    void anOutlineWithoutRoomForATuftHasNone() {
        PenPath box = PenPath.box(new Box(10, 10, 10.5, 10.5));
        assertTrue(HatchLines.within(box, hatch(Hatch.Pattern.TUFTS, 11, 0)).isEmpty());
    }
}
