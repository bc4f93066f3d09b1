package leat.calc.wiring;

import static leat.model.plan.Parts.US;
import static leat.model.plan.Parts.amps;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.cable;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.calc.Progress;
import leat.calc.assess.Planner;
import leat.calc.assess.PlannerParameters;
import leat.calc.phasing.Phasing;
import leat.calc.phasing.PhasingParameters;
import leat.model.fault.InvalidValueException;
import leat.model.id.ConduitId;
import leat.model.id.PipeId;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.power.PowerSystem;
import leat.model.site.Phase;
import leat.model.site.Surface;
import leat.model.site.Terrain;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Wires with pipes and with each other: what they share, and what must not change. */
class WiringTogetherTest {

    private static Site watered() {
        List<Part> parts = new ArrayList<>(List.of(
                mains("street", at(95, 2)).staticPressure(psi(65)).flowTest(gpm(18), psi(50)),
                bib("terrace", at(62, 55)).draws(gpm(5)),
                lawn("back", rectangle(at(10, 85), feet(40), feet(15)))));
        for (int i = 0; i < 4; i++) {
            parts.add(spray("S" + (i + 1), at(12 + 11 * i, i % 2 == 0 ? 86 : 99))
                    .family("spray-3_7")
                    .arc(i % 2 == 0 ? 270 : 90, 180)
                    .radius(feet(12)));
        }
        return WiredYard.site(parts.toArray(Part[]::new));
    }

    private static Yard planned(Site site) {
        return Planner.run(site, PlannerParameters.defaults(), Progress.NONE).yard();
    }

    @Test
    @Tag("law")
    void planningPipesAndWiresAgainChangesNothing() {
        Site site = watered();
        Yard once = planned(site);
        assertTrue(once.trenches().stream().anyMatch(trench -> isShared(trench.contents())), "pipes and wires share");
        assertEquals(once, planned(site.with(once)));
    }

    private static boolean isShared(List<?> contents) {
        return contents.stream().anyMatch(PipeId.class::isInstance)
                && contents.stream().anyMatch(ConduitId.class::isInstance);
    }

    @Test
    @Tag("law")
    void wiresMoveNoPipe() {
        Site site = watered();
        Yard both = planned(site);
        Yard dry = planned(site.with(site.yard().withPower(PowerSystem.EMPTY)));
        assertEquals(dry.water(), both.water());
    }

    @Test
    @Tag("law")
    void everyConduitLiesInTrenchesAllAlong() {
        Yard yard = planned(watered());
        yard.power().conduits().stream().filter(one -> !one.existing()).forEach(conduit -> {
            double trenchedM = yard.trenches().stream()
                    .filter(trench -> trench.contents().contains(conduit.id()))
                    .mapToDouble(trench -> trench.route().lengthM())
                    .sum();
            // Corners within 14 mm of each other become one.
            assertEquals(conduit.route().lengthM(), trenchedM, 0.1, conduit.id().name());
        });
    }

    @RepeatedTest(12)
    @Tag("law")
    void togetherNoMoreIsDugThanApart(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        List<Part> outlets = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            outlets.add(outlet("post " + (i + 1), at(55 + 40 * random.nextDouble(), 40 + 50 * random.nextDouble())));
        }
        double apartM = 0;
        for (Part one : outlets) {
            apartM += dugM(bare(one));
        }
        assertTrue(dugM(bare(outlets.toArray(Part[]::new))) <= apartM + 0.05);
    }

    private static Site bare(Part... outlets) {
        List<Part> parts = WiredYard.ground();
        parts.add(panel("house", at(48, 30)).spareWays(3).inside("house"));
        parts.addAll(List.of(outlets));
        return WiredYard.siteOf(yard("Plot").units(US).with(parts.toArray(Part[]::new)));
    }

    private static double dugM(Site site) {
        return Wiring.run(site, WiringParameters.defaults(), Progress.NONE).yard().trenches().stream()
                .mapToDouble(trench -> trench.route().lengthM())
                .sum();
    }

    @Test
    void aControllerInALaterStructureIsFound() {
        Site wired = WiredYard.wired();
        assertEquals(List.of(), phaseFindings(wired));
        Terrain terrain = wired.yard().terrain();
        List<Surface> later = terrain.surfaces().stream()
                .map(one -> one.id().name().equals("workshop") ? later(one) : one)
                .toList();
        var changed = new Terrain(
                terrain.survey(),
                terrain.ground(),
                later,
                terrain.obstacles(),
                terrain.services(),
                terrain.digZones(),
                terrain.limitLines());
        assertEquals(
                List.of("phase.order: controller clock"),
                phaseFindings(wired.with(wired.yard().withTerrain(changed))));
    }

    private static Surface later(Surface one) {
        return new Surface(one.id(), one.kind(), one.region(), one.watering(), one.soil(), one.planting(), Phase.LATER);
    }

    private static List<String> phaseFindings(Site site) {
        return Phasing.run(site, PhasingParameters.defaults(), Progress.NONE).findings().stream()
                .map(finding -> finding.rule().id() + ": " + finding.subject())
                .toList();
    }

    @Test
    void sizesThatAreNotMadeAreRefused() {
        var gauge = assertThrows(
                InvalidValueException.class,
                () -> WiredYard.site(
                        circuit("gate").from("house").breaker(amps(20)),
                        cable("run", polyline(at(48, 30), at(60, 60)))
                                .circuit("gate")
                                .from("house")
                                .to("court")
                                .conductor("11")));
        assertTrue(String.valueOf(gauge.getMessage()).contains("cable run"), gauge.getMessage());
        assertTrue(String.valueOf(gauge.getMessage()).contains("'11'"), gauge.getMessage());
        var series = assertThrows(
                InvalidValueException.class,
                () -> WiredYard.site(
                        conduit("tube", polyline(at(48, 30), at(60, 60))).series("PVC-41")));
        assertTrue(String.valueOf(series.getMessage()).contains("PVC-40"), series.getMessage());
    }
}
