package leat.calc.workplan;

import static leat.model.plan.Parts.LATER;
import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.amps;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.cable;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.existingService;
import static leat.model.plan.Parts.kilopascals;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.valveWires;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.calc.digging.Digging;
import leat.calc.digging.DiggingParameters;
import leat.calc.phasing.Phasing;
import leat.calc.phasing.PhasingParameters;
import leat.document.StandingData;
import leat.model.id.Id;
import leat.model.plan.Part;
import leat.model.plan.Path;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.site.ExistingService;
import leat.model.site.Phase;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A street, a main with a duct beneath it, a manifold with two zones of which one comes later, an outlet and a clock. */
@Tag("law")
class WorkPlanTest {

    private static final String SERIES = "PE100 SDR 11 (PN 16)";

    private static Part[] parts(Part... more) {
        Path first = polyline(at(0, 0), at(10, 0));
        Path second = polyline(at(10, 0), at(16, 0));
        List<Part> parts = new ArrayList<>(List.of(
                structure("shed", rectangle(at(20, 2), metres(3), metres(3))),
                paving("path", rectangle(at(4, -3), metres(2), metres(6))),
                existingService("gas", ExistingService.Kind.GAS, polyline(at(13, -5), at(13, 5))),
                mains("street", at(0, 0)).staticPressure(kilopascals(400)),
                pipe("main", first).from("street").series(SERIES).size("DN/OD 32"),
                backflow("garden").on("main").device("bfp-rp-1").height(metres(0.6)),
                manifold("box", at(10, 0)).on("main").valves("V1", "V2"),
                spray("S1", at(16, 0)).family("spray-4_6").arc(0, 90).radius(metres(4)),
                spray("S2", at(19, 0)).family("spray-4_6").arc(0, 90).radius(metres(4)),
                zone("Z1").valve("V1").heads("S1"),
                zone("Z2").valve("V2").heads("S2").phase(LATER),
                pipe("L1", second).from("V1").to("S1").series(SERIES).size("DN/OD 32"),
                pipe("L2", polyline(at(10, 0), at(19, 0)))
                        .from("V2")
                        .to("S2")
                        .series(SERIES)
                        .size("DN/OD 32")
                        .phase(LATER),
                panel("house", at(0, 1)).spareWays(2),
                circuit("yard").from("house").breaker(amps(16)),
                conduit("duct", first),
                outlet("court", at(10, 1)).on("yard"),
                controller("clock").inside("shed").on("yard"),
                cable("W1", first).circuit("yard").from("house").to("court").through("duct"),
                valveWires("W3", polyline(at(20, 2), at(16, 0), at(10, 0)))
                        .from("clock")
                        .to("box")
                        .strands(4),
                trench("T1", first).depth(metres(0.95)).holds("main").holdsConduits("duct"),
                trench("T2", second)
                        .depth(metres(0.35))
                        .holds("L1")
                        .holdsCables("W3")
                        .byHand(),
                trench("T3", polyline(at(16, 0), at(19, 0)))
                        .depth(metres(0.35))
                        .holds("L2")
                        .phase(LATER)));
        parts.addAll(List.of(more));
        return parts.toArray(Part[]::new);
    }

    private static WorkPlanResult run(Part... more) {
        Site site = StandingData.load(Yard.EDITION)
                .siteOf(yard("Plot").units(METRIC).with(parts(more)));
        var digging = Digging.run(site, DiggingParameters.defaults(), Progress.NONE);
        var phasing = Phasing.run(site, PhasingParameters.defaults(), Progress.NONE);
        return WorkPlan.run(site, WorkPlanParameters.of(digging, phasing), Progress.NONE);
    }

    private static int number(List<WorkStep> steps, WorkKind kind, String thing) {
        return steps.stream()
                .filter(step -> step.kind() == kind)
                .filter(step -> step.subjects().stream().map(Id::name).anyMatch(thing::equals))
                .mapToInt(step -> (int) step.number().value())
                .findFirst()
                .orElseThrow(() -> new AssertionError(kind + " of " + thing + " is missing in " + steps));
    }

