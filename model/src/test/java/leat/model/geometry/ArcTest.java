package leat.model.geometry;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class ArcTest {

    @Tag("law")
    @RepeatedTest(300)
    void anArcHoldsWhatLiesInItsSweep(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double start = random.nextDouble() * 720 - 360;
        double sweep = 1 + random.nextDouble() * 358;
        Arc arc = Arc.degrees(start, sweep);
        assertTrue(arc.holds(Angle.degrees(start + sweep * random.nextDouble() * 0.999 + 1e-6)));
        assertFalse(arc.holds(Angle.degrees(start + sweep + (360 - sweep) * (0.001 + 0.99 * random.nextDouble()))));
        double end = arc.end().degrees() - (start + sweep);
        assertEquals(0, Math.sin(Math.toRadians(end) / 2), 1e-9);
        assertTrue(arc.start().degrees() >= 0 && arc.start().degrees() < 360);
    }

    @Tag("law")
    @Test
    void acrossNorthAndAllAround() {
        Arc arc = Arc.degrees(315, 90);
        assertTrue(arc.holds(Angle.ZERO) && arc.holds(Angle.degrees(350)) && arc.holds(Angle.degrees(30)));
        assertFalse(arc.holds(Angle.degrees(180)));
        assertTrue(Arc.FULL.isFull() && Arc.FULL.holds(Angle.degrees(123)));
        assertTrue(Arc.degrees(123, 360).holds(Angle.degrees(122.9)));
    }

    /** Area by counting: a second way to the sector's area, from its own idea of what it holds. */
    @Tag("law")
    @RepeatedTest(8)
    void areaAgreesWithCounting(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        Sector sector = new Sector(
                new Point(1, 2),
                Arc.degrees(random.nextDouble() * 360, 20 + random.nextDouble() * 340),
                Length.metres(5));
        int inside = 0;
        int cells = 800;
        for (int i = 0; i < cells; i++) {
            for (int j = 0; j < cells; j++) {
                double x = 1 - 5 + 10 * (i + 0.5) / cells;
                double y = 2 - 5 + 10 * (j + 0.5) / cells;
                inside += sector.contains(new Point(x, y)) ? 1 : 0;
            }
        }
        double counted = 100.0 * inside / cells / cells;
        assertEquals(sector.area().squareMetres(), counted, 0.05, "half a cell along an edge of some 30 m");
    }

    @Tag("law")
    @Test
    void theApexIsWetAndTheRimToo() {
        Sector sector = new Sector(new Point(0, 0), Arc.degrees(0, 90), Length.metres(5));
        assertTrue(sector.contains(new Point(0, 0)));
        assertTrue(sector.contains(new Point(3, 4)));
        assertFalse(sector.contains(new Point(-1, -1)));
        assertFalse(sector.contains(new Point(4, 4)));
    }

    @Tag("pinned")
    @Test
    void refusals() {
        refused("arc: sweep is 0 deg; it must be more than 0 and at most 360 deg", () -> Arc.degrees(0, 0));
        refused("arc: sweep is 540 deg; it must be more than 0 and at most 360 deg", () -> Arc.degrees(90, 540));
        refused(
                "sector: radius is -1 m; it must be more than 0 m",
                () -> new Sector(new Point(0, 0), Arc.FULL, Length.metres(-1)));
    }
}
