package leat.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class WireLinesTest {

    @Test
    void aCableShowsWhereItLiesInNoConduit() {
        double[] cable = {0, 0, 10, 0, 10, 10};
        List<double[]> ways = BareWays.of(cable, List.of(new double[] {2, 0, 10, 0, 10, 4}));
        assertEquals(2, ways.size());
        assertArrayEquals(new double[] {0, 0, 2, 0}, ways.get(0), 1e-9);
        assertArrayEquals(new double[] {10, 4, 10, 10}, ways.get(1), 1e-9);
    }

    @Test
    void aCableInNoConduitShowsWhollyAndOneThatIsInConduitAllAlongNotAtAll() {
        double[] cable = {0, 0, 10, 0, 10, 10};
        assertArrayEquals(cable, BareWays.of(cable, List.of()).get(0), 1e-9);
        assertEquals(List.of(), BareWays.of(cable, List.of(cable)));
    }

    /** A conduit over a stretch of the cable hides exactly as much as it is long. */
    @RepeatedTest(100)
    void whatIsHiddenIsAsLongAsTheConduit(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double x = 20 + 80 * random.nextDouble();
        double y = 20 + 80 * random.nextDouble();
        double from = x * random.nextDouble();
        double to = y * random.nextDouble();
        double[] cable = {0, 0, x, 0, x, y};
        double[] conduit = {from, 0, x, 0, x, to};
        double shown = BareWays.of(cable, List.of(conduit)).stream()
                .mapToDouble(WireLinesTest::length)
                .sum();
        // Pieces shorter than a twentieth of a millimetre are not drawn.
        assertEquals(length(cable) - length(conduit), shown, 0.1);
    }

    @Test
    void theWallsOfAConduitKeepTheirDistance() {
        assertArrayEquals(
                new double[] {0, 1, 9, 1, 9, 10}, Parallels.beside(new double[] {0, 0, 10, 0, 10, 10}, 1), 1e-9);
        assertArrayEquals(
                new double[] {0, -1, 11, -1, 11, 10}, Parallels.beside(new double[] {0, 0, 10, 0, 10, 10}, -1), 1e-9);
    }

    private static double length(double[] xy) {
        double sum = 0;
        for (int i = 0; i + 3 < xy.length; i += 2) {
            sum += Math.hypot(xy[i + 2] - xy[i], xy[i + 3] - xy[i + 1]);
        }
        return sum;
    }
}