    private static void assertInOrder(List<WorkStep> steps, Object... kindsAndThings) {
        int before = 0;
        for (int i = 0; i < kindsAndThings.length; i += 2) {
            int here = number(steps, (WorkKind) kindsAndThings[i], (String) kindsAndThings[i + 1]);
            assertTrue(here > before, kindsAndThings[i] + " of " + kindsAndThings[i + 1] + " comes too early");
            before = here;
        }
    }

    @Test
    void waterIsTestedWhileItIsOpen() {
        List<WorkStep> steps = run().steps(Phase.NOW);
        assertInOrder(
                steps,
                WorkKind.STAKE,
                "T1",
                WorkKind.NOTICE,
                "gas",
                WorkKind.FIND,
                "gas",
                WorkKind.DIG_MAIN,
                "T1",
                WorkKind.LAY_MAIN,
                "main",
                WorkKind.VALVES,
                "box",
                WorkKind.TEST_MAIN,
                "main",
                WorkKind.RECORD,
                "T1",
                WorkKind.BACKFILL,
                "T1",
                WorkKind.RESTORE,
                "T1");
        assertInOrder(
                steps,
                WorkKind.TEST_MAIN,
                "main",
                WorkKind.FLUSH,
                "L1",
                WorkKind.BACKFILL,
                "T2",
                WorkKind.HEADS,
                "S1",
                WorkKind.TUNE,
                "Z1");
    }

    /** The duct lies below the main, 0.3 m apart: it is seen and covered before the main is laid. */
    @Test
    void theDeepestIsLaidFirstAndPowerIsSeenBeforeItIsCovered() {
        List<WorkStep> steps = run().steps(Phase.NOW);
        assertInOrder(
                steps,
                WorkKind.OPEN,
                "T1",
                WorkKind.DIG_MAIN,
                "T1",
                WorkKind.BED,
                "T1",
                WorkKind.LAY_POWER,
                "duct",
                WorkKind.INSPECT,
                "duct",
                WorkKind.COVER,
                "T1",
                WorkKind.LAY_MAIN,
                "main",
                WorkKind.BACKFILL,
                "T1",
                WorkKind.PULL,
                "W1",
                WorkKind.CONNECT_POWER,
                "yard",
                WorkKind.TUNE,
                "Z1");
        assertEquals(Worker.INSPECTOR, WorkKind.INSPECT.worker());
        assertTrue(WorkKind.CONNECT_POWER.isForOthers());
    }

    @Test
    void whatComesLaterHasStepsOfItsOwnAndEndsPluggedUntilThen() {
        WorkPlanResult result = run();
        List<WorkStep> now = result.steps(Phase.NOW);
        assertInOrder(now, WorkKind.VALVES, "V2", WorkKind.END, "V2");
        assertTrue(now.stream().noneMatch(step -> step.subjects().toString().contains("L2")));
        List<WorkStep> later = result.steps(Phase.LATER);
        assertInOrder(
                later,
                WorkKind.STAKE,
                "T3",
                WorkKind.DIG,
                "T3",
                WorkKind.LAY_LATERAL,
                "L2",
                WorkKind.FLUSH,
                "L2",
                WorkKind.HEADS,
                "S2");
        assertTrue(later.stream().noneMatch(step -> step.subjects().toString().contains("L1")));
    }

    @Test
    void stepsNameWhatTheyWaitForAndItsFigure() {
        List<WorkStep> steps = run().steps(Phase.NOW);
        for (WorkStep step : steps) {
            assertTrue(
                    step.after().stream()
                            .allMatch(one -> one.value() < step.number().value()),
                    step.toString());
        }
        WorkStep dig = steps.get(number(steps, WorkKind.DIG_MAIN, "T1") - 1);
        assertEquals(10, ((Length) dig.figure().orElseThrow()).metres(), 1e-9);
        WorkStep notice = steps.get(number(steps, WorkKind.NOTICE, "gas") - 1);
        assertEquals(Count.of(3), notice.figure().orElseThrow());
        assertEquals(List.of(Count.of(number(steps, WorkKind.STAKE, "T1"))), notice.after());
    }
}
