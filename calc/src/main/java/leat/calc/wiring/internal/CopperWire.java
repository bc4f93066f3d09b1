package leat.calc.wiring.internal;

/** Resistance of copper: R = ρ·l/A, ρ rising in a straight line with temperature. Direct current; stranding is not in it. */
public final class CopperWire {

    /** Annealed copper at 20 °C: 1/58 Ω·mm²/m. Source: IEC 60028. */
    public static final double RESISTIVITY_OHM_M = 1 / 58.0e6;

    /** Rise for each kelvin of what it is at 20 °C. Source: IEC 60028. */
    private static final double RISE_PER_KELVIN = 0.00393;

    private static final int REFERENCE_CELSIUS = 20;

    private CopperWire() {}

    /** Resistance of one metre. */
    public static double ohmPerM(double areaM2, int celsius) {
        return RESISTIVITY_OHM_M / areaM2 * rise(celsius);
    }

    /** The resistance at another temperature than that for which it is known. */
    public static double atCelsius(double resistanceOhm, int knownCelsius, int wantedCelsius) {
        return resistanceOhm * (rise(wantedCelsius) / rise(knownCelsius));
    }

    private static double rise(int celsius) {
        return 1 + RISE_PER_KELVIN * (celsius - REFERENCE_CELSIUS);
    }
}
