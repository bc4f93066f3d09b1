package leat.examples;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Planner;
import leat.calc.assess.PlannerParameters;
import leat.calc.hydraulics.PipeLoad;
import leat.document.StandingData;
import leat.document.YardDocument;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.plan.Yard;
import leat.model.power.WireGroup;
import leat.model.quantity.Pressure;
import leat.model.quantity.Ratio;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import leat.model.water.Head;
import leat.model.water.PipeRun;
import leat.model.water.Water;
import leat.model.water.WaterSystem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Mill Croft, the metric yard, as it is planned, and damaged in one place at a time. */
class MillCroftTest {

    private static Example croft;

    @BeforeAll
    static void run() {
        croft = Example.run("mill-croft/mill-croft.js");
    }

    @Tag("law")
    @Test
    void nothingIsBreached() {
        assertTrue(
                !croft.assessment().hasBreach(),
                () -> croft.assessment().findings().toString());
    }

    /** Figures of our own, looked at once by a person beside the drawing. */
    @Tag("pinned")
    @Test
    void theFiguresOfThePlan() {
        WaterSystem water = croft.yard().water();
        assertEquals(33, water.heads().size());
        List<String> flows = croft.assessment().hydraulics().zones().values().stream()
                .map(zone -> Units.show(zone.flow(), UnitSystem.METRIC))
                .toList();
        assertEquals(List.of("3.4 L/min", "21.3 L/min", "29.9 L/min"), flows);
        assertEquals(2, water.bibs().size());
        assertEquals("121.72 m", Units.show(croft.assessment().trenching().trenches(), UnitSystem.METRIC));
    }

    @Tag("law")
    @Test
    void eachLawnIsReachedByTwoAndNothingElseIsThrownOn() {
        croft.yard()
                .terrain()
                .lawns()
                .forEach(lawn -> assertEquals(
                        Ratio.of(1),
                        croft.assessment().coverage().surfaces().get(lawn.id()).reachedByTwo()));
        assertTrue(croft.assessment().coverage().wasted().isEmpty());
    }

    @Tag("law")
    @Test
    void noPipeCarriesDrinkingWater() {
        croft.assessment().supply().water().forEach((pipe, water) -> assertEquals(Water.NON_DRINKING, water));
    }

    /**
     * What a person reads of a metric yard has no feet, gallons or pounds in it; the scale bar shows both. Inches only name
     * the threads of valves, as ISO 7-1 does.
     */
    @Tag("law")
    @Test
    void nothingIsShownInUsUnits() {
        Pattern us = Pattern.compile("[0-9,](?: |&#160;| )(?:ft|gpm|psi|gal|mi)\\b");
        croft.outcome().files().forEach((name, bytes) -> {
            if (!name.endsWith(".svg") && !name.endsWith(".html")) {
                Matcher found = us.matcher(new String(bytes, StandardCharsets.UTF_8));
                assertTrue(!found.find(), () -> name + ": " + found.group());
            }
        });
        croft.printed().forEach(line -> assertTrue(!us.matcher(line).find(), line));
    }

    @Tag("law")
    @Test
    void javaMakesTheSameYardAsJavaScript() {
        Example java = Example.run("mill-croft/mill-croft.jsh");
        assertEquals(YardDocument.write(croft.yard()), YardDocument.write(java.yard()));
        assertEquals(croft.outcome().files().keySet(), java.outcome().files().keySet());
        croft.outcome()
                .files()
                .forEach((name, bytes) ->
                        assertArrayEquals(bytes, java.outcome().files().get(name), name));
    }

    @Tag("law")
    @Test
    void planningThePlanChangesNothing() {
        PlannerParameters same = PlannerParameters.defaults().withHeads(List.of("multi-4_9", "multi-3_7"));
        Yard again = Planner.run(StandingData.load(Yard.EDITION).siteOf(croft.yard()), same, Progress.NONE)
                .yard();
        assertEquals(YardDocument.write(croft.yard()), YardDocument.write(again));
    }

