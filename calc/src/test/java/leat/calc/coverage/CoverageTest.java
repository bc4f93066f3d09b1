package leat.calc.coverage;

import static leat.model.plan.Parts.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.finding.Finding;
import leat.model.finding.Severity;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.HeadId;
import leat.model.id.SurfaceId;
import leat.model.plan.Part;
import leat.model.plan.Yard;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the service finds in small yards whose answer can be seen or reckoned by hand. */
class CoverageTest {

    private static final StandingData TABLES = StandingData.load(Yard.EDITION);
    private static final SurfaceId LAWN = new SurfaceId("lawn");

    private static Yard square(Part... more) {
        return yard("square")
                .units(METRIC)
                .with(lawn("lawn", rectangle(at(0, 0), metres(4), metres(4))))
                .with(more);
    }

    private static Part[] fourCorners(double radiusM) {
        return new Part[] {
            rotor("A", at(0, 0)).family("multi-4_9").arc(0, 90).radius(metres(radiusM)),
            rotor("B", at(4, 0)).family("multi-4_9").arc(270, 90).radius(metres(radiusM)),
            rotor("C", at(4, 4)).family("multi-4_9").arc(180, 90).radius(metres(radiusM)),
            rotor("D", at(0, 4)).family("multi-4_9").arc(90, 90).radius(metres(radiusM))
        };
    }

    private static CoverageResult run(Yard yard) {
        return Coverage.run(TABLES.siteOf(yard), CoverageParameters.defaults(), Progress.NONE);
    }

    private static List<String> rules(CoverageResult result) {
        return result.findings().stream().map(finding -> finding.rule().id()).toList();
    }

    @Test
    void headToHeadSpacingReachesEachSpotTwice() {
        CoverageResult result = run(square(fourCorners(4)));
        SurfaceCoverage lawn = result.surfaces().get(LAWN);
        assertEquals(1, lawn.reachedByTwo().value());
        assertEquals(Status.COMPLETE, result.status());
        assertTrue(result.wasted().isEmpty());
        assertEquals(List.of(), rules(result));
    }

    @Test
    void shortHeadsLeaveSpotsToOneHeadOrNone() {
        CoverageResult result = run(square(fourCorners(2)));
        Finding finding = result.findings().get(0);
        assertEquals("coverage.two", finding.rule().id());
        assertEquals(Severity.BREACH, finding.severity());
        assertEquals(Subject.of(LAWN), finding.subject());
        assertEquals(0, finding.measured().si());
        // Four quarters of 2 m radius in 16 m².
        assertEquals(
                Math.PI * 4 / 16, result.surfaces().get(LAWN).reachedByOne().value(), 0.03); // cells of 0.25 m
    }

    @Test
    void aYardWithoutHeadsIsUnfinishedNotWrong() {
        assertEquals(
                List.of(Severity.NOTE),
                run(square()).findings().stream().map(Finding::severity).toList());
    }

    /** Flow of four quarters of multi-4_9 (4.4018 L/min at full circle, leat-1) on 16 m², less what falls past the far edges. */
    @Test
    @Tag("reference")
    void meanRateIsFlowOverArea() {
        double millimetres =
                run(square(fourCorners(4.9))).surfaces().get(LAWN).mean().inMillimetresPerHour();
        double all = 4.4018 * 60 / 16;
        assertTrue(millimetres < all && millimetres > 0.85 * all, millimetres + " of " + all);
    }

    @Test
    void weakHeadsReachLess() {
        CoverageParameters weak = CoverageParameters.defaults()
                .withWorking(Map.of(
                        new HeadId("A"), new WorkingHead(Length.metres(2), Flow.litresPerMinute(1)),
                        new HeadId("C"), new WorkingHead(Length.ZERO, Flow.ZERO)));
        SurfaceCoverage lawn = Coverage.run(TABLES.siteOf(square(fourCorners(4))), weak, Progress.NONE)
                .surfaces()
                .get(LAWN);
        assertTrue(lawn.reachedByTwo().value() < 0.8);
        assertTrue(lawn.reachedByOne().value() > 0.9);
    }

