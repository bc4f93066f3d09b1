package leat.calc.assess;

import static leat.model.plan.Parts.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.calc.takeoff.MaterialLine;
import leat.document.StandingData;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.water.DripLine;
import leat.model.water.Head;
import org.junit.jupiter.api.Test;

/** A rectangular bed, an L-shaped one and a round one around a tree, planned from the survey: drip lines go through all stages. */
class DripYardTest {

    private static final StandingData TABLES = StandingData.load(Yard.EDITION);

    private static Site site() {
        return TABLES.siteOf(yard("beds")
                .units(METRIC)
                .with(
                        bed("herbs", rectangle(at(1, 7), metres(6), metres(1.8)))
                                .soil("loam")
                                .watering(DRIP),
                        bed("angle", polygon(at(1, 10), at(8, 10), at(8, 12), at(3.4, 12), at(3.4, 17), at(1, 17)))
                                .soil("sand")
                                .watering(DRIP),
                        bed("round", circle(at(14, 13), metres(2.5)))
                                .soil("clay")
                                .watering(DRIP),
                        tree("plum", at(14, 13), millimetres(200)),
                        mains("street", at(9.5, 0.5)).staticPressure(bar(4)).flowTest(litresPerMinute(60), bar(3)),
                        pipe("main", polyline(at(9.5, 0.5), at(9.5, 8.5)))
                                .from("street")
                                .series("PE100 SDR 11 (PN 16)"),
                        backflow("garden").on("main").device("bfp-rp-1").height(metres(0.4)),
                        manifold("wall", at(9.5, 8.5)).on("main")));
    }

    private static Yard planned(Site site) {
        return Planner.run(site, PlannerParameters.defaults(), Progress.NONE).yard();
    }

    @Test
    void eachBedIsWateredByLinesOfAZone() {
        Site plan = site().with(planned(site()));
        Assessment assessment = Assessor.run(plan, Progress.NONE);

        List<Head> heads = plan.yard().water().heads();
        TreeSet<String> beds = new TreeSet<>();
        heads.forEach(head -> beds.add(head.id().name().replaceAll("/.*", "")));
        assertEquals(new TreeSet<>(List.of("angle", "herbs", "round")), beds);
        assertEquals(
                heads.size(),
                plan.yard().water().zones().stream()
                        .mapToInt(zone -> zone.heads().size())
                        .sum());
        assertFalse(assessment.hasBreach(), () -> assessment.findings().toString());
        assertTrue(assessment.findings().stream()
                .noneMatch(finding -> finding.rule().id().startsWith("coverage.")));
    }

    @Test
    void theTubeIsBoughtByItsLength() {
        Site plan = site().with(planned(site()));
        Assessment assessment = Assessor.run(plan, Progress.NONE);

        double lengthM = plan.yard().water().heads().stream()
                .mapToDouble(head -> ((DripLine) head).path().lengthM())
                .sum();
        MaterialLine tube = assessment.takeoff().lines().stream()
                .filter(line -> line.key().equals("drip line dripline-2_3-0_3"))
                .findFirst()
                .orElseThrow();
        assertEquals(new Length(lengthM).metres(), tube.quantity().si(), 1e-6);
    }

    @Test
    void planningAgainChangesNothing() {
        Yard plan = planned(site());
        assertEquals(plan, planned(site().with(plan)));
    }

    @Test
    void familyAndRowsAreChoicesOfThePlan() {
        PlannerParameters choices =
                PlannerParameters.defaults().withDripFamily("dripline-2_0-0_3").withDripRows(metres(0.9));
        Yard plan = Planner.run(site(), choices, Progress.NONE).yard();
        DripLine line = (DripLine) plan.water().heads().stream()
                .filter(head -> head.id().name().equals("herbs/1"))
                .findFirst()
                .orElseThrow();
        assertEquals("dripline-2_0-0_3", line.family());
        assertEquals(2 * 5.8 + 0.9, line.path().lengthM(), 1e-9); // two rows of 6 m less their ends, and the joint
    }
}
