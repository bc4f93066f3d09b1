package leat.calc.schedule.internal;

/**
 * Water vapour in the air.
 *
 * @see "Allen, Pereira, Raes, Smith: Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, 1998, chapter 3"
 */
public final class Vapour {

    /** Of an aspirated psychrometer, per °C; the coefficient below equation 15. */
    public static final double ASPIRATED_PER_C = 0.000662;

    private Vapour() {}

    /** Pressure of the air at a height above the sea, kPa (equation 7). */
    public static double airPressureKpa(double altitudeM) {
        return 101.3 * StrictMath.pow((293 - 0.0065 * altitudeM) / 293, 5.26);
    }

    /** The psychrometric constant, kPa per °C (equation 8). */
    public static double psychrometricKpaPerC(double airPressureKpa) {
        return 0.665e-3 * airPressureKpa;
    }

    /** Saturation vapour pressure at a temperature, kPa (equation 11). */
    public static double saturationKpa(double airC) {
        return 0.6108 * StrictMath.exp(17.27 * airC / (airC + 237.3));
    }

    /** Mean of the saturation pressures at both ends of the day, which is more than that at the mean (equation 12). */
    public static double saturationKpa(double lowC, double highC) {
        return (saturationKpa(highC) + saturationKpa(lowC)) / 2;
    }

    /** Slope of the saturation curve, kPa per °C (equation 13). */
    public static double slopeKpaPerC(double airC) {
        return 4098 * saturationKpa(airC) / ((airC + 237.3) * (airC + 237.3));
    }

    /** Actual vapour pressure from a wet and a dry thermometer (equation 15). */
    public static double fromPsychrometerKpa(double dryC, double wetC, double airPressureKpa, double coefficient) {
        return saturationKpa(wetC) - coefficient * airPressureKpa * (dryC - wetC);
    }

    /** Actual vapour pressure from the greatest and the least relative humidity of the day (equation 17). */
    public static double fromHumidityKpa(double lowC, double highC, double mostFraction, double leastFraction) {
        return (saturationKpa(lowC) * mostFraction + saturationKpa(highC) * leastFraction) / 2;
    }

    /** Actual vapour pressure from the mean relative humidity (equation 19). */
    public static double fromHumidityKpa(double lowC, double highC, double meanFraction) {
        return meanFraction * saturationKpa(lowC, highC);
    }
}
