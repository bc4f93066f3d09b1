package leat.calc.placement.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.HeadArrays;
import leat.calc.internal.cells.RegionRaster;
import leat.document.StandingData;
import leat.model.catalog.Catalog;
import leat.model.catalog.HeadFamily;
import leat.model.geometry.Bounds;
import leat.model.plan.Yard;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What spreading the heads of random lawns may change, and what it may not. */
@Tag("law")
class EveningLawTest {

    private static final Lattice FIVE_CENTIMETRES = new Lattice(1, 20);
    private static final double FAR_M = 6;

    private final List<Offer> offers = offers("multi-4_9", "multi-3_7");

    private static List<Offer> offers(String... keys) {
        Catalog catalog = StandingData.load(Yard.EDITION).catalog();
        List<Offer> offers = new ArrayList<>();
        for (String key : keys) {
            HeadFamily family = catalog.head(key);
            offers.add(
                    Offer.of(offers.size(), family, catalog.profile(family.jet().profile())));
        }
        return offers;
    }

    /** A lawn seen from its middle: corners at even angles, some nearer and some farther, 5 to 9 of them. */
    private static double[] star(Random random) {
        int corners = 5 + random.nextInt(5);
        double[] ring = new double[2 * corners];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double awayM = 5 + 5 * random.nextDouble();
            ring[2 * i] = 20 + awayM * Math.cos(angle);
            ring[2 * i + 1] = 20 + awayM * Math.sin(angle);
        }
        return ring;
    }

    private Layout layout(double[] ring, boolean even) {
        double[][] rings = {ring};
        CellGrid own = CellGrid.over(new Bounds(8, 8, 32, 32), 0.25, 1_000_000);
        var ownCells = new CellRuns();
        new RegionRaster().rasterise(own, rings, ownCells);
        CellGrid grown = own.grown((int) Math.ceil(FAR_M / own.cellM()) + 1);
        var target = new CellRuns();
        new RegionRaster().rasterise(grown, rings, target);
        var plot = new Plot(grown, rings, 2, target, new CellRuns[0], new CellRuns[0], KeepOff.NOTHING);
        Given given = Given.of(own, ownCells, new HeadArrays(0), plot, 0);
        Layout layout = new Search(plot, given, 0, 1.5, 500, () -> false).choose(offers, new ArrayList<>());
        if (even) {
            new Evening(plot, new Spots(plot), 0, layout, FIVE_CENTIMETRES, 500, () -> false).run();
        }
        return layout;
    }

    private static double nearestPairM(Layout layout) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < layout.size(); i++) {
            nearest = Math.min(nearest, layout.nearestM(layout.chosen().get(i).spot(), i));
        }
        return nearest;
    }

    @RepeatedTest(12)
    void noReachAndNoDistanceIsLost(RepetitionInfo turn) {
        double[] ring = star(new Random(turn.getCurrentRepetition()));
        Layout before = layout(ring, false);
        Layout after = layout(ring, true);
        assertEquals(before.size(), after.size());
        assertTrue(after.missing() <= before.missing());
        assertTrue(nearestPairM(after) >= nearestPairM(before));
        assertTrue(after.crowding() <= before.crowding() + 0.03);
        assertTrue(after.cost() <= before.cost() + 0.1, before.cost() + " " + after.cost());
    }

    @Test
    void sameLawnSamePlaces() {
        double[] ring = star(new Random(40));
        assertEquals(
                Found.standsOf(layout(ring, true).chosen()),
                Found.standsOf(layout(ring, true).chosen()));
    }

    /** Sides of 13.1 m and 9.85 m from a corner at a round place: all heads come to stand at round places. */
    @Test
    void placesOnARectangleAreRound() {
        Layout after = layout(new double[] {10, 10, 23.1, 10, 23.1, 19.85, 10, 19.85}, true);
        for (Candidate head : after.chosen()) {
            assertEquals(FIVE_CENTIMETRES.near(head.spot().xM(), 0), head.spot().xM());
            assertEquals(FIVE_CENTIMETRES.near(head.spot().yM(), 0), head.spot().yM());
        }
    }
}
