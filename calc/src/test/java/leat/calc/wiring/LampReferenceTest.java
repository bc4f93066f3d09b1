package leat.calc.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import leat.calc.wiring.internal.CableTree;
import leat.calc.wiring.internal.LampTree;
import leat.model.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Voltage drop in cables for 12 V against rules of thumb and worked examples of the lighting trade.
 * <p>
 * Source of the cable constants: rule of the trade for garden lights, lost voltage = watts in all · feet of the run /
 * constant, with 7,500 for two conductors of 12 AWG and 11,920 for 10 AWG, for lamps spread evenly along the run
 * (published in articles for gardeners); 18,960 for 8 AWG is from memory.
 */
@Tag("reference")
class LampReferenceTest {

    private static final ElectricalCode NFPA = Codes.NFPA;

    /** The constants hold for cold copper; the plan reckons with 30 °C, by the temperature coefficient of IEC 60028. */
    private static final double WARMER = 1 + 0.00393 * (30 - 20);

    /** Evenly spread lamps lose half of what they would together at the end: constant = 2 · 12 V / ohms of a foot. */
    @ParameterizedTest
    @CsvSource({"12, 7500", "10, 11920", "8, 18960"})
    void cableConstantsOfTheTrade(String size, double constant) {
        double ohmPerFoot = NFPA.lampLoopResistance(NFPA.conductor(size), Length.feet(1))
                        .value()
                        .si()
                / WARMER;
        // the constants go with solid copper, the table with seven strands, which are 1.02 times as long
        assertEquals(constant, 2 * 12 / ohmPerFoot, 0.03 * constant);
    }

    /**
     * Source: the same articles: 4 lamps of 20 W on 80 ft of 12 AWG lose 80 · 80 / 7,500 = 0.85 V; 11.15 V are left of
     * 12 V at the end. Here each lamp gets its share of the run; the constant spreads the load evenly, which loses 4/5 of
     * what lamps at the ends of four equal pieces do.
     */
    @Test
    void fourLampsOnEightyFeet() {
        double ohm = NFPA.lampLoopResistance(NFPA.conductor("12"), Length.feet(20))
                        .value()
                        .si()
                / WARMER;
        int[] parent = {0, 0, 1, 2, 3};
        double lampA = 20 / 12.0; // the rule takes the current at 12 V, whatever the lamp gets
        double[] currentA = new double[5];
        double[] dropV = new double[5];
        CableTree.currents(parent, new double[] {0, lampA, lampA, lampA, lampA}, currentA);
        CableTree.drops(parent, new double[] {0, ohm, ohm, ohm, ohm}, currentA, dropV);
        assertEquals(0.85 * 5 / 4, dropV[4], 0.03 * 0.85 * 5 / 4); // seven strands, as above
    }

    /** By hand: 60 W at the end of 2 · 0.1 Ω: U² − 12 U + 60 · 0.2 = 0, so U = 6 + √24. */
    @Test
    void oneLampByTheQuadraticEquation() {
        double[] dropV = new double[2];
        LampTree.settle(
                new int[] {0, 0}, new double[] {0, 0.2}, new double[] {0, 60}, 12, new double[2], new double[2], dropV);
        assertEquals(6 - Math.sqrt(24), dropV[1], 1e-10);
    }

    /** Source: NFPA 70, 240.4(D): 10 A for 16 AWG, 15 A for 14, 20 A for 12, 30 A for 10; 16 AWG is from memory. */
    @ParameterizedTest
    @CsvSource({"16, 10", "14, 15", "12, 20", "10, 30"})
    void smallConductorsCarryAsMuchAsTheirProtection(String size, double amperes) {
        assertEquals(amperes, NFPA.lampAmpacity(NFPA.conductor(size)).value().si());
    }
}
