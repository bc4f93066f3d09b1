package leat.calc.trenching;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bed;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.circle;
import static leat.model.plan.Parts.existingService;
import static leat.model.plan.Parts.handDig;
import static leat.model.plan.Parts.kilopascals;
import static leat.model.plan.Parts.litresPerMinute;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.millimetres;
import static leat.model.plan.Parts.noDig;
import static leat.model.plan.Parts.obstacle;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.tree;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.zoning.Zoning;
import leat.calc.zoning.ZoningParameters;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.plan.Part;
import leat.model.plan.Place;
import leat.model.plan.Site;
import leat.model.site.ExistingService;
import leat.model.water.Lateral;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;

/** Yards thrown together at random: things overlap, heads stand in walls, on lines and on each other. */
@Tag("law")
class RandomYardLawTest {

    private static final ZoningParameters ZONES =
            ZoningParameters.defaults().withEffort(2_000).withMostFlow(litresPerMinute(30));
    private static final TrenchingParameters TRENCHES =
            TrenchingParameters.defaults().withEffort(40_000);

    @RepeatedTest(12)
    void anyYardIsPlannedOrSaysWhyNotAndPlanningAgainChangesNothing(RepetitionInfo turn) {
        Site site = BackYard.siteOf(yard("Random").units(METRIC).with(parts(new Random(turn.getCurrentRepetition()))));
        Site zoned = site.with(Zoning.run(site, ZONES, Progress.NONE).yard());
        assertEquals(zoned.yard(), Zoning.run(zoned, ZONES, Progress.NONE).yard());

        Proposal proposal = Trenching.run(zoned, TRENCHES, Progress.NONE);
        Site routed = site.with(proposal.yard());
        assertEquals(
                routed.yard(), Trenching.run(routed, TRENCHES, Progress.NONE).yard());
        assertEquals(routed.yard(), Zoning.run(routed, ZONES, Progress.NONE).yard());

        int reached = routed.yard().water().laterals().stream()
                .map(Lateral::heads)
                .mapToInt(heads -> heads.size())
                .sum();
        long missed = proposal.reasons().stream()
                .filter(reason -> reason.subject().toString().startsWith("head "))
                .count();
        assertEquals(site.yard().water().heads().size(), reached + missed);
        assertEquals(proposal.reasons().isEmpty(), proposal.status() == Status.COMPLETE);
        assertKeepsTheGround(routed);
    }

    /** Heads may stand in walls, in no-dig ground, on lines or outside the lot, and a stub must then lead there; all else is kept. */
    private static void assertKeepsTheGround(Site routed) {
        List<Finding> findings = TrenchReview.run(routed, TrenchReviewParameters.defaults(), Progress.NONE)
                .findings();
        for (Finding finding : findings) {
            String rule = finding.rule().id();
            assertTrue(
                    List.of("trench.no-dig", "trench.obstacle", "trench.lot", "trench.hole", "trench.by-hand")
                            .contains(rule),
                    finding.toString());
        }
    }

    private static Part[] parts(Random random) {
        List<Part> parts = new ArrayList<>();
        parts.add(traverse(at(0, 0))
                .go("N 5° W", metres(32))
                .go("N 85° E", metres(27))
                .go("S 10° W", metres(30))
                .close());
        for (int i = 0; i < 3; i++) {
            parts.add(structure("house " + i, rectangle(place(random), metres(4), metres(3))));
            parts.add(paving("path " + i, rectangle(place(random), metres(8), metres(1.2))));
            parts.add(bed("bed " + i, circle(place(random), metres(2))));
            parts.add(tree("tree " + i, place(random), millimetres(150)));
        }
        parts.add(noDig("no dig", circle(place(random), metres(1.5))).doubt(metres(0.3)));
        parts.add(handDig("hand dig", rectangle(place(random), metres(3), metres(3))));
        parts.add(obstacle("boulder", circle(place(random), metres(0.8))));
        parts.add(existingService("gas", ExistingService.Kind.GAS, polyline(place(random), place(random)))
                .doubt(metres(0.2)));
        parts.add(mains("street", place(random))
                .staticPressure(kilopascals(400))
                .flowTest(litresPerMinute(60), kilopascals(300)));
        Place box = place(random);
        parts.add(manifold("box", box));
        if (random.nextBoolean()) {
            parts.add(manifold("other box", place(random)).valves("A", "B"));
        }
        parts.add(bib("tap", place(random)));
        for (int i = 0; i < 14; i++) {
            Place at = i == 13 && random.nextBoolean() ? box : i == 12 ? at(2, 0) : place(random);
            parts.add(spray("S" + i, at)
                    .family("spray-3_7")
                    .arc(90 * random.nextInt(4), 180)
                    .radius(metres(3.5)));
        }
        return parts.toArray(Part[]::new);
    }

    /** On a grid of half metres, so that things do fall on each other. */
    private static Place place(Random random) {
        return at(2 + 0.5 * random.nextInt(36), 3 + 0.5 * random.nextInt(50));
    }
}
