package leat.calc.schedule.internal;

/** From the depth that the plants need to the time that a valve is open. */
public final class Application {

    private Application() {}

    /**
     * How much longer a zone runs so that its drier parts get enough: 1 / (0.4 + 0.6 DU), with the low-quarter distribution
     * uniformity from 0 to 1. Roots even out the worst, so it is less than 1 / DU.
     *
     * @see "Irrigation Association, Landscape Irrigation Scheduling and Water Management, 2005; from memory"
     */
    public static double runTimeFactor(double lowQuarterFraction) {
        return 1 / (0.4 + 0.6 * lowQuarterFraction);
    }

    /** Depth to be thrown so that the net depth is there after evaporation, drift and unevenness. */
    public static double grossM(double netM, double runTimeFactor) {
        return netM * runTimeFactor;
    }

    /** Time in which the rate lays down the depth. */
    public static double runS(double grossM, double rateMPerS) {
        return grossM / rateMPerS;
    }

    /**
     * Longest time that a zone may run without water running off: until what the soil does not take in at once fills the
     * hollows of the surface. Endless where the soil takes in all.
     */
    public static double longestCycleS(double rateMPerS, double intakeMPerS, double surfaceStorageM) {
        return rateMPerS <= intakeMPerS ? Double.POSITIVE_INFINITY : surfaceStorageM / (rateMPerS - intakeMPerS);
    }

    /** Cycles that a run is cut into; at least one. */
    public static int cycles(double runS, double longestCycleS) {
        return (int) Math.max(1, Math.ceil(runS / longestCycleS - 1e-9));
    }

    /** Time in which the soil takes in what stands on it at the end of a cycle. */
    public static double soakS(double cycleS, double rateMPerS, double intakeMPerS) {
        return Math.max(0, rateMPerS - intakeMPerS) * cycleS / intakeMPerS;
    }
}
