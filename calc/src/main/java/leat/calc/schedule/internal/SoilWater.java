package leat.calc.schedule.internal;

/**
 * Water that the soil holds within reach of the roots, in mm.
 *
 * @see "FAO Irrigation and Drainage Paper 56, 1998, chapter 8"
 */
public final class SoilWater {

    private SoilWater() {}

    /** What roots can draw between field capacity and wilting point (equation 82). */
    public static double availableMm(double fieldCapacityFraction, double wiltingFraction, double rootM) {
        return 1000 * (fieldCapacityFraction - wiltingFraction) * rootM;
    }

    /** What they can draw before they suffer (equation 83). */
    public static double readilyAvailableMm(double availableMm, double depletionFraction) {
        return depletionFraction * availableMm;
    }

    /** The depletion fraction of table 22 on days that use more or less than 5 mm (equation in its footnote); 0.1 to 0.8. */
    public static double depletionFraction(double tableFraction, double useMm) {
        return Math.max(0.1, Math.min(0.8, tableFraction + 0.04 * (5 - useMm)));
    }

    /** Whole days that the readily available water lasts; at least one, for a day is the least that a controller waits. */
    public static int intervalDays(double readilyAvailableMm, double useMm) {
        // What was meant to be a whole number of days must not lose one by rounding.
        double days = Math.floor(readilyAvailableMm / useMm + 1e-9);
        return (int) Math.max(1, Math.min(days, 366));
    }

    /**
     * The part of a month's rain that the plants can use, by the method of the Soil Conservation Service: more where they
     * use more and where the soil has more room; never more than the rain or the use.
     *
     * @param storageMm room in the soil, usually the depth of one watering
     * @see "USDA Soil Conservation Service, Irrigation Water Requirements, Technical Release 21, 1970; from memory"
     */
    public static double effectiveRainMm(double rainMm, double useMm, double storageMm) {
        double room = Math.min(storageMm, 150); // the polynomial was fitted to 150 mm
        double storageFactor = 0.531747 + 0.011621 * room - 8.943e-5 * room * room + 2.321e-7 * room * room * room;
        double atThreeInchesMm = 1.252474 * StrictMath.pow(rainMm, 0.82416) - 2.935224;
        double effectiveMm = storageFactor * atThreeInchesMm * StrictMath.pow(10, 0.000955 * useMm);
        return Math.max(0, Math.min(effectiveMm, Math.min(rainMm, useMm)));
    }
}
