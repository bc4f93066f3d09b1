package leat.model.water;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import leat.model.geometry.Point;
import leat.model.id.SourceId;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class SourceCurveTest {

    private static final Point HERE = new Point(0, 0);

    private static Mains mains(double staticPsi, double testGpm, double residualPsi) {
        return new Mains(
                new SourceId("street"),
                HERE,
                Pressure.psi(staticPsi),
                Optional.of(new FlowTest(Flow.gpm(testGpm), Pressure.psi(residualPsi))),
                Optional.empty());
    }

    private static Pump pump(double shutOffKpa, double dutyLpm, double dutyKpa) {
        return new Pump(
                new SourceId("well"),
                HERE,
                Pressure.kilopascals(shutOffKpa),
                Flow.litresPerMinute(dutyLpm),
                Pressure.kilopascals(dutyKpa),
                Optional.empty());
    }

    /**
     * Source: NFPA 291, flow available at another residual pressure: Q_R = Q_F (h_R / h_F)^0.54, h the drop below static
     * pressure (formula from memory). The curve's exponent is 1.852 where 1/0.54 is 1.85185: below 0.01 % in the flow.
     */
    @Tag("reference")
    @RepeatedTest(100)
    void mainsFallAsFireFlowTestsAreRead(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double staticPsi = 40 + random.nextDouble() * 60;
        double residualPsi = staticPsi * (0.4 + 0.5 * random.nextDouble());
        double testGpm = 5 + random.nextDouble() * 30;
        Mains mains = mains(staticPsi, testGpm, residualPsi);
        double leftPsi = staticPsi * (0.1 + 0.8 * random.nextDouble());
        double available = testGpm * Math.pow((staticPsi - leftPsi) / (staticPsi - residualPsi), 0.54);
        double pressurePsi = mains.pressureAt(Flow.gpm(available)).inPsi();
        assertEquals(leftPsi, pressurePsi, 2e-4 * (staticPsi - leftPsi));
    }

    @Tag("law")
    @Test
    void curvesGoThroughTheirPoints() {
        Mains mains = mains(62, 14, 48);
        assertEquals(62, mains.pressureAt(Flow.ZERO).inPsi(), 1e-12);
        assertEquals(48, mains.pressureAt(Flow.gpm(14)).inPsi(), 1e-12);
        Pump pump = pump(400, 40, 300);
        assertEquals(400, pump.pressureAt(Flow.ZERO).inKilopascals(), 1e-12);
        assertEquals(300, pump.pressureAt(Flow.litresPerMinute(40)).inKilopascals(), 1e-12);
        assertEquals(375, pump.pressureAt(Flow.litresPerMinute(20)).inKilopascals(), 1e-12, "a quarter of the drop");
        assertEquals(pump.shutOff(), pump.staticPressure());
    }

    /** Source: a cubic metre of water at 15 °C weighs 999.1 kg times standard gravity: 9.798 kPa for each metre. */
    @Tag("reference")
    @Test
    void whatIsLiftedIsLostAtTheOutlet() {
        Pump flat = pump(400, 40, 300);
        var lifting = new Pump(
                flat.id(),
                flat.at(),
                flat.shutOff(),
                flat.duty(),
                flat.dutyPressure(),
                Length.metres(2),
                Optional.empty());
        assertEquals(400 - 19.596, lifting.staticPressure().inKilopascals(), 0.001);
        assertEquals(300 - 19.596, lifting.pressureAt(flat.duty()).inKilopascals(), 0.001);
        assertEquals(flat.staticPressure(), flat.shutOff());
    }

    private static void neverRises(Source source) {
        assertEquals(source.staticPressure(), source.pressureAt(Flow.ZERO));
        assertEquals(source.staticPressure(), source.pressureAt(Flow.gpm(-3)), "water that runs back changes nothing");
        Pressure before = source.staticPressure();
        for (int gpm = 1; gpm < 200; gpm++) {
            Pressure now = source.pressureAt(Flow.gpm(gpm));
            assertTrue(now.compareTo(before) <= 0);
            before = now;
        }
    }

    /** One contract for every kind of source. */
    @Tag("law")
    @RepeatedTest(30)
    void noSourceGivesMorePressureForMoreFlow(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double most = 100 + random.nextDouble() * 500;
        List<Source> sources = List.of(
                mains(most, 1 + 20 * random.nextDouble(), most * random.nextDouble()),
                new Mains(new SourceId("s"), HERE, Pressure.psi(most), Optional.empty(), Optional.empty()),
                pump(most, 1 + 50 * random.nextDouble(), most * (0.01 + 0.9 * random.nextDouble())),
                new Tank(new SourceId("t"), HERE, Length.metres(0.1 + random.nextDouble()), Optional.empty()));
        sources.forEach(SourceCurveTest::neverRises);
    }

    @Tag("law")
    @Test
    void onlyMainsAreDrinkingWater() {
        assertEquals(Water.DRINKING, mains(60, 10, 50).water());
        assertEquals(Water.NON_DRINKING, pump(400, 40, 300).water());
        assertEquals(Water.NON_DRINKING, Plumbing.tank("t").water());
        assertEquals("non-drinking water", Water.NON_DRINKING.label());
    }

    @Tag("pinned")
    @Test
    void refusals() {
        refused(
                "mains street: flowTest.residual is 500 kPa; it must be less than the static pressure",
                () -> new Mains(
                        new SourceId("street"),
                        HERE,
                        Pressure.kilopascals(500),
                        Optional.of(new FlowTest(Flow.litresPerMinute(10), Pressure.kilopascals(500))),
                        Optional.empty()));
        refused("pump well: dutyPressure is 400 kPa; it must be less than shut-off", () -> pump(400, 40, 400));
        refused("pump well: duty is 0 L/min; it must be more than 0 L/min", () -> pump(400, 0, 300));
        refused(
                "tank t: waterLevel is 0 m; it must be more than 0 m",
                () -> new Tank(new SourceId("t"), HERE, Length.ZERO, Optional.empty()));
        refused(
                "flow test: flow is 0 L/min; it must be more than 0 L/min",
                () -> new FlowTest(Flow.ZERO, Pressure.ZERO));
        refused(
                "tank t: meter is ''; it must be 1 to 80 printable characters without a space at either end",
                () -> new Tank(new SourceId("t"), HERE, Length.metres(1), Optional.of("")));
    }
}
