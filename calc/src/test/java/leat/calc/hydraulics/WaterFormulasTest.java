package leat.calc.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import leat.calc.internal.pipes.PipeLaw;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.quantity.UnitSystem;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The formulas that ledgers print give what the kernels give, worked out with the inputs in the units of the print. */
@Tag("law")
class WaterFormulasTest {

    private static final double PRINTED = 2e-4; // four digits of the factor

    private static double factor(String formula) {
        return Double.parseDouble(formula.split(" · ")[0]);
    }

    @RepeatedTest(50)
    void frictionAndFittings(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        Length length = Length.feet(1 + 99 * random.nextDouble());
        Length bore = Length.inches(0.5 + 2 * random.nextDouble());
        Flow flow = Flow.gpm(0.5 + 15 * random.nextDouble());
        double frictionPa =
                PipeLaw.lossM(PipeLaw.frictionCoefficient(length.metres(), bore.metres(), 140), 0, flow.si())
                        * PipeLaw.PASCALS_PER_M;
        double minorPa =
                PipeLaw.lossM(0, PipeLaw.minorCoefficient(3.3, bore.metres()), flow.si()) * PipeLaw.PASCALS_PER_M;

        WaterFormulas us = new WaterFormulas(UnitSystem.US);
        double c = Math.pow(140, 1.852);
        double usPsi = factor(us.friction())
                * length.inFeet()
                * Math.pow(flow.inGpm(), 1.852)
                / (c * Math.pow(bore.inInches(), 4.8704));
        assertEquals(Pressure.pascals(frictionPa).inPsi(), usPsi, PRINTED * usPsi);
        double usMinorPsi = factor(us.minor()) * 3.3 * Math.pow(flow.inGpm(), 2) / Math.pow(bore.inInches(), 4);
        assertEquals(Pressure.pascals(minorPa).inPsi(), usMinorPsi, 5 * PRINTED * usMinorPsi);

        WaterFormulas metric = new WaterFormulas(UnitSystem.METRIC);
        double kPa = factor(metric.friction())
                * length.metres()
                * Math.pow(flow.inLitresPerMinute(), 1.852)
                / (c * Math.pow(bore.inMillimetres(), 4.8704));
        assertEquals(frictionPa / 1_000, kPa, PRINTED * kPa);
        double minorKPa = factor(metric.minor())
                * 3.3
                * Math.pow(flow.inLitresPerMinute(), 2)
                / Math.pow(bore.inMillimetres(), 4);
        assertEquals(minorPa / 1_000, minorKPa, 2 * PRINTED * minorKPa);
    }

    @Test
    void heightsAndDevices() {
        WaterFormulas us = new WaterFormulas(UnitSystem.US);
        WaterFormulas metric = new WaterFormulas(UnitSystem.METRIC);
        assertEquals(
                Pressure.pascals(PipeLaw.PASCALS_PER_M * 0.3048).inPsi(), Double.parseDouble(us.weight()), 0.00005);
        assertEquals(PipeLaw.PASCALS_PER_M / 1_000, Double.parseDouble(metric.weight()), 0.0005);
        double pascals = 1e12 * Math.pow(Flow.gpm(10).si(), 1.9);
        assertEquals(
                Pressure.pascals(pascals).inPsi(), us.deviceFactor(1e12, 1.9).value() * Math.pow(10, 1.9), 1e-9);
        assertTrue(metric.unitOfDeviceLaw().contains("kPa"));
    }
}
