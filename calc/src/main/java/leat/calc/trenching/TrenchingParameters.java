package leat.calc.trenching;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.UnitSystem;

/**
 * What the designer may choose about trenches.
 *
 * @param digging       what digging costs on each sort of ground
 * @param clearance     kept from structures, water, obstacles and no-dig zones; default 0.3 m, common practice, no source
 * @param setback       kept from the outline of the lot; default 0.3 m, common practice, no source
 * @param belowPipe     added to the cover for the pipe itself and what it lies on; default 75 mm, common practice, no
 *     source
 * @param mainSeries    of planned pipes of the main; empty for the usual one of the yard's units
 * @param lateralSeries of planned laterals; empty for the usual one of the yard's units
 * @param seed          of the search; the same seed and effort give the same routes
 * @param effort        edges looked at for each tree of trenches; the default takes well under a second for 50 places
 */
public record TrenchingParameters(
        DiggingCosts digging,
        Length clearance,
        Length setback,
        Length belowPipe,
        Optional<String> mainSeries,
        Optional<String> lateralSeries,
        long seed,
        long effort) {

    private static final long USUAL_EFFORT = 8_000_000;

    public TrenchingParameters {
        Require.present("trenching", "digging", digging);
        Require.atLeast("trenching", "clearance", clearance, Length.ZERO);
        Require.atLeast("trenching", "setback", setback, Length.ZERO);
        Require.atLeast("trenching", "belowPipe", belowPipe, Length.ZERO);
        Require.present("trenching", "mainSeries", mainSeries);
        Require.present("trenching", "lateralSeries", lateralSeries);
        Require.atLeast("trenching", "effort", effort, 0L);
    }

    /**
     * What a metre of trench costs, as a multiple of a metre in lawn; the dearest of what is there counts. Defaults are
     * common practice, no source.
     *
     * @param bed         planted beds, at least 1
     * @param paving      under or through paving, at least 1
     * @param handDig     by hand, in hand-dig zones and near lines in the ground, at least 1
     * @param roots       by hand between roots, at least 1
     * @param sharedTrench another pipe in a trench that is dug anyhow, 0 to 1
     */
    public record DiggingCosts(Ratio bed, Ratio paving, Ratio handDig, Ratio roots, Ratio sharedTrench) {

        public DiggingCosts {
            Require.atLeast("digging costs", "bed", bed, Ratio.of(1));
            Require.atLeast("digging costs", "paving", paving, Ratio.of(1));
            Require.atLeast("digging costs", "handDig", handDig, Ratio.of(1));
            Require.atLeast("digging costs", "roots", roots, Ratio.of(1));
            Require.atLeast("digging costs", "sharedTrench", sharedTrench, Ratio.ZERO);
        }

        public static DiggingCosts defaults() {
            return new DiggingCosts(Ratio.of(1.5), Ratio.of(6), Ratio.of(3), Ratio.of(4), Ratio.of(0.1));
        }
    }

    public static TrenchingParameters defaults() {
        return new TrenchingParameters(
                DiggingCosts.defaults(),
                Length.metres(0.3),
                Length.metres(0.3),
                Length.millimetres(75),
                Optional.empty(),
                Optional.empty(),
                1,
                USUAL_EFFORT);
    }

    public TrenchingParameters withDigging(DiggingCosts costs) {
        return new TrenchingParameters(costs, clearance, setback, belowPipe, mainSeries, lateralSeries, seed, effort);
    }

    public TrenchingParameters withClearance(Length length) {
        return new TrenchingParameters(digging, length, setback, belowPipe, mainSeries, lateralSeries, seed, effort);
    }

    public TrenchingParameters withSetback(Length length) {
        return new TrenchingParameters(digging, clearance, length, belowPipe, mainSeries, lateralSeries, seed, effort);
    }

    public TrenchingParameters withBelowPipe(Length length) {
        return new TrenchingParameters(digging, clearance, setback, length, mainSeries, lateralSeries, seed, effort);
    }

    public TrenchingParameters withMainSeries(String series) {
        return new TrenchingParameters(
                digging, clearance, setback, belowPipe, Optional.of(series), lateralSeries, seed, effort);
    }

    public TrenchingParameters withLateralSeries(String series) {
        return new TrenchingParameters(
                digging, clearance, setback, belowPipe, mainSeries, Optional.of(series), seed, effort);
    }

    public TrenchingParameters withSeed(long newSeed) {
        return new TrenchingParameters(
                digging, clearance, setback, belowPipe, mainSeries, lateralSeries, newSeed, effort);
    }

    public TrenchingParameters withEffort(long edges) {
        return new TrenchingParameters(digging, clearance, setback, belowPipe, mainSeries, lateralSeries, seed, edges);
    }

    String mainSeries(UnitSystem units) {
        return mainSeries.orElse(usualSeries(units));
    }

    String lateralSeries(UnitSystem units) {
        return lateralSeries.orElse(usualSeries(units));
    }

    private static String usualSeries(UnitSystem units) {
        return units == UnitSystem.US ? "PVC Schedule 40" : "PE100 SDR 11 (PN 16)";
    }
}
