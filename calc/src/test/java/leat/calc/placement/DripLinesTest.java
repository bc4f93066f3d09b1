package leat.calc.placement;

import static leat.model.plan.Parts.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.document.StandingData;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Status;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.plan.Aspect;
import leat.model.plan.Outline;
import leat.model.plan.Part;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.quantity.UnitSystem;
import leat.model.water.DripLine;
import leat.model.water.Head;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Drip lines in beds whose answer can be drawn by hand. */
class DripLinesTest {

    private static final StandingData TABLES = StandingData.load(Yard.EDITION);

    private static Yard metric(Part... parts) {
        return yard("beds").units(METRIC).with(parts);
    }

    private static Proposal laid(Yard yard, DripParameters drip) {
        return Placement.run(TABLES.siteOf(yard), PlacementParameters.defaults().withDrip(drip), Progress.NONE);
    }

    private static List<DripLine> lines(Yard yard) {
        return laid(yard, DripParameters.defaults()).yard().water().heads().stream()
                .map(DripLine.class::cast)
                .toList();
    }

    private static DripParameters rows(double metres) {
        return DripParameters.defaults().withRows(Length.metres(metres));
    }

    private static Outline smallBed() {
        return rectangle(at(0, 0), metres(3), metres(1.2));
    }

    /**
     * Source: by hand. Rows of at most 0.4 m in 1.2 m are three, at 0.2, 0.6 and 1.0 m; with ends 0.1 m from the edge each is 2.8 m
     * long; two joints of 0.4 m: 3 · 2.8 + 2 · 0.4 = 9.2 m.
     */
    @Test
    @Tag("reference")
    void threeRowsInABedOfThreeByOnePointTwo() {
        Proposal proposal = laid(metric(bed("herbs", smallBed()).watering(DRIP)), rows(0.4));

        DripLine line = (DripLine) proposal.yard().water().heads().get(0);
        assertEquals(Status.COMPLETE, proposal.status());
        assertEquals(1, proposal.yard().water().heads().size());
        assertEquals(new HeadId("herbs/1"), line.id());
        assertEquals(
                List.of(
                        new Point(2.9, 1),
                        new Point(0.1, 1),
                        new Point(0.1, 0.6),
                        new Point(2.9, 0.6),
                        new Point(2.9, 0.2),
                        new Point(0.1, 0.2)),
                line.path().points());
        assertEquals(9.2, line.path().lengthM(), 1e-9);
        assertTrue(proposal.yard().isPlanned(line.id(), Aspect.POSITION));
    }

    /** Source: the table of {@link leat.calc.DripSpacing}: 0.30 m on sand, 0.45 m on loam and where nothing is said, 0.50 m on clay. */
    @Test
    void theSoilSaysHowManyRowsThereAre() {
        // 1.2 m of sand: 4 rows. 1.3 m of loam or clay: 3 rows. 1.4 m: 4 rows on loam, 3 on clay.
        assertEquals(4 * 2.8 + 3 * 0.3, lengthIn("sand", 1.2), 0.11);
        assertEquals(3 * 2.8 + 2 * 1.3 / 3, lengthIn("loam", 1.3), 0.11);
        assertEquals(4 * 2.8 + 3 * 0.35, lengthIn("loam", 1.4), 0.11);
        assertEquals(3 * 2.8 + 2 * 1.4 / 3, lengthIn("clay", 1.4), 0.11);
    }

    private static double lengthIn(String soil, double widthM) {
        Outline outline = rectangle(at(0, 0), metres(3), metres(widthM));
        return lines(metric(bed("herbs", outline).soil(soil).watering(DRIP)))
                .get(0)
                .path()
                .lengthM();
    }

    @Test
    void placesAreTenthsOfAFootOrFiveCentimetres() {
        Yard us = yard("beds")
                .units(US)
                .with(bed("herbs", circle(at(7, 7), feet(6))).watering(DRIP));
        lines(us).forEach(line -> line.path().points().forEach(point -> assertOn(point, 0.03048)));
        Yard metric = metric(bed("herbs", circle(at(2, 2), metres(1.9))).watering(DRIP));
        lines(metric).forEach(line -> line.path().points().forEach(point -> assertOn(point, 0.05)));
        assertEquals(UnitSystem.US, us.units());
    }

