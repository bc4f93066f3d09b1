package leat.calc.wiring.internal;

/** Volume that conductors and devices need in a box, after NFPA 70, 314.16(B). */
public final class BoxFill {

    /** Grounding conductors that count as one together; each beyond counts a quarter (edition of 2020 and later). */
    private static final int GROUNDINGS_AS_ONE = 4;

    private static final double QUARTER = 0.25;

    private static final int VOLUMES_OF_A_DEVICE = 2;

    private BoxFill() {}

    /**
     * @param conductorsM3 sum over all conductors
     * @param largestM3    of the largest conductor in the box, by which clamps, grounding conductors and devices count;
     *                     that is never too small, for a device counts by the largest that is joined to it
     */
    public static double neededM3(
            double conductorsM3, double largestM3, int groundingCount, int deviceCount, boolean clamps) {
        double others = VOLUMES_OF_A_DEVICE * deviceCount + (clamps ? 1 : 0) + groundings(groundingCount);
        return conductorsM3 + others * largestM3;
    }

    private static double groundings(int count) {
        return count == 0 ? 0 : 1 + QUARTER * Math.max(0, count - GROUNDINGS_AS_ONE);
    }
}