    @Test
    void waterOnPavingIsFoundBeyondTheStrip() {
        Yard yard = square(fourCorners(4)).with(paving("court", rectangle(at(4, 0), metres(3), metres(4))));
        assertEquals(List.of(), rules(run(yard)));
        Yard turned =
                yard.with(spray("E", at(4, 2)).family("spray-2_4").arc(0, 360).radius(metres(2)));
        CoverageResult result = run(turned);
        assertEquals(List.of("coverage.overspray"), rules(result));
        assertEquals(Subject.of(new HeadId("E")), result.findings().get(0).subject());
        // Half of the circle, less a strip of 0.3 m along its straight side.
        double wanted = 2 * 2 * Math.acos(0.15) - 0.3 * Math.sqrt(4 - 0.09);
        assertEquals(wanted, result.findings().get(0).measured().si(), 0.25); // four cells
        assertEquals(result.findings().get(0).measured(), result.wasted().get(new HeadId("E")));
    }

    @Test
    void waterOnBedsAndPondsIsNoWaste() {
        Yard yard = square(fourCorners(4))
                .with(
                        bed("shrubs", rectangle(at(4, 0), metres(3), metres(2))),
                        pond("pond", rectangle(at(4, 2), metres(3), metres(2))),
                        spray("E", at(4, 2)).family("spray-2_4").arc(0, 360).radius(metres(2)));
        assertEquals(List.of(), rules(run(yard)));
    }

    @Test
    void headsOutsideTheLotAndWaterThrownThereAreFound() {
        Yard yard = square(fourCorners(4))
                .with(
                        traverse(at(-1, -1))
                                .go("N 0° E", metres(6))
                                .go("N 90° E", metres(6))
                                .go("S 0° E", metres(6))
                                .close(),
                        spray("E", at(-3, 2)).family("spray-2_4").arc(0, 360).radius(metres(1)));
        CoverageResult result = run(yard);
        assertEquals(List.of("coverage.lot", "coverage.outside"), rules(result));
        assertEquals(2, result.findings().get(0).measured().si(), 1e-9);
        assertEquals(Math.PI, result.findings().get(1).measured().si(), 0.2);
    }

    @Test
    void aBedWantsOneHead() {
        Yard yard = yard("bed")
                .units(METRIC)
                .with(
                        bed("herbs", rectangle(at(0, 0), metres(2), metres(2))).watering(HEADS),
                        spray("A", at(0, 0)).family("spray-3_0").arc(0, 90).radius(metres(3)));
        CoverageResult result = run(yard);
        assertEquals(
                1,
                result.surfaces().get(new SurfaceId("herbs")).reachedAsWanted().value());
        assertEquals(
                0, result.surfaces().get(new SurfaceId("herbs")).reachedByTwo().value());
        assertTrue(!rules(result).contains("coverage.one"));
    }

    @Test
    void whatIsBuiltOnALawnIsNoLawn() {
        Yard yard = square(fourCorners(4)).with(paving("slab", rectangle(at(1, 1), metres(2), metres(2))));
        WetCells cells = run(yard).surfaces().get(LAWN).cells();
        int lawn = 0;
        for (int row = 0; row < cells.rows(); row++) {
            for (int column = 0; column < cells.columns(); column++) {
                lawn += cells.holds(row, column) ? 1 : 0;
            }
        }
        assertEquals(12, lawn / 16.0);
        assertEquals(0, cells.reach(8, 8));
        assertTrue(cells.reach(0, 0) >= 2 && cells.rate(0, 0).metresPerSecond() > 0);
    }

    @Test
    void theSoilsOwnIntakeIsTheLimitWhereItIsKnown() {
        Yard yard = yard("clay")
                .units(METRIC)
                .with(lawn("lawn", rectangle(at(0, 0), metres(4), metres(4))).soil("clay"))
                .with(fourCorners(4));
        Finding finding = run(yard).findings().get(0);
        assertEquals("coverage.intake", finding.rule().id());
        assertEquals(Severity.NOTE, finding.severity());
        assertEquals(TABLES.catalog().soil("clay").intake(), finding.limit());
    }

    @Test
    void stoppedResultsSaySo() {
        Progress stop = new Progress() {
            @Override
            public boolean stopped() {
                return true;
            }

            @Override
            public void at(double fraction, String what) {
                // nobody listens
            }
        };
        CoverageResult result = Coverage.run(TABLES.siteOf(square()), CoverageParameters.defaults(), stop);
        assertEquals(Status.STOPPED, result.status());
        assertTrue(result.surfaces().isEmpty());
    }

    @Test
    @Tag("law")
    void theSameYardGivesEqualResults() {
        Yard yard = square(fourCorners(3.3));
        assertEquals(run(yard), run(yard));
        assertEquals(run(yard).hashCode(), run(yard).hashCode());
    }
}
