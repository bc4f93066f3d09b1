package leat.calc.supply;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.group;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.pump;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.id.PipeId;
import leat.model.plan.HeadPart;
import leat.model.plan.Part;
import leat.model.plan.PipePart;
import leat.model.plan.Yard;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.water.Water;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** One fault at a time in a small system that hangs together, and exactly the finding that follows from it. */
@Tag("law")
class SupplyTest {

    private static final String PVC = "PVC Schedule 40";
    private static final Part STREET = mains("street", at(0, 0)).staticPressure(psi(60));
    private static final PipePart SERVICE = pipe("service", polyline(at(0, 0), at(10, 0)))
            .from("street")
            .series(PVC)
            .size("1 in");
    private static final PipePart MAIN = pipe("main", polyline(at(10, 0), at(20, 0)))
            .from("service")
            .series(PVC)
            .size("1 in");
    private static final Part GUARD =
            backflow("guard").on("main").device("bfp-rp-1").height(inches(14));
    private static final Part BOX = manifold("box", at(20, 0)).on("main").valves("V1");
    private static final HeadPart HEAD =
            spray("S1", at(20, 10)).family("spray-4_6").fullCircle().radius(feet(15));
    private static final Part ZONE = zone("Z1").valve("V1").heads("S1");
    private static final PipePart LATERAL = pipe("Z1/1", polyline(at(20, 0), at(20, 10)))
            .from("V1")
            .to("S1")
            .series(PVC)
            .size("1/2 in");
    private static final Part TAP = bib("tap", at(10, 0)).on("service");

    private static SupplyResult of(Part... parts) {
        Yard yard = yard("Plot").with(parts);
        return Supply.run(StandingData.load(Yard.EDITION).siteOf(yard), SupplyParameters.defaults(), Progress.NONE);
    }

    private static void found(List<String> expected, Part... parts) {
        List<String> found = of(parts).findings().stream()
                .map(finding -> finding.rule().id() + " " + finding.subject())
                .toList();
        assertEquals(expected, found);
    }

    @Test
    void nothingIsFoundWhereAllHangsTogether() {
        found(List.of(), STREET, SERVICE, MAIN, GUARD, BOX, HEAD, ZONE, LATERAL, TAP);
    }

    @Test
    void headsOnDrinkingWaterNeedABackflowPreventer() {
        found(List.of("water.backflow head S1"), STREET, SERVICE, MAIN, BOX, HEAD, ZONE, LATERAL, TAP);
    }

    @Test
    void headsOnAPumpNeedNone() {
        Part well = pump("street", at(0, 0)).shutOff(psi(60)).duty(Flow.gpm(10), psi(45));
        found(List.of(), well, SERVICE, MAIN, BOX, HEAD, ZONE, LATERAL);
    }

    @Test
    void aBibOnDrinkingWaterNeedsAVacuumBreaker() {
        Part open = bib("tap", at(10, 0)).on("service").withoutVacuumBreaker();
        found(List.of("water.bib hose bib tap"), STREET, SERVICE, MAIN, GUARD, BOX, HEAD, ZONE, LATERAL, open);
    }

    @Test
    void aBibBehindTheBackflowPreventerNeedsNone() {
        Part behind = bib("tap", at(20, 0)).on("main").withoutVacuumBreaker();
        found(List.of(), STREET, SERVICE, MAIN, GUARD, BOX, HEAD, ZONE, LATERAL, behind);
    }

    @Test
    void aPipeThatStartsElsewhereIsFound() {
        PipePart apart = pipe("main", polyline(at(10, 3), at(20, 0)))
                .from("service")
                .series(PVC)
                .size("1 in");
        found(List.of("water.connected pipe main"), STREET, SERVICE, apart, GUARD, BOX, HEAD, ZONE, LATERAL, TAP);
    }

    @Test
    void aHeadAwayFromTheEndOfItsPipeIsFound() {
        HeadPart moved =
                spray("S1", at(20, 13)).family("spray-4_6").fullCircle().radius(feet(15));
        found(List.of("water.connected head S1"), STREET, SERVICE, MAIN, GUARD, BOX, moved, ZONE, LATERAL, TAP);
    }

