package leat.calc.assess;

import static leat.model.plan.Parts.LATER;
import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.kilopascals;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.litresPerMinute;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leat.calc.Progress;
import leat.calc.coverage.SurfaceCoverage;
import leat.calc.phasing.EarlyEnd;
import leat.calc.trenching.TrenchingParameters;
import leat.calc.zoning.ZoningParameters;
import leat.document.StandingData;
import leat.model.id.PipeId;
import leat.model.id.SurfaceId;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;
import leat.model.water.PipeRun;
import leat.model.water.Zone;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Two lawns one behind the other, the farther one laid out in a later year, and a hose bib of later: placed, zoned, routed
 * and sized in one go, with nothing of now that waits for later.
 */
@Tag("law")
class LaterLawnTest {

    private static Site site() {
        return StandingData.load(Yard.EDITION)
                .siteOf(yard("Strip")
                        .units(METRIC)
                        .with(
                                traverse(at(-2, -6))
                                        .go("N 0° E", metres(20))
                                        .go("N 90° E", metres(44))
                                        .go("S 0° E", metres(20))
                                        .close(),
                                lawn("near", rectangle(at(4, 0), metres(12), metres(8))),
                                lawn("far", rectangle(at(22, 0), metres(12), metres(8)))
                                        .phase(LATER),
                                mains("street", at(0, -4))
                                        .staticPressure(kilopascals(450))
                                        .flowTest(litresPerMinute(70), kilopascals(380)),
                                pipe("riser", polyline(at(0, -4), at(0, -3)))
                                        .from("street")
                                        .series("PE100 SDR 11 (PN 16)")
                                        .size("DN/OD 32"),
                                backflow("garden")
                                        .on("riser")
                                        .device("bfp-rp-1")
                                        .height(metres(0.6)),
                                manifold("box", at(1.5, -2)),
                                bib("end", at(38, -3))
                                        .draws(litresPerMinute(15))
                                        .phase(LATER)));
    }

    private static Site planned() {
        Site site = site();
        return site.with(Planner.run(site, parameters(), Progress.NONE).yard());
    }

    private static PlannerParameters parameters() {
        return PlannerParameters.defaults()
                .withHeads(List.of("spray-4_6"))
                .withZoning(ZoningParameters.defaults().withEffort(20_000).withMostFlow(litresPerMinute(45)))
                .withTrenching(TrenchingParameters.defaults().withEffort(200_000));
    }

    @Test
    void aLawnOfLaterHasZonesOfLaterOnValvesOfNow() {
        Yard plan = planned().yard();
        List<Zone> later = plan.water().zones().stream()
                .filter(zone -> zone.phase() == Phase.LATER)
                .toList();
        assertFalse(later.isEmpty());
        for (Zone zone : plan.water().zones()) {
            String lawn = zone.phase() == Phase.LATER ? "far/" : "near/";
            assertTrue(zone.heads().stream().allMatch(head -> head.name().startsWith(lawn)), zone.toString());
        }
        assertEquals(
                plan.water().heads().size(),
                plan.water().zones().stream()
                        .mapToInt(zone -> zone.heads().size())
                        .sum());
    }

    @Test
    void nothingOfNowWaitsAndBothLawnsAreCovered() {
        Assessment assessment = Assessor.run(planned(), Progress.NONE);
        assertEquals(List.of(), assessment.phasing().findings());
        for (String lawn : List.of("near", "far")) {
            SurfaceCoverage coverage = Optional.ofNullable(
                            assessment.coverage().surfaces().get(new SurfaceId(lawn)))
                    .orElseThrow();
            assertEquals(1, coverage.reachedAsWanted().value(), 1e-9, lawn);
        }
        assertFalse(assessment.hasBreach(), () -> assessment.findings().toString());
    }

    /** No pipe of later lies in a trench of now: it was laid ahead, up to where it leaves the trench, and is capped there. */
    @Test
    void whatBeginsInATrenchOfNowIsLaidNow() {
        Site plan = planned();
        for (TrenchSegment trench : plan.yard().trenches()) {
            for (PipeId pipe : trench.pipes()) {
                PipeRun run = plan.yard().water().pipe(pipe).orElseThrow();
                assertEquals(trench.phase(), run.phase(), trench.id() + " holds " + pipe);
            }
        }
        List<EarlyEnd> ends = Assessor.run(plan, Progress.NONE).phasing().ends();
        assertFalse(ends.isEmpty());
        assertTrue(plan.yard().water().pipes().anyMatch(run -> run.phase() == Phase.LATER));
        assertTrue(plan.yard().water().pipes().allMatch(run -> run.size().isPresent()));
    }

    @Test
    void planningAgainChangesNothing() {
        Site once = planned();
        Yard twice = Planner.run(once, parameters(), Progress.NONE).yard();
        assertEquals(once.yard().water().zones(), twice.water().zones());
        assertTrue(once.yard().equals(twice));
    }
}
