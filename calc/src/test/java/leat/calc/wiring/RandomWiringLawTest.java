package leat.calc.wiring;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.US;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bed;
import static leat.model.plan.Parts.circle;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.feed;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.noDig;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.watts;
import static leat.model.plan.Parts.yard;
import static leat.model.site.Phase.LATER;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.model.finding.Severity;
import leat.model.finding.Status;
import leat.model.plan.Part;
import leat.model.plan.Place;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.power.WiringMethod;
import leat.model.quantity.Current;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;

/** Whatever the yard: planning comes to an end, changes nothing the second time, and breaks no rule that it plans by. */
@Tag("law")
class RandomWiringLawTest {

    @RepeatedTest(25)
    void aPlanIsInOrderAndStays(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        boolean metric = random.nextBoolean();
        Site site = WiredYard.siteOf(yard("Plot")
                .units(METRIC)
                .with(parts(random).toArray(Part[]::new))
                .units(metric ? METRIC : US));
        WiringParameters parameters = WiringParameters.defaults()
                .withMethod(random.nextBoolean() ? WiringMethod.IN_CONDUIT : WiringMethod.BURIED_CABLE)
                .withValveWires(random.nextBoolean() ? WiringMethod.IN_CONDUIT : WiringMethod.BURIED_CABLE);
        Proposal once = Wiring.run(site, parameters, Progress.NONE);
        Site wired = site.with(once.yard());
        assertEquals(once.yard(), Wiring.run(wired, parameters, Progress.NONE).yard());
        assertGivenStays(site.yard(), once.yard());
        if (once.status() == Status.COMPLETE) {
            assertEquals(List.of(), breaches(wired));
        }
    }

    private static List<Part> parts(Random random) {
        List<Part> parts = new ArrayList<>(List.of(
                structure("house", rectangle(at(0, 0), metres(10), metres(8))),
                structure("shed", rectangle(at(22, 4), metres(4), metres(3))).phase(LATER),
                paving("court", rectangle(at(10, 0), metres(5), metres(8))),
                bed("roses", rectangle(at(4, 12), metres(8), metres(3))),
                noDig("well", circle(at(16, 14), metres(1.5))),
                panel("main", at(1 + 8 * random.nextDouble(), 1 + 6 * random.nextDouble()))
                        .spareWays(9)
                        .inside("house"),
                circuit("old").from("main").breaker(new Current(20)).groundFault(),
                conduit("duct", polyline(at(10, 4), at(22, 5))).existing(),
                feed("shed").draws(watts(500 + 3_000 * random.nextDouble())).conduitNow()));
        for (int i = 0; i < random.nextInt(5); i++) {
            var one = outlet("post " + i, place(random));
            parts.add(random.nextInt(3) == 0 ? one.on("old") : one);
        }
        var lights = luminaires("path", place(random), place(random), place(random)).draws(watts(20));
        parts.add(random.nextBoolean() ? lights.switchAt(at(9.9, 7)).wiresNow() : lights.phase(LATER));
        if (random.nextBoolean()) {
            parts.add(controller("clock").inside(random.nextBoolean() ? "house" : "shed").stations(9));
            parts.add(manifold("box 1", place(random)).valves("V1", "V2"));
            parts.add(manifold("box 2", place(random)).valves("V3"));
        }
        return parts;
    }

    private static Place place(Random random) {
        return at(12 + 18 * random.nextDouble(), 9 + 12 * random.nextDouble());
    }

    private static void assertGivenStays(Yard before, Yard after) {
        before.power().conduits().forEach(one -> assertEquals(one, after.power().conduit(one.id()).orElseThrow()));
        before.power().circuits().forEach(one -> assertEquals(one, after.power().circuit(one.id()).orElseThrow()));
        assertEquals(before.water(), after.water());
        assertEquals(before.terrain(), after.terrain());
    }

    /** Outlets that were put on a stated circuit may be too much for it: that is not of the plan's making. */
    private static List<String> breaches(Site site) {
        Predicate<String> isStated = text -> text.startsWith("power.load: circuit old");
        return WiringReview.run(site, WiringReviewParameters.defaults(), Progress.NONE).findings().stream()
                .filter(finding -> finding.severity() == Severity.BREACH)
                .map(finding -> finding.rule().id() + ": " + finding.subject())
                .filter(isStated.negate())
                .toList();
    }
}
