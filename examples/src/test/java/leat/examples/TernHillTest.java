package leat.examples;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Planner;
import leat.calc.assess.PlannerParameters;
import leat.document.StandingData;
import leat.document.YardDocument;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.ZoneId;
import leat.model.plan.Yard;
import leat.model.power.WireGroup;
import leat.model.quantity.Pressure;
import leat.model.quantity.Ratio;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import leat.model.water.Head;
import leat.model.water.Lateral;
import leat.model.water.PipeRun;
import leat.model.water.Water;
import leat.model.water.WaterSystem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Tern Hill as it is planned, and damaged in one place at a time. */
class TernHillTest {

    private static Example hill;

    @BeforeAll
    static void run() {
        hill = Example.run("tern-hill/tern-hill.js");
    }

    @Tag("law")
    @Test
    void nothingIsBreached() {
        assertTrue(
                !hill.assessment().hasBreach(),
                () -> hill.assessment().findings().toString());
    }

    /** Each figure of the plan is asked; the last line is the figure to the last bit. */
    @Tag("law")
    @Test
    void everyFigureIsExplained() {
        assertTrue(ExplainedFigures.check(hill.assessment()) > 2_500);
    }

    @Tag("pinned")
    @Test
    void theSizeOfThePlan() {
        WaterSystem water = hill.yard().water();
        assertEquals(37, water.heads().size());
        assertEquals(7, water.zones().size());
        assertEquals(
                2,
                water.manifolds().get(0).valves().stream()
                        .filter(valve -> valve.spare())
                        .count());
        assertEquals(4, water.bibs().size());
        assertEquals(
                "side run",
                water.bibs().stream()
                        .filter(bib -> bib.id().name().equals("south wall"))
                        .findFirst()
                        .flatMap(bib -> bib.on())
                        .map(PipeId::name)
                        .orElse(""));
        assertTrue(water.pipe(new PipeId("side run")).orElseThrow().existing());
    }

    /** Figures of our own, looked at once by a person beside the drawing. */
    @Tag("pinned")
    @Test
    void theFiguresOfThePlan() {
        List<String> flows = hill.assessment().hydraulics().zones().values().stream()
                .map(zone -> Units.show(zone.flow(), UnitSystem.US))
                .toList();
        assertEquals(
                List.of("2.00 gpm", "7.06 gpm", "8.07 gpm", "1.06 gpm", "7.42 gpm", "0.93 gpm", "9.90 gpm"), flows);
        assertEquals("719.2 ft", Units.show(hill.assessment().trenching().trenches(), UnitSystem.US));
    }

    @Tag("law")
    @Test
    void eachLawnIsReachedByTwoAndNothingElseIsThrownOn() {
        hill.yard()
                .terrain()
                .lawns()
                .forEach(lawn -> assertEquals(
                        Ratio.of(1),
                        hill.assessment().coverage().surfaces().get(lawn.id()).reachedByTwo()));
        assertTrue(hill.assessment().coverage().wasted().isEmpty());
    }

    @Tag("law")
    @Test
    void headsHangOnIrrigationWaterAndTheWallBibOnDrinkingWater() {
        WaterSystem water = hill.yard().water();
        for (Lateral lateral : water.laterals()) {
            lateral.runs().forEach(run -> assertEquals(Water.IRRIGATION, water.waterIn(run.id())));
        }
        assertEquals(Water.DRINKING, water.waterIn(new PipeId("side run")));
    }

    @Tag("law")
    @Test
    void planningThePlanChangesNothing() {
        PlannerParameters same = PlannerParameters.defaults()
                .withHeads(List.of("multi-4_9", "multi-6_1", "spray-3_7"))
                .withMostHeads(8);
        Yard again = Planner.run(StandingData.load(Yard.EDITION).siteOf(hill.yard()), same, Progress.NONE)
                .yard();
        assertEquals(YardDocument.write(hill.yard()), YardDocument.write(again));
    }

    @Tag("law")
    @Test
    void theDocumentGivesTheYardBack() {
        String text = YardDocument.write(hill.yard());
        assertEquals(hill.yard(), YardDocument.read(text, "tern-hill.yard.json"));
    }

    @Tag("law")
    @Test
    void theSameScriptGivesTheSameBytes() {
        Example again = Example.run("tern-hill/tern-hill.js");
        assertEquals(hill.outcome().files().keySet(), again.outcome().files().keySet());
        hill.outcome()
                .files()
                .forEach((name, bytes) ->
                        assertArrayEquals(bytes, again.outcome().files().get(name), name));
        assertEquals(hill.printed(), again.printed());
    }