    @Tag("law")
    @Test
    void theDocumentGivesTheYardBack() {
        String text = YardDocument.write(croft.yard());
        assertEquals(croft.yard(), YardDocument.read(text, "mill-croft.yard.json"));
    }

    @Tag("law")
    @Test
    void theSameScriptGivesTheSameBytes() {
        Example again = Example.run("mill-croft/mill-croft.js");
        assertEquals(croft.outcome().files().keySet(), again.outcome().files().keySet());
        croft.outcome()
                .files()
                .forEach((name, bytes) ->
                        assertArrayEquals(bytes, again.outcome().files().get(name), name));
        assertEquals(croft.printed(), again.printed());
    }

    // Damage

    @Tag("law")
    @Test
    void aHeadThatIsMissingLeavesItsLawnBare() {
        Set<String> found = croft.newFindings(Damage.without(croft.yard(), new HeadId("side lawn/1")));
        assertEquals(Set.of("coverage.two: surface side lawn"), found);
    }

    @Tag("law")
    @Test
    void aPumpHalfAsStrongStarvesHeads() {
        Yard weak = Damage.halfThePressure(croft.yard());
        Set<String> expected = new TreeSet<>(Set.of(
                "coverage.two: surface front lawn",
                "coverage.two: surface long lawn",
                "coverage.two: surface side lawn"));
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
        assertEquals(expected, croft.newFindings(weak));
    }

    @Tag("law")
    @Test
    void aPipeTooThinIsFound() {
        PipeRun busy = busiestLateral();
        Set<String> expected = new TreeSet<>(Set.of("hydraulics.velocity: pipe " + busy.id()));
        croft.yard()
                .water()
                .pipes()
                .filter(run -> run.from().equals(busy.id()))
                .filter(run -> !run.size().equals(Optional.of("DN/OD 20")))
                .forEach(run -> expected.add("pipe.grows: pipe " + run.id() + ", size"));
        assertEquals(expected, croft.newFindings(Damage.resized(croft.yard(), busy, "DN/OD 20")));
    }

    @Tag("law")
    @Test
    void damageToThePowerIsFound() {
        Yard yard = croft.yard();
        assertEquals(
                Set.of("power.ampacity: cable house to rain pump, conductor"),
                croft.newFindings(PowerDamage.rewired(yard, "house to rain pump", "1")));
        assertEquals(
                Set.of("power.iec.fill: conduit house to rain pump"),
                croft.newFindings(PowerDamage.filled(yard, "house to rain pump", new WireGroup("70", 3))));
        assertEquals(
                Set.of(
                        "power.iec.mixed: conduit court to garden 2",
                        "power.touch: cable garden to tank wall, conduits"),
                croft.newFindings(PowerDamage.valveWiresThrough(yard, "court to garden 2")));
        assertEquals(
                Set.of("phase.order: controller garden"),
                croft.newFindings(PowerDamage.controllersIn(yard, "greenhouse")));
    }

    @Tag("law")
    @Test
    void aPriceThatRisesRaisesTheTotalByWhatIsBought() {
        PowerDamage.assertRisesWithThePriceOfSwingJoints(croft, 1.20 * 1.10);
    }

    // Explanations

    /** Each figure of the plan and of the half starved one is asked; the last line is the figure to the last bit. */
    @Tag("law")
    @Test
    void everyFigureIsExplained() {
        assertTrue(ExplainedFigures.check(croft.assessment()) > 1_500);
        ExplainedFigures.check(Example.assess(Damage.halfThePressure(croft.yard())));
    }

    @Tag("law")
    @Test
    void whatIsExplainedFollowsTheWater() {
        Assessment weak = Example.assess(Damage.halfThePressure(croft.yard()));
        ExplainedFigures.differ(
                croft.assessment(),
                weak,
                List.of(
                        "long lawn/1: pressure",
                        "long lawn/1: flow",
                        "hose bib court: pressure",
                        "zone-2: flow",
                        "main: flow",
                        "main: velocity",
                        "main: loss",
                        "long lawn: reached",
                        "long lawn: rate",
                        "long lawn: low quarter",
                        "long lawn: christiansen",
                        "zone-2: gross July",
                        "zone-2: minutes July",
                        "zone-2: cycle July",
                        "zone-2: volume July",
                        "watering: minutes July",
                        "watering: volume July",
                        "watering: volume year",
                        "watering: volume peak",
                        "watering: hours peak"));
    }

