package leat.calc.staking.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import leat.calc.Records;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Source: checks/staking.json for the point from two tapes; the 3-4-5 triangle; otherwise laws. */
class TwoTapesReferenceTest {

    @Test
    @Tag("reference")
    void aPointFromTwoTapes() {
        Records.Figure record = Records.one("staking", "ge-trilateration");
        double[] xy = new double[2];
        TwoTapes.locate(
                0, 0, record.input("base_ft"), 0, record.input("tape_1_ft"), record.input("tape_2_ft"), true, xy);
        record.expect("x_ft", xy[0]);
        record.expect("y_ft", xy[1]);
    }

    /** Source: Pythagoras; tapes of 3 and 4 over a base of 5 meet square. */
    @Test
    @Tag("reference")
    void tapesOfThreeAndFourMeetSquareOverFive() {
        double[] xy = new double[2];
        TwoTapes.locate(10, 20, 15, 20, 3, 4, false, xy);
        assertEquals(10 + 1.8, xy[0], 1e-12);
        assertEquals(20 - 2.4, xy[1], 1e-12);
        assertEquals(Math.PI / 2, TwoTapes.crossingRad(xy[0], xy[1], 10, 20, 15, 20), 1e-12);
        assertEquals(Math.hypot(0.01, 0.02), TwoTapes.errorM(0.01, 0.02, Math.PI / 2), 1e-15);
    }

    @RepeatedTest(200)
    @Tag("law")
    void tapesBringThePlaceBack(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        double aX = random.nextDouble(-30, 30);
        double aY = random.nextDouble(-30, 30);
        double bX = random.nextDouble(-30, 30);
        double bY = random.nextDouble(-30, 30);
        double x = random.nextDouble(-30, 30);
        double y = random.nextDouble(-30, 30);
        double[] xy = new double[2];
        TwoTapes.locate(
                aX,
                aY,
                bX,
                bY,
                Math.hypot(x - aX, y - aY),
                Math.hypot(x - bX, y - bY),
                TwoTapes.isLeft(x, y, aX, aY, bX, bY),
                xy);
        // Where the tapes lie nearly in one line the place is as unsure as the errors say.
        double unsureM = TwoTapes.errorM(1e-9, 1e-9, TwoTapes.crossingRad(x, y, aX, aY, bX, bY));
        assertEquals(0, Math.hypot(xy[0] - x, xy[1] - y), 1e-9 + unsureM);
    }

    /** A wrong tape moves the place by about what the error says: twenty thousand tapings with a normal error each. */
    @Test
    @Tag("law")
    void errorIsThatOfManyTapings() {
        var random = new Random(1);
        double sum = 0;
        double[] xy = new double[2];
        int turns = 20_000;
        for (int i = 0; i < turns; i++) {
            double first = Math.hypot(12, 9) + 0.015 * random.nextGaussian();
            double second = Math.hypot(8, 9) + 0.010 * random.nextGaussian();
            TwoTapes.locate(0, 0, 20, 0, first, second, true, xy);
            sum += (xy[0] - 12) * (xy[0] - 12) + (xy[1] - 9) * (xy[1] - 9);
        }
        double expectedM = TwoTapes.errorM(0.015, 0.010, TwoTapes.crossingRad(12, 9, 0, 0, 20, 0));
        assertEquals(expectedM, Math.sqrt(sum / turns), 0.02 * expectedM);
    }

    @Test
    @Tag("law")
    void aTapeGoesAlongAWallButNotThroughIt() {
        double[] xs = {0, 10, 10, 0};
        double[] ys = {0, 0, 6, 6};
        assertTrue(Sight.isClear(0, 0, 10, 0, xs, ys));
        assertTrue(Sight.isClear(-5, 0, 15, 0, xs, ys));
        assertTrue(Sight.isClear(10, 6, 20, 20, xs, ys));
        assertFalse(Sight.isClear(0, 0, 10, 6, xs, ys));
        assertFalse(Sight.isClear(-5, 3, 15, 3, xs, ys));
        assertFalse(Sight.isClear(5, 6, 5, 0, xs, ys));
        assertTrue(Sight.isClear(-5, 3, -1, 3, xs, ys));
    }
}
