package leat.calc.schedule.internal;

/**
 * Radiation, in MJ a square metre and day.
 *
 * @see "FAO Irrigation and Drainage Paper 56, 1998, chapter 3, equations 20 to 51"
 */
public final class Sunlight {

    /** Of the grass reference. */
    public static final double ALBEDO_FRACTION = 0.23;

    /** For places whose air is not shaped by a large body of water (below equation 50). */
    public static final double INLAND_COEFFICIENT = 0.16;

    private static final double SOLAR_CONSTANT_MJ_PER_M2_MINUTE = 0.0820;
    private static final double STEFAN_BOLTZMANN = 4.903e-9; // MJ a square metre and day, per K⁴
    private static final double MJ_PER_MM = 2.45; // latent heat of a kilogram of water at about 20 °C

    private Sunlight() {}

    /** Inverse relative distance from the earth to the sun on a day of the year, 1 to 366 (equation 23). */
    public static double inverseDistanceRatio(int day) {
        return 1 + 0.033 * StrictMath.cos(2 * Math.PI / 365 * day);
    }

    /** Solar declination (equation 24). */
    public static double declinationRad(int day) {
        return 0.409 * StrictMath.sin(2 * Math.PI / 365 * day - 1.39);
    }

    /** Hour angle of the sunset; 0 in the polar night, π in the polar day (equation 25). */
    public static double sunsetRad(double latitudeRad, int day) {
        double cosine = -StrictMath.tan(latitudeRad) * StrictMath.tan(declinationRad(day));
        return StrictMath.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** What reaches the top of the air (equation 21). */
    public static double extraterrestrialMj(double latitudeRad, int day) {
        double declinationRad = declinationRad(day);
        double sunsetRad = sunsetRad(latitudeRad, day);
        double height = sunsetRad * StrictMath.sin(latitudeRad) * StrictMath.sin(declinationRad)
                + StrictMath.cos(latitudeRad) * StrictMath.cos(declinationRad) * StrictMath.sin(sunsetRad);
        return 24 * 60 / Math.PI * SOLAR_CONSTANT_MJ_PER_M2_MINUTE * inverseDistanceRatio(day) * height;
    }

    /** Hours between sunrise and sunset (equation 34). */
    public static double daylightH(double latitudeRad, int day) {
        return 24 / Math.PI * sunsetRad(latitudeRad, day);
    }

    /** Solar radiation at the ground from the share of the daylight in which the sun shone (equation 35). */
    public static double fromSunshineMj(double sunshineFraction, double extraterrestrialMj) {
        return (0.25 + 0.50 * sunshineFraction) * extraterrestrialMj;
    }

    /** Solar radiation at the ground from how far the day's temperatures lie apart (equation 50). */
    public static double fromTemperaturesMj(double lowC, double highC, double extraterrestrialMj, double coefficient) {
        return coefficient * StrictMath.sqrt(highC - lowC) * extraterrestrialMj;
    }

    /** Solar radiation at the ground under a clear sky (equation 37). */
    public static double clearSkyMj(double altitudeM, double extraterrestrialMj) {
        return (0.75 + 2e-5 * altitudeM) * extraterrestrialMj;
    }

    /** What the grass takes in of the solar radiation (equation 38). */
    public static double netShortwaveMj(double solarMj) {
        return (1 - ALBEDO_FRACTION) * solarMj;
    }

    /** What a black body at that temperature radiates in a day (table 2.8). */
    public static double blackBodyMj(double bodyC) {
        double kelvin = bodyC + 273.16;
        return STEFAN_BOLTZMANN * kelvin * kelvin * kelvin * kelvin;
    }

    /** What the ground loses by heat radiation; clouds and vapour hold it back (equation 39). */
    public static double netLongwaveMj(double lowC, double highC, double vapourKpa, double solarMj, double clearSkyMj) {
        double cloudiness = 1.35 * Math.min(1, solarMj / clearSkyMj) - 0.35;
        double body = (blackBodyMj(highC) + blackBodyMj(lowC)) / 2;
        return body * (0.34 - 0.14 * StrictMath.sqrt(vapourKpa)) * cloudiness;
    }

    /** Depth of water that this much energy evaporates (equation 20). */
    public static double depthMm(double energyMj) {
        return energyMj / MJ_PER_MM;
    }
}
