package leat.calc.placement;

import static leat.model.plan.Parts.*;
import static leat.model.plan.Parts.circle;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.existingService;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.polygon;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.pond;
import static leat.model.plan.Parts.rectangle;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.coverage.Coverage;
import leat.calc.coverage.CoverageParameters;
import leat.calc.coverage.CoverageResult;
import leat.calc.coverage.WorkingHead;
import leat.document.StandingData;
import leat.model.catalog.HeadFamily;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Bound;
import leat.model.finding.Status;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.HeadId;
import leat.model.id.SurfaceId;
import leat.model.plan.Aspect;
import leat.model.plan.Outline;
import leat.model.plan.Part;
import leat.model.plan.Place;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Flow;
import leat.model.quantity.Ratio;
import leat.model.site.ExistingService;
import leat.model.water.Head;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlacementTest {

    private static final StandingData TABLES = StandingData.load(Yard.EDITION);
    private static final SurfaceId LAWN = new SurfaceId("lawn");

    /** Lawns of every sort that the stage has to master, in metres. */
    enum Shape {
        RECTANGLE(rectangle(at(0, 0), metres(11), metres(8))),
        STRIP(rectangle(at(0, 0), metres(20), metres(2.5))),
        L(polygon(at(0, 0), at(18, 0), at(18, 8), at(10, 8), at(10, 20), at(0, 20))),
        WEDGE(polygon(at(0, 0), at(20, 0), at(16, 9), at(0, 3))),
        CURVED(circle(at(0, 0), metres(8))),
        WITH_A_HOLE(rectangle(at(0, 0), metres(16), metres(12)).without(circle(at(8, 6), metres(2)))),
        TURNED(polygon(at(0, 0), at(10, 6), at(5, 15), at(-5, 9)));

        final Outline outline;

        Shape(Outline outline) {
            this.outline = outline;
        }
    }

    private static Proposal place(Yard yard, String... families) {
        return Placement.run(TABLES.siteOf(yard), parameters(families), Progress.NONE);
    }

    private static PlacementParameters parameters(String... families) {
        return families.length == 0
                ? PlacementParameters.defaults()
                : PlacementParameters.defaults().withFamilies(List.of(families));
    }

    private static CoverageResult coverage(Yard yard) {
        return Coverage.run(TABLES.siteOf(yard), CoverageParameters.defaults(), Progress.NONE);
    }

    private static List<String> rulesBroken(Yard yard) {
        return coverage(yard).findings().stream()
                .map(finding -> finding.rule().id())
                .filter(id -> !id.equals("coverage.intake"))
                .distinct()
                .toList();
    }

    private static Yard metric(Part... parts) {
        return yard("plot").units(METRIC).with(parts);
    }

    /** A gas line right through and an old conduit beside it: heads keep 450 mm and the doubt, and reach all the same. */
    @ParameterizedTest
    @EnumSource(Shape.class)
    @Tag("law")
    void headsKeepOffLinesInTheGround(Shape shape) {
        Yard bare = metric(lawn("lawn", shape.outline));
        Yard lined = bare.with(
                existingService("gas", ExistingService.Kind.GAS, polyline(at(4, -5), at(6, 25)))
                        .doubt(metres(0.2)),
                conduit("old", polyline(at(8, -5), at(8, 25))).existing());
        Yard placed = place(lined, "spray-3_7", "spray-2_4").yard();
        var gas = new Polyline(List.of(new Point(4, -5), new Point(6, 25)));
        for (Head head : placed.water().heads()) {
            assertTrue(gas.nearest(head.at()).distanceM(head.at()) >= 0.65, head.toString());
            assertTrue(Math.abs(head.at().xM() - 8) >= 0.45, head.toString());
        }
        assertEquals(rulesBroken(place(bare, "spray-3_7", "spray-2_4").yard()), rulesBroken(placed));
    }

    /** A nozzle turned down beside the terrace would water too fast to run with the others. */
    @Test
    @Tag("law")
    void headsOfALawnCanRunTogether() {
        Yard yard = metric(
                lawn("lawn", polygon(at(0, 12), at(0, 24), at(13.5, 24), at(13.5, 12))),
                paving("terrace", rectangle(at(0, 9), metres(8), metres(3))),
                pond("pond", circle(at(12, 17), metres(1.5))));
        Proposal placed = place(yard);
        assertEquals(Status.COMPLETE, placed.status());
        Site site = TABLES.siteOf(placed.yard());
        double[] rates = placed.yard().water().heads().stream()
                .mapToDouble(head ->
                        site.catalog().head(head.family()).referenceFlow(head).si()
                                / head.sector().orElseThrow().area().si())
                .sorted()
                .toArray();
        double mostRatio = site.rules().get("zoning.precipitation").limit().si();
        assertTrue(rates[rates.length - 1] <= mostRatio * rates[0], () -> Arrays.toString(rates));
    }

    /** Where nothing else will do, a head may stand on a line: reach counts for more. */
    @Test
    @Tag("law")
    void aHeadMayStandOnALineWhereNothingElseReaches() {
        Yard yard = metric(
                lawn("lawn", rectangle(at(0, 0), metres(3), metres(3))),
                existingService("cable", ExistingService.Kind.POWER, polyline(at(-1, 1.5), at(4, 1.5)))
                        .doubt(metres(3)));
        Proposal placed = place(yard, "spray-3_0");
        assertEquals(Status.COMPLETE, placed.status());
        assertFalse(placed.yard().water().heads().isEmpty());
    }

    /**
     * Source: check values wd-home-zones and wd-home-flow (data chosen there, head-to-head spacing is common practice):
     * 30 ft by 45 ft, radius 15 ft: 4 corner, 6 edge and 2 full heads; 22.18 gpm with nozzles of 0.92, 1.85 and 3.70 gpm.
     */
    @Test
    @Tag("reference")
    void aHomeLawnGetsTheTextbookLayout() {
        Yard placed = placedWithRadius15("home", 30, 45, 3.70);
        for (Head head : placed.water().heads()) {
            assertEquals(0, Math.IEEEremainder(head.at().east().inFeet(), 15), 1e-9);
            assertEquals(0, Math.IEEEremainder(head.at().north().inFeet(), 15), 1e-9);
        }
        int[] bySweep = headsBySweep(placed);
        double gpm = flowGpm(placed);
        assertEquals(
                List.of(4, 6, 2, 12),
                List.of(
                        bySweep[90],
                        bySweep[180],
                        bySweep[360],
                        placed.water().heads().size()));
        assertEquals(22.18, gpm, 0.001 * 22.18);
        // the source rounds a quarter of 3.70 gpm to 0.92, so flow and rate come out 0.1 % less there
        assertEquals(1.581, inchesPerHour(gpm, 30 * 45), 0.002 * 1.581);
        assertEquals(List.of(), rulesBroken(placed));
    }

    /**
     * Source: check value un-60x15 (published: a strip of 60 ft by 15 ft with six half heads of 1.0 gpm and four quarter
     * heads of 0.5 gpm, 8 gpm in all, 0.86 in/h) and un-head-to-head (spacing at most the radius; common practice, no
     * source).
     */
    @Test
    @Tag("reference")
    void aStripGetsSixHalvesAndFourQuarters() {
        Yard placed = placedWithRadius15("strip", 60, 15, 2);
        for (Head head : placed.water().heads()) {
            double nearestFt = placed.water().heads().stream()
                    .filter(other -> !other.equals(head))
                    .mapToDouble(other -> other.at().distance(head.at()).inFeet())
                    .min()
                    .orElseThrow();
            assertEquals(15, nearestFt, 1e-9);
        }
        int[] bySweep = headsBySweep(placed);
        double gpm = flowGpm(placed);
        assertEquals(List.of(4, 6), List.of(bySweep[90], bySweep[180]));
        assertEquals(8, gpm, 1e-9);
        assertEquals(0.86, inchesPerHour(gpm, 60 * 15), 0.006 * 0.86);
        assertEquals(List.of(), rulesBroken(placed));
    }

    /** A lawn in feet with heads of 15 ft and that flow at full circle. */
    private static Yard placedWithRadius15(String name, double eastFt, double northFt, double fullCircleGpm) {
        Yard stated = yard(name)
                .with(
                        lawn("lawn", rectangle(at(0, 0), feet(eastFt), feet(northFt))),
                        sprayFamily("S15")
                                .radius(feet(11), feet(15))
                                .flowAtFullCircle(gpm(fullCircleGpm))
                                .pressure(psi(20), psi(30), psi(70)));
        return place(stated, "S15").yard();
    }

    /** How many heads there are of each sweep in degrees. */
    private static int[] headsBySweep(Yard placed) {
        int[] bySweep = new int[361];
        for (Head head : placed.water().heads()) {
            bySweep[(int) head.sector().orElseThrow().arc().sweep().degrees()]++;
        }
        return bySweep;
    }

    private static double flowGpm(Yard placed) {
        HeadFamily family = TABLES.siteOf(placed).catalog().head("S15");
        return placed.water().heads().stream()
                .mapToDouble(head -> family.referenceFlow(head).inGpm())
                .sum();
    }

    /** One gallon is 231 cubic inches, a square foot 144 square inches. */
    private static double inchesPerHour(double gpm, double squareFeet) {
        return gpm * 231 * 60 / (squareFeet * 144);
    }

    @ParameterizedTest
    @EnumSource
    void eachSpotIsReachedTwice(Shape shape) {
        Proposal proposal = place(metric(lawn("lawn", shape.outline)), "spray-4_6", "spray-3_0", "spray-2_4");
        assertEquals(Status.COMPLETE, proposal.status());
        assertEquals(List.of(), rulesBroken(proposal.yard()));
        Bound bound = proposal.bounds().get(0);
        assertTrue(bound.least().si() <= bound.reached().si() && bound.least().si() > 0);
    }

    /** Walls and paths all around, so that no head may throw past an edge. */
    @ParameterizedTest
    @EnumSource(names = {"RECTANGLE", "L", "WEDGE", "WITH_A_HOLE"})
    void nothingIsThrownOnPaving(Shape shape) {
        Outline around = rectangle(at(-10, -10), metres(45), metres(45)).without(hull(shape));
        Yard yard = metric(lawn("lawn", shape.outline), paving("court", around));
        Proposal proposal = place(yard, "spray-4_6", "spray-3_0", "spray-2_4", "spray-1_5");
        assertFalse(rulesBroken(proposal.yard()).contains("coverage.overspray"));
        assertTrue(coverage(proposal.yard()).surfaces().get(LAWN).reachedByTwo().value() > 0.99);
    }

    private static Outline hull(Shape shape) {
        return polygon(leat.model.geometry.Region.of(shape.outline.in(METRIC).outer()));
    }

    /** A lawn, a path across it and a lot around it, made from a seed. */
    private static Yard random(long seed) {
        var random = new Random(seed);
        Place[] corners = new Place[5 + random.nextInt(8)];
        for (int i = 0; i < corners.length; i++) {
            double angle = 2 * Math.PI * i / corners.length;
            double radius = random.nextDouble(5, 10);
            corners[i] = at(12 + radius * Math.cos(angle), 12 + radius * Math.sin(angle));
        }
        return metric(
                traverse(at(1, 1))
                        .go("N 0° E", metres(22))
                        .go("N 90° E", metres(22))
                        .go("S 0° E", metres(22))
                        .close(),
                lawn("lawn", polygon(corners)),
                bed("herbs", rectangle(at(1.5, 1.5), metres(3), metres(2))).watering(HEADS),
                paving("path", rectangle(at(random.nextDouble(4, 14), 0), metres(1.2), metres(12))));
    }

    @Tag("law")
    @RepeatedTest(15)
    void reachIsFullOrAReasonIsGivenAndNothingIsWasted(RepetitionInfo turn) {
        Proposal proposal = place(random(turn.getCurrentRepetition()), "spray-4_6", "spray-2_4", "spray-1_5");
        CoverageResult coverage = coverage(proposal.yard());
        List<String> broken = rulesBroken(proposal.yard());
        assertFalse(broken.contains("coverage.overspray") || broken.contains("coverage.outside"), broken::toString);
        assertFalse(broken.contains("coverage.lot"));
        boolean full = coverage.surfaces().values().stream()
                .allMatch(surface -> surface.reachedAsWanted().value() == 1);
        assertEquals(full ? Status.COMPLETE : Status.PARTIAL, proposal.status());
        assertEquals(full, proposal.reasons().isEmpty());
        assertTrue(coverage.surfaces().get(LAWN).reachedByTwo().value() > 0.97);
    }

    @Tag("law")
    @RepeatedTest(8)
    void planningAPlanAgainChangesNothing(RepetitionInfo turn) {
        Yard placed = place(random(turn.getCurrentRepetition())).yard();
        assertEquals(placed, place(placed).yard());
        assertEquals(placed, place(random(turn.getCurrentRepetition())).yard());
    }

    @Test
    @Tag("law")
    void givenHeadsComeOutEqualAndTakePart() {
        Yard stated = metric(
                lawn("lawn", Shape.RECTANGLE.outline),
                spray("lawn/2", at(5, 4)).family("spray-4_6").fullCircle().radius(metres(4.6)),
                spray("mine", at(0, 0)).family("spray-3_7").arc(0, 90).radius(metres(3.5)));
        Yard placed = place(stated, "spray-4_6").yard();
        for (Head head : stated.water().heads()) {
            assertEquals(head, placed.water().head(head.id()).orElseThrow());
            assertFalse(placed.isPlanned(head.id(), Aspect.POSITION));
        }
        assertTrue(placed.water().head(new HeadId("lawn/1")).isPresent());
        assertTrue(placed.isPlanned(new HeadId("lawn/3"), Aspect.POSITION));
        assertEquals(List.of(), rulesBroken(placed));
        assertEquals(placed, place(placed, "spray-4_6").yard());
    }

    @Test
    @Tag("law")
    void noHeadIsPlacedOnAGivenOne() {
        Yard placed = place(
                        metric(
                                lawn("lawn", Shape.RECTANGLE.outline),
                                spray("mine", at(0, 0))
                                        .family("spray-2_4")
                                        .arc(0, 90)
                                        .radius(metres(2.4))),
                        "spray-4_6")
                .yard();
        Point mine = placed.water().head(new HeadId("mine")).orElseThrow().at();
        for (Head head : placed.water().heads()) {
            assertTrue(head.id().name().equals("mine") || head.at().distanceM(mine) >= 0.3, head.toString());
        }
    }

    @Test
    @Tag("law")
    void aPinnedHeadStaysWhereItIs() {
        Yard placed = place(metric(lawn("lawn", Shape.L.outline)), "spray-4_6").yard();
        HeadId third = new HeadId("lawn/3");
        Yard again = place(placed.pin(third, Aspect.POSITION), "spray-3_7").yard();
        assertEquals(placed.water().head(third), again.water().head(third));
        assertEquals(List.of(), rulesBroken(again));
    }

    @Test
    void aLawnThatGivenHeadsReachGetsNoMore() {
        Yard placed = place(metric(lawn("lawn", Shape.RECTANGLE.outline)), "spray-4_6")
                .yard();
        Yard given = placed;
        for (Head head : placed.water().heads()) {
            given = given.pin(head.id(), Aspect.POSITION);
        }
        assertEquals(given, place(given, "spray-3_0").yard());
    }

    @Test
    void zonesLoseHeadsThatAreGoneAndKeepTheOthers() {
        Yard placed = place(metric(lawn("lawn", Shape.RECTANGLE.outline)), "spray-2_4")
                .yard();
        List<String> names = new ArrayList<>();
        placed.water().heads().forEach(head -> names.add(head.id().name()));
        Yard zoned = placed.with(
                manifold("m", at(0, 0)).valves("v"), zone("z").valve("v").heads(names.toArray(new String[0])));
        assertEquals(zoned, place(zoned, "spray-2_4").yard());
        Yard fewer = place(zoned, "multi-6_1").yard();
        assertTrue(fewer.water().heads().size() < placed.water().heads().size());
        assertEquals(
                fewer.water().heads().stream().map(Head::id).toList(),
                fewer.water().zones().get(0).heads());
    }

    @Test
    void aReserveOfRadiusHoldsWhenRadiiFallShort() {
        PlacementParameters parameters = parameters("spray-4_6").withReserve(Ratio.percent(10));
        Yard placed = Placement.run(TABLES.siteOf(metric(lawn("lawn", Shape.L.outline))), parameters, Progress.NONE)
                .yard();
        var working = new TreeMap<HeadId, WorkingHead>();
        for (Head head : placed.water().heads()) {
            working.put(
                    head.id(),
                    new WorkingHead(head.sector().orElseThrow().radius().times(0.9), Flow.litresPerMinute(5)));
        }
        CoverageResult coverage = Coverage.run(
                TABLES.siteOf(placed), CoverageParameters.defaults().withWorking(working), Progress.NONE);
        assertEquals(1, coverage.surfaces().get(LAWN).reachedByTwo().value());
    }

    @Test
    void largeLawnsGetFarThrowingHeads() {
        Proposal proposal = place(metric(lawn("lawn", rectangle(at(0, 0), metres(30), metres(24)))));
        assertEquals(List.of(), rulesBroken(proposal.yard()));
        assertTrue(proposal.yard().water().heads().size() <= 24);
    }

    @Test
    void stoppedProposalsSaySo() {
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
        Yard yard = metric(lawn("lawn", Shape.L.outline));
        Proposal proposal = Placement.run(TABLES.siteOf(yard), parameters(), stop);
        assertEquals(Status.STOPPED, proposal.status());
        assertEquals(yard, proposal.yard());
    }

    @Test
    void onlyRotorsAndSpraysCanBePlaced() {
        Yard yard = metric(lawn("lawn", Shape.L.outline));
        assertThrows(InvalidValueException.class, () -> place(yard, "bubbler-0_5"));
        assertThrows(InvalidValueException.class, () -> place(yard, "no such family"));
    }
}