    private static void assertOn(Point point, double stepM) {
        assertEquals(Math.rint(point.xM() / stepM), point.xM() / stepM, 1e-6);
        assertEquals(Math.rint(point.yM() / stepM), point.yM() / stepM, 1e-6);
    }

    @Test
    void aLineIsFedAtTheEndNearerToTheSource() {
        DripLine line = lines(metric(
                        bed("herbs", smallBed()).watering(DRIP),
                        mains("street", at(-1, -1)).staticPressure(bar(4))))
                .get(0);
        assertEquals(new Point(0.1, 0.2), line.at());
    }

    @Test
    void aBedWithALineOrABubblerGetsNoOther() {
        Part bed = bed("herbs", smallBed()).watering(DRIP);
        Part line = dripLine("mine", polyline(at(0.2, 0.6), at(2.8, 0.6))).family("dripline-2_0-0_3");
        Part bubbler = bubbler("rose", at(1, 0.6)).family("bubbler-0_5");
        for (Part given : List.of(line, bubbler)) {
            Yard yard = metric(bed, given);
            assertEquals(yard, laid(yard, DripParameters.defaults()).yard());
        }
    }

    @Test
    void onlyBedsWateredByDripGetLines() {
        assertEquals(List.of(), lines(metric(bed("herbs", smallBed()).watering(NONE))));
        assertEquals(List.of(), lines(metric(lawn("lawn", smallBed()).watering(DRIP))));
    }

    /** A tank 0.8 m wide in the middle of 3 m: rows that meet it end there, and the other side is a line of its own or goes round. */
    @Test
    void whatStandsInTheBedIsLeftOut() {
        Yard yard = metric(
                bed("herbs", rectangle(at(0, 0), metres(3), metres(2))).watering(DRIP),
                obstacle("tank", rectangle(at(1.1, 0), metres(0.8), metres(2))));
        List<DripLine> lines = lines(yard);
        assertEquals(2, lines.size());
        for (DripLine line : lines) {
            boolean isWest = line.at().xM() < 1.5;
            line.path()
                    .points()
                    .forEach(point -> assertTrue(isWest ? point.xM() < 1.05 : point.xM() > 1.95, point.toString()));
        }
    }

    @Test
    void aRowGoesRoundATrunk() {
        Yard yard = metric(
                bed("round", circle(at(2, 2), metres(2))).watering(DRIP), tree("plum", at(2, 2), millimetres(200)));
        List<DripLine> lines = lines(yard);
        assertEquals(1, lines.size());
        double nearestM = lines.get(0).path().nearest(new Point(2, 2)).distanceM(new Point(2, 2));
        assertTrue(nearestM > 0.1 && nearestM < 0.3, nearestM + " m from the middle of the trunk");
    }

    @Test
    void aBedTooNarrowIsSaidSo() {
        Proposal proposal = laid(
                metric(bed("crack", rectangle(at(0, 0), metres(3), metres(0.09)))
                        .watering(DRIP)),
                DripParameters.defaults());
        assertEquals(Status.PARTIAL, proposal.status());
        assertEquals(
                "crack is too narrow for a drip line", proposal.reasons().get(0).text());
        assertEquals(
                1,
                lines(metric(bed("strip", rectangle(at(0, 0), metres(3), metres(0.15)))
                                .watering(DRIP)))
                        .size());
    }

    @Test
    void namesThatAreTakenAreLeftOut() {
        Yard yard = metric(
                bed("herbs", smallBed()).watering(DRIP),
                bubbler("herbs/1", at(9, 9)).family("bubbler-0_5"));
        List<HeadId> ids = laid(yard, DripParameters.defaults()).yard().water().heads().stream()
                .map(Head::id)
                .toList();
        assertEquals(List.of(new HeadId("herbs/1"), new HeadId("herbs/2")), ids);
    }

    @Test
    void aFamilyThatMakesNoDripLineIsRefused() {
        Yard yard = metric(bed("herbs", smallBed()).watering(DRIP));
        InvalidValueException refused = assertThrows(
                InvalidValueException.class,
                () -> laid(yard, DripParameters.defaults().withFamily("spray-3_7")));
        assertEquals(
                "drip lines: family is 'spray-3_7', which makes a spray; it must be a family that makes a drip line",
                refused.getMessage());
        assertThrows(InvalidValueException.class, () -> rows(0.05));
    }
}
