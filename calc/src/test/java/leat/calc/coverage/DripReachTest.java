package leat.calc.coverage;

import static leat.model.plan.Parts.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.finding.Finding;
import leat.model.finding.Severity;
import leat.model.finding.Subject;
import leat.model.id.SurfaceId;
import leat.model.plan.Part;
import leat.model.plan.Yard;
import leat.model.quantity.Count;
import org.junit.jupiter.api.Test;

/** Beds that are to be watered by drip, with lines, with too few and with none. */
class DripReachTest {

    private static final StandingData TABLES = StandingData.load(Yard.EDITION);
    private static final Part ELSEWHERE = bubbler("tree", at(20, 20)).family("bubbler-0_5");

    private static List<Finding> findings(Part... more) {
        Yard yard = yard("beds")
                .units(METRIC)
                .with(bed("herbs", rectangle(at(0, 0), metres(4), metres(2)))
                        .soil("loam")
                        .watering(DRIP))
                .with(more);
        return Coverage.run(TABLES.siteOf(yard), CoverageParameters.defaults(), Progress.NONE).findings().stream()
                .filter(finding -> finding.rule().id().startsWith("coverage.d"))
                .toList();
    }

    private static Part line(double fromX, double toX) {
        return dripLine("D" + fromX, polyline(at(fromX, 1), at(toX, 1))).family("dripline-2_3-0_3");
    }

    @Test
    void aBedWithoutAnythingIsDry() {
        Finding finding = findings(ELSEWHERE).get(0);
        assertEquals("coverage.dry", finding.rule().id());
        assertEquals(Severity.BREACH, finding.severity());
        assertEquals(Subject.of(new SurfaceId("herbs")), finding.subject());
        assertEquals(Count.of(0), finding.measured());
        assertEquals(Count.of(1), finding.limit());
    }

    @Test
    void aYardWithoutHeadsIsUnfinishedNotWrong() {
        assertEquals(
                List.of(Severity.NOTE),
                findings().stream().map(Finding::severity).toList());
    }

    /** Source: by hand. A line of 2 m on loam wets 0.45 m along 2 m and half a circle of 0.225 m at each end: 1.06 of 8 m². */
    @Test
    void aLineThatWetsLittleIsTooLittle() {
        Finding finding = findings(line(1, 3)).get(0);
        assertEquals("coverage.drip", finding.rule().id());
        assertEquals(Severity.CAUTION, finding.severity());
        assertEquals(
                (2 * 0.45 + Math.PI * 0.225 * 0.225) / 8, finding.measured().si(), 0.02); // cells of 0.1 m
    }

    @Test
    void rowsTwiceAsFarAsUsualAreEnoughForPlantsInRows() {
        assertEquals(
                List.of(),
                findings(
                        dripLine("D1", polyline(at(0.1, 0.6), at(3.9, 0.6))).family("dripline-2_3-0_3"),
                        dripLine("D2", polyline(at(0.1, 1.4), at(3.9, 1.4))).family("dripline-2_3-0_3")));
    }

    @Test
    void headsThatThrowOnItWaterItToo() {
        assertEquals(
                List.of(),
                findings(spray("S1", at(2, 0)).family("spray-2_4").arc(270, 180).radius(metres(2.4))));
    }
}