    @Tag("law")
    @Test
    void whatIsExplainedFollowsTheWeather() {
        ExplainedFigures.differ(
                croft.assessment(),
                Example.assess(Damage.drierAndHotter(croft.yard())),
                List.of(
                        "zone-2: use July",
                        "zone-2: held July",
                        "zone-2: rain July",
                        "zone-2: net July",
                        "zone-2: interval July",
                        "zone-2: gross July"));
    }

    @Tag("law")
    @Test
    void whatIsExplainedFollowsTheTrenches() {
        String thing = croft.yard().trenches().get(2).contents().get(0).name();
        ExplainedFigures.differ(
                croft.assessment(),
                Example.assess(Damage.dugDeeper(croft.yard())),
                List.of(
                        "trench-3: depth",
                        "trench-3: cover " + thing,
                        "trench-3: volume",
                        "trench-3: loose",
                        "trench-3: backfill",
                        "digging: volume",
                        "digging: loose",
                        "digging: backfill",
                        "digging: left over",
                        "digging: saved volume"));
    }

    @Tag("law")
    @Test
    void whatIsExplainedFollowsThePower() {
        ExplainedFigures.differ(
                croft.assessment(),
                Example.assess(PowerDamage.rewired(croft.yard(), "house to court", "4")),
                List.of(
                        "cable house to court: drop",
                        "cable house to court: ampacity",
                        "cable house to court: conductor",
                        "circuit garden: drop",
                        "greenhouse: drop"));
        ExplainedFigures.differ(
                croft.assessment(),
                Example.assess(PowerDamage.thirstierControllers(croft.yard())),
                List.of(
                        "controller garden: current",
                        "circuit garden: load",
                        "circuit garden: current",
                        "circuit garden: reckoned",
                        "cable house to court: current"));
        ExplainedFigures.differ(
                croft.assessment(),
                Example.assess(PowerDamage.filled(croft.yard(), "house to rain pump", new WireGroup("4", 3))),
                List.of("conduit house to rain pump: fill"));
    }

    @Tag("law")
    @Test
    void whatIsExplainedFollowsPricesAndPlaces() {
        ExplainedFigures.differ(
                croft.assessment(),
                Example.assess(PowerDamage.priced(croft.yard(), "swing joint", "99.00")),
                List.of(
                        "budget: swing joint",
                        "budget: goods",
                        "budget: tax",
                        "budget: contingency",
                        "budget: total",
                        "budget: total now"));
        HeadId corner = new HeadId("side lawn/1");
        Point at = croft.yard().water().head(corner).orElseThrow().at();
        Point beside = new Point(at.xM() + 0.3, at.yM() + 0.2);
        ExplainedFigures.differ(
                croft.assessment(),
                Example.assess(Damage.moved(croft.yard(), corner, beside)),
                List.of("side lawn/1: first tape", "side lawn/1: second tape", "side lawn/1: crossing"));
        ExplainedFigures.differ(
                croft.assessment(),
                Example.assess(Damage.without(croft.yard(), corner)),
                List.of("materials: swing joint"));
    }

    private static PipeRun busiestLateral() {
        List<PipeRun> laterals = croft.yard().water().laterals().stream()
                .flatMap(lateral -> lateral.runs().stream())
                .toList();
        SortedMap<PipeId, PipeLoad> loads = new TreeMap<>();
        croft.assessment().hydraulics().zones().values().forEach(zone -> loads.putAll(zone.pipes()));
        return laterals.stream()
                .max(Comparator.comparing(run -> loads.get(run.id()).flow()))
                .orElseThrow();
    }
}
