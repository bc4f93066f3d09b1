package leat.calc.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import leat.model.catalog.BuriedAs;
import leat.model.catalog.BuriedUnder;
import leat.model.catalog.CableSpec;
import leat.model.catalog.ConductorSpec;
import leat.model.catalog.ConduitSpec;
import leat.model.catalog.ElectricalTables;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Citation;
import leat.model.finding.Rule;
import leat.model.finding.Standing;
import leat.model.power.CodeFamily;
import leat.model.power.WiringMethod;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Voltage;
import leat.model.site.SurfaceKind;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds in either family, whatever its tables say. */
@Tag("law")
class WiringLawTest {

    private static ElectricalCode code(CodeFamily family) {
        return family == CodeFamily.NFPA_70 ? Codes.NFPA : Codes.IEC;
    }

    private static ElectricalTables tables() {
        return Codes.site(CodeFamily.NFPA_70).catalog().electrical();
    }

    private static Stream<Laying> layings() {
        return Stream.of(WiringMethod.values())
                .flatMap(method -> Stream.of(1, 2, 3, 4, 6, 9, 12, 24).map(count -> Laying.usual(method, count)));
    }

    private static List<ConduitSpec> conduits() {
        return tables().conduits().values().stream().flatMap(List::stream).toList();
    }

    @ParameterizedTest
    @EnumSource
    void aThickerConductorLosesLessAndCarriesMore(CodeFamily family) {
        ElectricalCode code = code(family);
        List<ConductorSpec> sizes = code.powerConductors();
        assertTrue(sizes.size() >= 10);
        for (int i = 1; i < sizes.size(); i++) {
            ConductorSpec fine = sizes.get(i - 1);
            ConductorSpec thick = sizes.get(i);
            assertTrue(fine.insulated().compareTo(thick.insulated()) < 0, thick.label());
            for (int liveWires = 2; liveWires <= 3; liveWires++) {
                assertTrue(
                        code.loopResistance(thick, new Length(30), liveWires)
                                        .value()
                                        .compareTo(code.loopResistance(fine, new Length(30), liveWires)
                                                .value())
                                < 0,
                        thick.label());
            }
            layings()
                    .forEach(laying -> assertTrue(
                            code.ampacity(fine, laying)
                                            .value()
                                            .compareTo(
                                                    code.ampacity(thick, laying).value())
                                    < 0,
                            thick.label() + " " + laying));
        }
    }