    @Test
    void aBibAwayFromItsPipeIsFound() {
        Part away = bib("tap", at(10, 9)).on("service");
        found(List.of("water.connected hose bib tap"), STREET, SERVICE, MAIN, GUARD, BOX, HEAD, ZONE, LATERAL, away);
    }

    @Test
    void aZoneWithoutLateralsIsUnfinished() {
        found(List.of("water.supply head S1"), STREET, SERVICE, MAIN, GUARD, BOX, HEAD, ZONE, TAP);
    }

    @Test
    void partsThatNothingFeedsAreUnfinished() {
        Part box = manifold("box", at(20, 0)).valves("V1", "V2").spareValves("V3");
        Part tap = bib("tap", at(10, 0));
        found(
                List.of(
                        "water.supply pipe Z1/1",
                        "water.supply manifold box",
                        "water.supply valve V2",
                        "water.supply hose bib tap"),
                STREET,
                SERVICE,
                MAIN,
                GUARD,
                box,
                HEAD,
                ZONE,
                LATERAL,
                tap);
    }

    @Test
    void aPipeWithoutASizeIsUnfinished() {
        PipePart open =
                pipe("main", polyline(at(10, 0), at(20, 0))).from("service").series(PVC);
        found(List.of("pipe.size pipe main"), STREET, SERVICE, open, GUARD, BOX, HEAD, ZONE, LATERAL, TAP);
    }

    @Test
    void aBibOnRainWaterNeedsASign() {
        Part well = pump("street", at(0, 0)).shutOff(psi(60)).duty(Flow.gpm(10), psi(45));
        found(List.of("water.bib.sign hose bib tap"), well, SERVICE, MAIN, BOX, HEAD, ZONE, LATERAL, TAP);
    }

    @Test
    void rainWaterLedToTheBibOfTheMainsIsFound() {
        Part well = pump("well", at(10, 20)).shutOff(psi(60)).duty(Flow.gpm(10), psi(45));
        PipePart rain = pipe("rain", polyline(at(10, 20), at(10, 0)))
                .from("well")
                .series(PVC)
                .size("1 in");
        found(
                List.of("water.joined pipe rain"),
                STREET,
                SERVICE,
                MAIN,
                GUARD,
                BOX,
                HEAD,
                ZONE,
                LATERAL,
                TAP,
                well,
                rain);
    }

    @Test
    void mainsLedToThePumpAreFound() {
        Part well = pump("well", at(10, 20)).shutOff(psi(60)).duty(Flow.gpm(10), psi(45));
        PipePart filling = pipe("filling", polyline(at(10, 0), at(10, 20)))
                .from("service")
                .series(PVC)
                .size("1 in");
        found(
                List.of("water.joined pipe filling"),
                STREET,
                SERVICE,
                MAIN,
                GUARD,
                BOX,
                HEAD,
                ZONE,
                LATERAL,
                TAP,
                well,
                filling);
    }

    @Test
    void pipesOfTwoWatersMayLieInOneTrench() {
        Part well = pump("well", at(0, 1)).shutOff(psi(60)).duty(Flow.gpm(10), psi(45));
        PipePart rain = pipe("rain", polyline(at(0, 1), at(0, 0), at(20, 0), at(25, 0)))
                .from("well")
                .series(PVC)
                .size("1 in");
        found(List.of(), STREET, SERVICE, MAIN, GUARD, BOX, HEAD, ZONE, LATERAL, TAP, well, rain);
    }

    @Test
    void eachPipeKnowsItsWater() {
        SupplyResult result = of(group(STREET, SERVICE, MAIN, GUARD, BOX, HEAD, ZONE, LATERAL, TAP));
        assertEquals(Water.DRINKING, result.water().get(new PipeId("service")));
        assertEquals(Water.IRRIGATION, result.water().get(new PipeId("main")));
        assertEquals(Water.IRRIGATION, result.water().get(new PipeId("Z1/1")));
        Part tank = pump("street", at(0, 0)).shutOff(Pressure.bar(4)).duty(Flow.gpm(10), Pressure.bar(3));
        assertEquals(Water.NON_DRINKING, of(tank, SERVICE, MAIN, GUARD).water().get(new PipeId("main")));
    }
}
