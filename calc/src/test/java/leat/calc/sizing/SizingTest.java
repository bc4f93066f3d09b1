package leat.calc.sizing;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.psi;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.hydraulics.Hydraulics;
import leat.calc.hydraulics.HydraulicsParameters;
import leat.calc.hydraulics.HydraulicsResult;
import leat.calc.hydraulics.SlopeYard;
import leat.model.finding.Status;
import leat.model.id.PipeId;
import leat.model.plan.Aspect;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SizingTest {

    private static final SizingParameters USUAL = SizingParameters.defaults();

    private static Proposal plan(Yard yard) {
        return Sizing.run(SlopeYard.site(yard), USUAL, Progress.NONE);
    }

    private static Yard unsized(double staticPsi) {
        return SlopeYard.yard0(SlopeYard.street(staticPsi), false, 5);
    }

    private static String size(Yard yard, String pipe) {
        return yard.water().pipe(new PipeId(pipe)).orElseThrow().size().orElseThrow();
    }

    @Tag("law")
    @ParameterizedTest
    @ValueSource(doubles = {35, 45, 52, 60, 75})
    void planningAPlanAgainChangesNothing(double staticPsi) {
        Yard once = plan(unsized(staticPsi)).yard();
        assertEquals(once, plan(once).yard());
        assertTrue(once.isPlanned(new PipeId("u1"), Aspect.SIZE));
    }

    @Tag("law")
    @ParameterizedTest
    @ValueSource(doubles = {35, 45, 52, 60, 75})
    void planKeepsVelocityAndNeverGrows(double staticPsi) {
        Yard yard = plan(unsized(staticPsi)).yard();
        assertTrue(SizeReview.run(SlopeYard.site(yard), USUAL, Progress.NONE)
                .findings()
                .isEmpty());
        HydraulicsResult result = Hydraulics.run(SlopeYard.site(yard), HydraulicsParameters.defaults(), Progress.NONE);
        assertTrue(result.findings().stream().noneMatch(one -> one.rule().id().equals("hydraulics.velocity")));
    }

    @Test
    void headsGetTheirReferencePressureWhereTheSupplyAllows() {
        Proposal proposal = plan(unsized(62));
        assertEquals(Status.COMPLETE, proposal.status(), proposal.reasons().toString());
        HydraulicsResult result =
                Hydraulics.run(SlopeYard.site(proposal.yard()), HydraulicsParameters.defaults(), Progress.NONE);
        result.zones()
                .values()
                .forEach(zone -> zone.heads()
                        .values()
                        .forEach(head -> assertTrue(head.pressure().compareTo(psi(44.9)) >= 0, head.toString())));
    }

    @Test
    void weakSupplyIsSaid() {
        Proposal proposal = plan(unsized(30));
        assertEquals(Status.PARTIAL, proposal.status());
        assertEquals(
                List.of(
                        "no size of pipe gives all its heads their least pressure; losses are least",
                        "no size of pipe gives all its heads their least pressure; losses are least"),
                proposal.reasons().stream()
                        .filter(one -> one.subject().toString().startsWith("zone"))
                        .map(one -> one.text())
                        .toList());
    }

    @Tag("law")
    @Test
    void weakerSupplyNeverNeedsLessPipe() {
        double strong = plan(unsized(70)).bounds().get(0).reached().si();
        double weak = plan(unsized(58)).bounds().get(0).reached().si();
        assertTrue(weak >= strong);
    }

    @Tag("law")
    @Test
    void givenSizesComeOutEqual() {
        Yard given = SlopeYard.yard0(SlopeYard.street(60), true, 5);
        assertEquals(given.water(), plan(given).yard().water());
        Yard one = plan(unsized(60)).yard().pin(new PipeId("u1"), Aspect.SIZE);
        Yard wide = withSize(one, "u1", "1-1/4 in");
        Yard again = plan(wide).yard();
        assertEquals("1-1/4 in", size(again, "u1"));
        assertEquals(again, plan(again).yard());
    }

    private static Yard withSize(Yard yard, String pipe, String size) {
        WaterSystem water = yard.water();
        return yard.withWater(water.withLaterals(water.laterals().stream()
                .map(lateral -> new leat.model.water.Lateral(
                        lateral.zone(),
                        lateral.runs().stream()
                                .map(run -> run.id().name().equals(pipe) ? run.withSize(size) : run)
                                .toList(),
                        lateral.heads()))
                .toList()));
    }

    @Test
    void largerPipeDownstreamIsABreachWithinASeries() {
        Yard yard = withSize(SlopeYard.yard0(SlopeYard.street(60), true, 5), "u2", "1 in");
        var findings =
                SizeReview.run(SlopeYard.site(yard), USUAL, Progress.NONE).findings();
        assertEquals(1, findings.size());
        assertEquals("pipe.grows", findings.get(0).rule().id());
        assertEquals("pipe u2, size", findings.get(0).subject().toString());
        assertEquals(1, findings.get(0).measured().si());
    }

    /** Source: bores 0.824 in of 3/4 in Schedule 40, ASTM D1785, and 0.785 in of 3/4 in copper L, ASTM B88. */
    @Tag("reference")
    @Test
    void largerBoreOfAnotherSeriesIsANoteWithBothBores() {
        Yard yard = SlopeYard.yard0(SlopeYard.street(60), true, 5);
        WaterSystem water = yard.water();
        List<PipeRun> runs = Stream.of(water.main().runs())
                .flatMap(List::stream)
                .map(run -> run.id().name().equals("main")
                        ? new PipeRun(
                                run.id(),
                                run.from(),
                                run.route(),
                                "copper Type L",
                                java.util.Optional.of("3/4 in"),
                                false,
                                run.phase())
                        : run)
                .toList();
        Yard copper = yard.withWater(water.withMain(new leat.model.water.Main(runs)));
        var findings =
                SizeReview.run(SlopeYard.site(copper), USUAL, Progress.NONE).findings();
        assertEquals(
                List.of("pipe u1, size", "pipe a1, size").stream().sorted().toList(),
                findings.stream().map(one -> one.subject().toString()).sorted().toList());
        assertEquals("pipe.grows.series", findings.get(0).rule().id());
        assertEquals(0.824, ((Length) findings.get(0).measured()).inInches(), 0.0006);
        assertEquals(0.785, ((Length) findings.get(0).limit()).inInches(), 0.0006);
    }

    @Test
    void emptyYardNeedsNothing() {
        Yard empty = Yard.empty("Empty", leat.model.quantity.UnitSystem.US);
        assertEquals(empty, plan(empty).yard());
    }

    /** Source: 20 gpm at most 5 ft/s needs a bore of 1.28 in by continuity; 1-1/4 in Schedule 40 has 1.380 in, ASTM D1785. */
    @Tag("reference")
    @Test
    void biggerBibDrawGrowsItsPipe() {
        Yard yard = SlopeYard.yard0(
                SlopeYard.street(60),
                false,
                5,
                leat.model.plan.Parts.bib("second", at(25, 0)).on("service").draws(gpm(20)));
        assertEquals("1-1/4 in", size(plan(yard).yard(), "service"));
    }
}