    @ParameterizedTest
    @EnumSource
    void neighboursAndWarmthNeverRaiseAnAmpacity(CodeFamily family) {
        ElectricalCode code = code(family);
        for (ConductorSpec size : code.powerConductors()) {
            for (WiringMethod method : WiringMethod.values()) {
                double lastA = Double.MAX_VALUE;
                for (int count = 1; count <= 50; count++) {
                    double nowA = code.ampacity(size, Laying.usual(method, count))
                            .value()
                            .si();
                    assertTrue(nowA <= lastA, size.label() + " with " + count);
                    lastA = nowA;
                }
                lastA = Double.MAX_VALUE;
                for (int celsius = -10; celsius <= 50; celsius++) {
                    Laying laying = Laying.usual(method, 3).withAmbient(celsius);
                    double nowA = code.ampacity(size, laying).value().si();
                    assertTrue(nowA <= lastA && nowA > 0, size.label() + " at " + celsius);
                    lastA = nowA;
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void theConductorForABreakerIsTheFinestOneThatMayHaveIt(CodeFamily family) {
        ElectricalCode code = code(family);
        layings().forEach(laying -> {
            for (Current breaker : code.breakers()) {
                Optional<Answer<ConductorSpec>> found = code.conductorFor(breaker, laying);
                for (ConductorSpec size : code.powerConductors()) {
                    boolean may = code.mostBreaker(size, laying).value().compareTo(breaker) >= 0;
                    boolean finer = found.isEmpty()
                            || size.metal()
                                            .area()
                                            .compareTo(
                                                    found.get().value().metal().area())
                                    < 0;
                    assertEquals(!finer, may, size.label() + " behind " + breaker + ", " + laying);
                }
            }
        });
    }

    @RepeatedTest(100)
    void voltageDropIsProportionalToCurrentAndWay(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        for (CodeFamily family : CodeFamily.values()) {
            ElectricalCode code = code(family);
            List<ConductorSpec> sizes = code.conductors();
            ConductorSpec size = sizes.get(random.nextInt(sizes.size()));
            Current current = new Current(random.nextDouble(0.1, 60));
            Length way = new Length(random.nextDouble(1, 200));
            int liveWires = 2 + random.nextInt(2);
            double onceV = code.drop(current, way, liveWires, size).value().si();
            double sixV = code.drop(current.times(2), way.times(3), liveWires, size)
                    .value()
                    .si();
            assertEquals(6 * onceV, sixV, 1e-12 * sixV);
            double loopOhm = code.loopResistance(size, way, liveWires).value().si();
            assertEquals(current.si() * loopOhm, onceV, 0);
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsCountedAsTheMostFitsAndOneMoreDoesNot(CodeFamily family) {
        ElectricalCode code = code(family);
        double roundedUpWires = family == CodeFamily.NFPA_70 ? 0.2 : 0;
        for (ConduitSpec conduit : conduits()) {
            for (ConductorSpec size : code.powerConductors()) {
                int most = (int) code.mostEqual(conduit, size).value().si();
                String text = size.label() + " in " + conduit.size() + " " + conduit.series();
                if (most > 0) {
                    assertTrue(wires(code, conduit, size, most) >= most - roundedUpWires - 1e-6, text);
                }
                assertTrue(wires(code, conduit, size, most + 1) < most + 1 - roundedUpWires + 1e-6, text);
            }
        }
    }

    /** So many of them, and a fraction, that the limit for that count has room for. */
    private static double wires(ElectricalCode code, ConduitSpec conduit, ConductorSpec size, int count) {
        return code.fillLimit(count).limit().si()
                * conduit.area().si()
                / size.insulated().si();
    }

    @RepeatedTest(100)
    void fillAddsUpAndNeverFallsWithMore(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        ElectricalCode code = code(CodeFamily.values()[turn.getCurrentRepetition() % 2]);
        List<ConduitSpec> all = conduits();
        ConduitSpec conduit = all.get(random.nextInt(all.size()));
        List<ConduitContent> contents = new ArrayList<>();
        double shares = 0;
        for (int i = 0; i < 5; i++) {
            List<ConductorSpec> sizes = code.conductors();
            ConduitContent more = ConduitContent.of(sizes.get(random.nextInt(sizes.size())), 1 + random.nextInt(4));
            double before = code.fill(conduit, contents).value().value();
            contents.add(more);
            shares += code.fill(conduit, List.of(more)).value().value();
            double after = code.fill(conduit, contents).value().value();
            assertTrue(after > before);
            assertEquals(shares, after, 1e-12 * after);
        }
        Optional<ConduitSpec> chosen = code.conduitFor(conduit.series(), contents);
        int count = contents.stream().mapToInt(ConduitContent::count).sum();
        for (ConduitSpec one : tables().conduits(conduit.series())) {
            boolean fits =
                    code.fillLimit(count).isKeptBy(code.fill(one, contents).value());
            boolean smaller =
                    chosen.isEmpty() || one.area().compareTo(chosen.get().area()) < 0;
            assertEquals(!smaller, fits);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aGroundingConductorGrowsWithTheOthersButNotBeyondThem(CodeFamily family) {
        ElectricalCode code = code(family);
        List<ConductorSpec> sizes = code.powerConductors();
        for (Current breaker : code.breakers()) {
            Optional<Answer<ConductorSpec>> enough =
                    code.conductorFor(breaker, Laying.usual(WiringMethod.IN_CONDUIT, 2));
            if (enough.isEmpty()) {
                continue;
            }
            ConductorSpec least = enough.get().value();
            double lastM2 = 0;
            for (ConductorSpec chosen : sizes.subList(sizes.indexOf(least), sizes.size())) {
                Answer<ConductorSpec> answer = code.groundingConductor(breaker, least, chosen);
                double areaM2 = answer.value().metal().area().si();
                assertTrue(areaM2 >= lastM2, breaker + " " + chosen.label());
                assertTrue(areaM2 <= chosen.metal().area().si(), breaker + " " + chosen.label());
                lastM2 = areaM2;
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void coversKnowEachPlaceAndPavingIsNeverTheEasierOne(CodeFamily family) {
        ElectricalCode code = code(family);
        for (BuriedAs as : List.of(BuriedAs.CABLE, BuriedAs.RIGID_METAL, BuriedAs.OTHER_CONDUIT)) {
            Burial open = new Burial(as, new Voltage(230), new Current(16), false);
            Burial guarded = new Burial(as, new Voltage(120), new Current(16), true);
            Burial control = new Burial(as, new Voltage(24), Current.ZERO, false);
            for (BuriedUnder under : BuriedUnder.values()) {
                double openM = code.cover(under, open).limit().si();
                assertTrue(code.cover(under, guarded).limit().si() <= openM, as + " " + under);
                assertTrue(code.cover(under, control).limit().si() <= openM, as + " " + under);
            }
            for (Burial burial : List.of(open, guarded, control)) {
                double lawnM = code.cover(SurfaceKind.LAWN, burial).limit().si();
                assertTrue(lawnM > 0);
                assertTrue(code.cover(SurfaceKind.PAVING, burial).limit().si() >= lawnM);
                assertEquals(
                        0, code.cover(SurfaceKind.STRUCTURE, burial).limit().si());
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void aStatedCoverTakesThePlaceOfTheTable(CodeFamily family) {
        String id = family == CodeFamily.NFPA_70 ? "power.cover" : "power.iec.cover";
        ElectricalCode code = Codes.of(family, id, Length.millimetres(750));
        Rule rule = code.cover(SurfaceKind.LAWN, Burial.ofControl(Optional.empty()));
        assertEquals(Length.millimetres(750), rule.limit());
        assertEquals(Citation.OF_THE_YARD, rule.citation());
    }

    @ParameterizedTest
    @EnumSource
    void theLastStepIsTheFigureToTheLastBit(CodeFamily family) {
        ElectricalCode code = code(family);
        Current current = new Current(13.7);
        Length way = new Length(41.3);
        ConduitSpec conduit = conduits().get(0);
        for (ConductorSpec size : code.powerConductors()) {
            Laying laying = Laying.usual(WiringMethod.IN_CONDUIT, 5).withAmbient(38);
            ends(code.ampacity(size, laying));
            ends(code.mostBreaker(size, laying));
            ends(code.drop(current, way, 2, size));
            ends(code.drop(current, way, 3, size));
            ends(code.mostEqual(conduit, size));
            ends(code.fill(conduit, List.of(ConduitContent.of(size, 3))));
            ends(code.controlDrop(current, size, current, size, way));
            ends(code.longestControlRun(current, size, current, size));
            Answer<ConductorSpec> grounding = code.groundingConductor(current, size, size);
            assertEquals(grounding.value().metal().area(), last(grounding));
        }
    }

    private static void ends(Answer<?> answer) {
        assertEquals(answer.value(), last(answer));
        answer.steps()
                .forEach(step -> assertTrue(
                        !step.citation().text().isBlank() && step.citation().standing() != Standing.STATED));
    }

    private static Object last(Answer<?> answer) {
        return answer.steps().get(answer.steps().size() - 1).value();
    }

    @ParameterizedTest
    @EnumSource
    void valveWiresOfTheLongestWayLoseJustWhatTheyMay(CodeFamily family) {
        ElectricalCode code = code(family);
        ConductorSpec own = code.conductors().get(0);
        ConductorSpec common = code.conductors().get(2);
        Current valve = tables().valveSupply().inrush();
        Length longest =
                code.longestControlRun(valve, own, valve.times(2), common).value();
        Voltage drop =
                code.controlDrop(valve, own, valve.times(2), common, longest).value();
        assertEquals(code.controlDropLimit().limit().si(), drop.si(), 1e-12);
    }

    @ParameterizedTest
    @EnumSource
    void stagesMayAskForALimitOfEachKind(CodeFamily family) {
        ElectricalCode code = code(family);
        assertTrue(code.mixing().isKeptBy(Count.of(0)));
        assertTrue(code.bendLimit().limit().si() >= 180);
        assertTrue(code.continuousFactor().limit().si() >= 1);
        assertTrue(code.groundFaultRating().limit().si() <= 0.03);
        assertEquals(2, code.atStructure().size());
        for (DropSpan span : DropSpan.values()) {
            double light = code.dropLimit(span, true).limit().si();
            double other = code.dropLimit(span, false).limit().si();
            assertTrue(light <= other && light >= 0.03 - 1e-12 && other <= 0.05 + 1e-12);
        }
        assertTrue(code.groundFault(Codes.outlet(), new Voltage(230), new Current(16))
                .isPresent());
        assertThrows(InvalidValueException.class, () -> code.conductor("13"));
    }

    /** A cable takes more room than its wires would take alone, and the more strands, the more. */
    @ParameterizedTest
    @EnumSource
    void cablesAreThickerThanTheWiresInThem(CodeFamily family) {
        ElectricalCode code = code(family);
        for (ConductorSpec size : code.conductors()) {
            Optional<CableSpec> two = code.powerCable(size, 2);
            Optional<CableSpec> three = code.powerCable(size, 3);
            two.ifPresent(
                    cable -> assertTrue(cable.fill().si() > 3 * size.insulated().si(), cable.title()));
            if (two.isPresent() && three.isPresent()) {
                assertTrue(three.get().fill().compareTo(two.get().fill()) > 0, size.label());
            }
            double lastM2 = 0;
            for (int strands = 1; strands <= 13; strands++) {
                Optional<CableSpec> control = code.controlCable(size, strands);
                if (control.isPresent()) {
                    assertTrue(control.get().strands() >= strands);
                    assertTrue(
                            control.get().fill().si() >= lastM2, control.get().title());
                    lastM2 = control.get().fill().si();
                }
            }
        }
        assertTrue(code.powerCable(code.powerConductors().get(1), 2).isPresent());
        assertTrue(code.conductors().stream()
                .anyMatch(size -> code.controlCable(size, 13).isPresent()));
    }
}
