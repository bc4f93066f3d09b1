package leat.calc.schedule.internal;

/**
 * Water that a reference of short grass uses in a day, in mm.
 *
 * @see "FAO Irrigation and Drainage Paper 56, 1998, chapters 3 and 4"
 */
public final class ReferenceEvapotranspiration {

    private ReferenceEvapotranspiration() {}

    /**
     * The Penman-Monteith equation of FAO (equation 6).
     *
     * @param airC       mean of the least and the greatest temperature of the day
     * @param windMPerS  at 2 m
     * @param deficitKpa saturation less actual vapour pressure
     */
    public static double penmanMonteithMm(
            double airC,
            double netRadiationMj,
            double soilHeatMj,
            double windMPerS,
            double deficitKpa,
            double psychrometricKpaPerC) {
        double slope = Vapour.slopeKpaPerC(airC);
        double radiation = 0.408 * slope * (netRadiationMj - soilHeatMj);
        double drying = psychrometricKpaPerC * 900 / (airC + 273) * windMPerS * deficitKpa;
        return (radiation + drying) / (slope + psychrometricKpaPerC * (1 + 0.34 * windMPerS));
    }

    /** The equation of Hargreaves, from temperatures alone (equation 52). */
    public static double hargreavesMm(double lowC, double highC, double extraterrestrialMj) {
        double meanC = (lowC + highC) / 2;
        return 0.0023 * (meanC + 17.8) * StrictMath.sqrt(highC - lowC) * Sunlight.depthMm(extraterrestrialMj);
    }

    /** Heat that the soil takes up in a month, from the mean temperatures of the months around it (equation 43). */
    public static double soilHeatMj(double monthBeforeC, double monthAfterC) {
        return 0.07 * (monthAfterC - monthBeforeC);
    }

    /** The same where the month after is not known (equation 44). */
    public static double soilHeatSoFarMj(double monthBeforeC, double monthC) {
        return 0.14 * (monthC - monthBeforeC);
    }

    /** Wind at 2 m from that at another height above short grass (equation 47). */
    public static double windAtTwoM(double windMPerS, double heightM) {
        return windMPerS * 4.87 / StrictMath.log(67.8 * heightM - 5.42);
    }
}
