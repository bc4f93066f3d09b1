package leat.model.catalog;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.Stream;
import leat.model.Checks;
import leat.model.Checks.Check;
import leat.model.finding.Citation;
import leat.model.geometry.Arc;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.HeadId;
import leat.model.quantity.Angle;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.water.Bubbler;
import leat.model.water.DripLine;
import leat.model.water.Head;
import leat.model.water.Rotor;
import leat.model.water.Spray;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HeadFamilyTest {

    private static final Point HERE = new Point(0, 0);

    private static HeadFamily family(HeadShape shape, Flow flow, FlowRule rule, double exponent, double referencePsi) {
        Jet jet = new Jet(Length.metres(10), Length.metres(7), flow, rule, exponent, 0.3, "wedge");
        PressureRange range = new PressureRange(
                Pressure.psi(referencePsi / 2), Pressure.psi(referencePsi), Pressure.psi(referencePsi * 2));
        return new HeadFamily(
                "f", shape, jet, range, Angle.degrees(40), Angle.degrees(360), Length.ZERO, Citation.OF_THE_YARD);
    }

    private static Head rotor(double sweep, double radiusM) {
        return new Rotor(new HeadId("R"), "f", HERE, Arc.degrees(0, sweep), Length.metres(radiusM));
    }

    /** Source: each record of checks/nozzles.json: an extension leaflet's table and Keller and Karmeli's q = K p^x. */
    @Tag("reference")
    @ParameterizedTest
    @MethodSource("pairsOfPressures")
    void flowGoesWithAPowerOfThePressure(Check check) {
        HeadFamily family = family(
                HeadShape.ROTOR,
                Flow.gpm(check.input("flow_1_gpm")),
                FlowRule.FIXED,
                check.input("exponent"),
                check.input("pressure_1_psi"));
        check.expect(
                "flow_2_gpm",
                family.flow(rotor(360, 10), Pressure.psi(check.input("pressure_2_psi")))
                        .inGpm());
    }

    static Stream<Check> pairsOfPressures() {
        return Checks.of("nozzles").stream().filter(check -> check.inputs().has("flow_1_gpm"));
    }

    /**
     * Source: the leaflet's table of nozzles. Each nozzle is stated at 35 or 40 psi; the other pressures of its row must
     * follow within the tolerance of the record.
     */
    @Tag("reference")
    @ParameterizedTest
    @MethodSource("nozzles")
    void aRowOfTheNozzleTableFollowsFromItsFirstEntry(Check check) {
        Check first = nozzles()
                .filter(one -> one.input("diameter_in") == check.input("diameter_in"))
                .findFirst()
                .orElseThrow();
        HeadFamily family = family(
                HeadShape.ROTOR,
                Flow.gpm(first.expected("flow_gpm")),
                FlowRule.FIXED,
                0.5,
                first.input("pressure_psi"));
        check.expect(
                "flow_gpm",
                family.flow(rotor(360, 10), Pressure.psi(check.input("pressure_psi")))
                        .inGpm());
    }

    static Stream<Check> nozzles() {
        return Checks.of("nozzles", "or-ext-");
    }

    /** Source: the same leaflet: 30 sprinklers of 6.41 gpm, which the text rounds to 190 gpm. */
    @Tag("reference")
    @Test
    void thirtySprinklers() {
        Check check = Checks.one("nozzles", "or-30-sprinklers");
        HeadFamily family = family(HeadShape.ROTOR, Flow.gpm(check.input("flow_each_gpm")), FlowRule.FIXED, 0.5, 40);
        Flow sum = Flow.ZERO;
        for (int i = 0; i < check.input("count"); i++) {
            sum = sum.plus(family.flow(rotor(360, 10), Pressure.psi(40)));
        }
        check.expect("flow_gpm", sum.inGpm());
    }

    @Tag("law")
    @RepeatedTest(100)
    void arcsAndRadiiShareTheFlow(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double sweep = 40 + random.nextDouble() * 320;
        double radiusM = 7 + 3 * random.nextDouble();
        Flow full = Flow.litresPerMinute(1 + random.nextDouble() * 30);
        Pressure reference = Pressure.psi(40);
        Head head = rotor(sweep, radiusM);
        assertEquals(
                full, family(HeadShape.ROTOR, full, FlowRule.FIXED, 0.5, 40).flow(head, reference));
        assertEquals(
                full.si() * sweep / 360,
                family(HeadShape.ROTOR, full, FlowRule.BY_ARC, 0.5, 40)
                        .flow(head, reference)
                        .si(),
                1e-15);
        double depthRate = full.si() / (Math.PI * 100);
        assertEquals(
                depthRate,
                family(HeadShape.ROTOR, full, FlowRule.BY_AREA, 0.5, 40)
                                .flow(head, reference)
                                .si()
                        / head.sector().orElseThrow().area().squareMetres(),
                1e-12 * depthRate,
                "the same depth rate on whatever ground it wets");
    }

    @Tag("law")
    @Test
    void dripLinesByTheMetreAndBubblersByThePiece() {
        HeadFamily drip = family(HeadShape.DRIP_LINE, Flow.litresPerMinute(0.1), FlowRule.PER_LENGTH, 0, 20);
        Head line = new DripLine(new HeadId("D"), "f", Polyline.of(HERE, new Point(30, 0), new Point(30, 20)));
        assertEquals(5, drip.flow(line, Pressure.psi(11)).inLitresPerMinute(), 1e-12, "compensated: exponent 0");
        HeadFamily bubbler = family(HeadShape.BUBBLER, Flow.gpm(0.5), FlowRule.FIXED, 0, 20);
        assertEquals(
                0.5,
                bubbler.flow(new Bubbler(new HeadId("B"), "f", HERE), Pressure.psi(30))
                        .inGpm(),
                1e-12);
    }

    @Tag("law")
    @RepeatedTest(50)
    void morePressureNeverGivesLess(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        HeadFamily family = family(HeadShape.SPRAY, Flow.gpm(2), FlowRule.BY_ARC, random.nextDouble(), 30);
        Head head = new Spray(new HeadId("S"), "f", HERE, Arc.degrees(0, 90), Length.metres(4));
        Flow flow = Flow.ZERO;
        Length radius = Length.ZERO;
        for (int psi = -5; psi < 90; psi++) {
            Flow next = family.flow(head, Pressure.psi(psi));
            Length reach = family.radius(Length.metres(4), Pressure.psi(psi));
            assertTrue(next.compareTo(flow) >= 0 && reach.compareTo(radius) >= 0);
            assertTrue(reach.compareTo(Length.metres(4)) <= 0, "set in place by the builder");
            flow = next;
            radius = reach;
        }
        assertEquals(Flow.ZERO, family.flow(head, Pressure.psi(-1)));
        assertEquals(Length.ZERO, family.radius(Length.metres(4), Pressure.psi(-1)));
        assertEquals(Length.metres(4), family.radius(Length.metres(4), Pressure.psi(30)));
        assertEquals(
                4 * Math.pow(0.5, 0.3),
                family.radius(Length.metres(4), Pressure.psi(15)).metres(),
                1e-12);
    }

    @Tag("law")
    @Test
    void lossesOfDevices() {
        LossLaw law = new LossLaw(Pressure.psi(2), 1e9, 2);
        assertEquals(Pressure.ZERO, law.lossAt(Flow.ZERO));
        assertEquals(
                2 + Pressure.pascals(1e9 * 1e-6).inPsi(),
                law.lossAt(Flow.litresPerSecond(1)).inPsi(),
                1e-12);
    }

    @Tag("pinned")
    @Test
    void refusals() {
        refused(
                "jet: flowExponent is 1.5; it must be 0 to 1",
                () -> family(HeadShape.ROTOR, Flow.gpm(1), FlowRule.FIXED, 1.5, 40));
        refused(
                "jet: leastRadius is 4 m; it must be at most the radius 3 m",
                () -> new Jet(Length.metres(3), Length.metres(4), Flow.gpm(1), FlowRule.FIXED, 0.5, 0.3, "wedge"));
        refused(
                "jet: profile is ''; it must be 1 to 80 printable characters without a space at either end",
                () -> new Jet(Length.metres(4), Length.metres(4), Flow.gpm(1), FlowRule.FIXED, 0.5, 0.3, ""));
        refused(
                "pressure range: most is 100 kPa; it must be at least the reference 200 kPa",
                () -> new PressureRange(
                        Pressure.kilopascals(100), Pressure.kilopascals(200), Pressure.kilopascals(100)));
    }
}
