package leat.calc.assess;

import static leat.model.plan.Parts.LATER;
import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.kilopascals;
import static leat.model.plan.Parts.litresPerMinute;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.millimetres;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.calc.digging.Digging;
import leat.calc.digging.DiggingParameters;
import leat.calc.trenching.TrenchReview;
import leat.calc.trenching.TrenchReviewParameters;
import leat.calc.trenching.TrenchReviewResult;
import leat.document.StandingData;
import leat.model.finding.Finding;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.trench.TrenchSegment;
import leat.model.water.PipeRun;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A trench that somebody drew, 20 m long and 5 m north of source and manifold, which stand 20 m apart. Dug straight, a main
 * costs 20; through the trench 2 × 5 m of digging and 20 m at a tenth: 12. All figures by hand.
 */
@Tag("law")
class GivenTrenchTest {

    private static final SegmentId DRAWN = new SegmentId("drawn");

    private static Site planned(Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                mains("street", at(0, 0))
                        .staticPressure(kilopascals(450))
                        .flowTest(litresPerMinute(60), kilopascals(380)),
                manifold("box", at(20, 0)).valves("A")));
        parts.addAll(List.of(more));
        Site site = StandingData.load(Yard.EDITION)
                .siteOf(yard("Drawn").units(METRIC).with(parts.toArray(Part[]::new)));
        Site once = planned(site);
        assertEquals(once.yard(), planned(once).yard());
        assertEquals(drawn(site).withContents(List.of()), drawn(once).withContents(List.of()));
        return once;
    }

    private static Site planned(Site site) {
        return site.with(
                Planner.run(site, PlannerParameters.defaults(), Progress.NONE).yard());
    }

    private static TrenchSegment drawn(Site site) {
        return site.yard().trenches().stream()
                .filter(one -> one.id().equals(DRAWN))
                .findFirst()
                .orElseThrow();
    }

    private static Part trenchOf(double depthMm) {
        return trench("drawn", polyline(at(0, 5), at(20, 5))).depth(millimetres(depthMm));
    }

    private static double mainM(Site site) {
        return site.yard().water().main().runs().stream()
                .map(PipeRun::route)
                .mapToDouble(route -> route.lengthM())
                .sum();
    }

    private static TrenchReviewResult review(Site site) {
        return TrenchReview.run(site, TrenchReviewParameters.defaults(), Progress.NONE);
    }

    @Test
    void aMainGoesThroughADeepTrenchWhichIsDugOnce() {
        Site plan = planned(trenchOf(600));
        assertEquals(List.of(new PipeId("main-1")), drawn(plan).contents());
        assertEquals(30, mainM(plan), 1e-9);
        assertEquals(30, review(plan).trenches().metres(), 1e-9);
        assertEquals(List.of(), review(plan).findings());
        var digging = Digging.run(plan, DiggingParameters.defaults(), Progress.NONE);
        assertEquals(30, digging.total().onPlan().metres(), 1e-9);
        // Bore of the chain 0.1 m up to 0.6 m deep, but pipe and room ask for 0.15 m and the pipe: bank = width × depth
        // × length.
        double widthM = digging.trench(DRAWN).orElseThrow().width().metres();
        double bankM3 = widthM * (20 * 0.6 + 2 * 5 * 0.525);
        assertEquals(bankM3, digging.total().bank().cubicMetres(), 1e-9);
    }

    /** The main wants 450 mm and 75 mm for itself and its bed; laterals 200 mm and 75 mm. */
    @Test
    void aShallowTrenchTakesLateralsOnly() {
        Site plan = planned(
                trenchOf(300),
                spray("S1", at(0, 6)).family("spray-3_7").arc(0, 180).radius(metres(3.6)),
                spray("S2", at(10, 6)).family("spray-3_7").arc(0, 180).radius(metres(3.6)),
                zone("north").valve("A").heads("S1", "S2"));
        assertEquals(20, mainM(plan), 1e-9);
        assertEquals(2, drawn(plan).pipes().size()); // to where S2 branches off, and on to S1
        assertTrue(drawn(plan).pipes().stream().allMatch(pipe -> pipe.name().startsWith("north/")));
        assertTrue(
                review(plan).findings().isEmpty(), () -> review(plan).findings().toString());
    }

    /** What is laid now cannot wait for a trench of later. */
    @Test
    void aTrenchOfLaterIsNotShared() {
        Site plan = planned(trench("drawn", polyline(at(0, 5), at(20, 5)))
                .depth(millimetres(600))
                .phase(LATER));
        assertEquals(List.of(), drawn(plan).contents());
        assertEquals(20, mainM(plan), 1e-9);
    }

    /** A pipe that is drawn along a trench lies in it without a word; one that wants more depth gets its own. */
    @Test
    void aPipeDrawnAlongTheTrenchLiesInIt() {
        Part spur = pipe("spur", polyline(at(0, 0), at(0, 5), at(8, 5)))
                .from("street")
                .series("PE100 SDR 11 (PN 16)");
        Site deep = planned(trenchOf(600), spur);
        assertTrue(drawn(deep).contents().contains(new PipeId("spur")));
        assertEquals(List.of(), missing(deep));
        Site shallow = planned(trenchOf(300), spur);
        assertEquals(List.of(), drawn(shallow).contents());
        assertEquals(List.of(), missing(shallow));
    }

    private static List<Finding> missing(Site site) {
        return review(site).findings();
    }

    /** Valve wires from a shed at one end to the box at the other, in conduit: 500 mm by IEC 60364-5-52, and 75 mm. */
    @Test
    void valveWiresShareIt() {
        Site plan = planned(
                trenchOf(600),
                structure("shed", rectangle(at(-4, 4), metres(3), metres(2))),
                controller("clock").inside("shed").stations(4));
        assertTrue(
                drawn(plan).contents().stream().anyMatch(one -> one instanceof ConduitId || one instanceof CableId),
                drawn(plan).contents().toString());
        assertTrue(drawn(plan).contents().contains(new PipeId("main-1")));
    }
}
