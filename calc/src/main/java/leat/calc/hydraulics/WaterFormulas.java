package leat.calc.hydraulics;

import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.quantity.Ratio;
import leat.model.quantity.UnitSystem;

/**
 * The formulas of pipes and devices with the factors of the units in which a ledger prints its inputs: psi, gpm, ft and in,
 * or kPa, L/min, m and mm. They are the formulas of the kernels, h = 10.67 L Q^1.852 / (C^1.852 d^4.8704) and K v²/(2g) in
 * metres of water of 999.1 kg/m³, multiplied out; the factors are printed to four digits.
 */
record WaterFormulas(UnitSystem units) {

    private boolean us() {
        return units == UnitSystem.US;
    }

    String friction() {
        return (us() ? "4.523" : "6.044e7") + " · L · Q^1.852 / (C^1.852 · d^4.8704)";
    }

    /** K v²/(2g) with v from Q and d. */
    String minor() {
        return (us() ? "0.001123" : "225.0") + " · K · Q² / d⁴";
    }

    /** Pressure below a height of water of one. */
    String weight() {
        return us() ? "0.4331" : "9.798";
    }

    String rise() {
        return "- " + weight() + " · height";
    }

    String unitOfDeviceLaw() {
        return us() ? ", psi per gpm^n" : ", kPa per (L/min)^n";
    }

    /** @param pascalsPerFlow pressure that a flow of 1 m³/s would lose */
    Ratio deviceFactor(double pascalsPerFlow, double exponent) {
        double unitM3PerS = (us() ? Flow.gpm(1) : Flow.litresPerMinute(1)).si();
        double unitPa = (us() ? Pressure.psi(1) : Pressure.kilopascals(1)).si();
        return Ratio.of(pascalsPerFlow / unitPa * StrictMath.pow(unitM3PerS, exponent));
    }
}
