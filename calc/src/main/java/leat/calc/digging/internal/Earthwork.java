package leat.calc.digging.internal;

/**
 * Earth in its three states: in the bank as it grew, loose as it was thrown out, and tamped. Definitions of any handbook
 * of earthmoving.
 */
public final class Earthwork {

    private Earthwork() {}

    /** What a volume in the bank takes up when dug: bank · (1 + swell). */
    public static double looseM3(double bankM3, double swellRatio) {
        return bankM3 * (1 + swellRatio);
    }

    /** Swell from what a volume weighs before and after: bank over loose, less one. */
    public static double swellRatio(double bankKgPerM3, double looseKgPerM3) {
        return bankKgPerM3 / looseKgPerM3 - 1;
    }

    /**
     * What must be dug to fill a volume with tamped earth.
     *
     * @param tampedRatio volume that one of the bank fills when tamped: below 1 where it ends up denser than it grew
     */
    public static double bankM3(double filledM3, double tampedRatio) {
        return filledM3 / tampedRatio;
    }

    /** Loads of that size; the last one need not be full. A rounding error does not make another load. */
    public static int loadsCount(double looseM3, double loadM3) {
        return (int) Math.ceil(looseM3 / loadM3 - 1e-9);
    }
}