    /** The picture in the README is the plan that the example draws; copy it anew when the plan changes on purpose. */
    @Tag("pinned")
    @Test
    void thePictureInTheReadmeIsThePlan() throws IOException {
        Path picture = Example.folder().resolve("../docs/images/tern-hill.svg");
        assertArrayEquals(Files.readAllBytes(picture), hill.outcome().files().get("plan.svg"));
    }

    // Damage

    @Tag("law")
    @Test
    void aHeadThatIsMissingLeavesItsLawnBare() {
        Set<String> found = hill.newFindings(Damage.without(hill.yard(), new HeadId("back lawn/1")));
        assertEquals(Set.of("coverage.two: surface back lawn"), found);
    }

    @Tag("law")
    @Test
    void halfThePressureStarvesHeads() {
        Yard weak = Damage.halfThePressure(hill.yard());
        // Less flow also takes longer than the hours of the peak week.
        Set<String> expected = new TreeSet<>(Set.of(
                "coverage.one: surface kitchen bed",
                "coverage.two: surface back lawn",
                "coverage.two: surface meadow",
                "watering.hours: the yard"));
        Assessment assessment = Example.assess(weak);
        for (Head head : weak.water().heads()) {
            Pressure least =
                    assessment.site().catalog().head(head.family()).pressure().least();
            Pressure got = assessment.hydraulics().head(head.id()).orElseThrow().pressure();
            if (got.compareTo(least) < 0) {
                expected.add("hydraulics.pressure.least: head " + head.id().name() + ", pressure");
            }
        }
        assertTrue(expected.size() > 20, () -> expected.toString());
        assertEquals(expected, hill.newFindings(weak));
    }

    @Tag("law")
    @Test
    void aPipeThatGrowsIsFound() {
        Lateral lateral = hill.yard().water().lateral(new ZoneId("zone-1")).orElseThrow();
        PipeRun last = lateral.runs().get(lateral.runs().size() - 1);
        Set<String> found = hill.newFindings(Damage.resized(hill.yard(), last, "2 in"));
        assertEquals(Set.of("pipe.grows: pipe " + last.id().name() + ", size"), found);
    }

    @Tag("law")
    @Test
    void aHeadMovedOffTheLotIsFound() {
        HeadId corner = new HeadId("meadow/1");
        Set<String> found = hill.newFindings(Damage.moved(hill.yard(), corner, new Point(-5, 1.2)));
        assertEquals(
                Set.of(
                        "coverage.lot: head meadow/1, at",
                        "coverage.outside: head meadow/1",
                        "coverage.two: surface meadow",
                        "water.connected: head meadow/1"),
                found);
    }

    @Tag("law")
    @Test
    void aWireTooThinForItsBreakerIsFound() {
        assertEquals(
                Set.of("power.breaker: cable house to workshop, conductor"),
                hill.newFindings(PowerDamage.rewired(hill.yard(), "house to workshop", "14")));
        assertEquals(
                Set.of("power.drop.feeder: structure feed summer house, drop"),
                hill.newFindings(PowerDamage.rewired(hill.yard(), "house to summer house", "12")));
        assertEquals(
                Set.of("power.ampacity: cable house to workshop, conductor"),
                hill.newFindings(PowerDamage.rewired(hill.yard(), "house to workshop", "18")),
                "a wire that the tables allow no current at all");
    }

    @Tag("law")
    @Test
    void aDuctTooFullIsFound() {
        assertEquals(
                Set.of("power.fill.more: conduit old duct"),
                hill.newFindings(PowerDamage.filled(hill.yard(), "old duct", new WireGroup("4", 4))));
    }

    /** The duct is nowhere near the way of the valve wires either. */
    @Tag("law")
    @Test
    void powerAndValveWiresInOneConduitAreFound() {
        assertEquals(
                Set.of("power.mixed: conduit old duct", "power.touch: cable garden to back wall, conduits"),
                hill.newFindings(PowerDamage.valveWiresThrough(hill.yard(), "old duct")));
    }

    @Tag("law")
    @Test
    void aControllerInWhatComesLaterIsFound() {
        assertEquals(
                Set.of("phase.order: controller garden"),
                hill.newFindings(PowerDamage.controllersIn(hill.yard(), "summer house")));
    }

    @Tag("law")
    @Test
    void aPriceThatRisesRaisesTheTotalByWhatIsBought() {
        PowerDamage.assertRisesWithThePriceOfSwingJoints(hill, 1.07 * 1.10);
    }
}
