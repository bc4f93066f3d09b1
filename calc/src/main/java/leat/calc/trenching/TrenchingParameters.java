package leat.calc.trenching;

import java.util.Optional;
import leat.calc.DiggingCosts;
import leat.calc.TrenchChoices;
import leat.model.fault.Require;
import leat.model.quantity.Length;
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

    public TrenchingParameters {
        Require.present("trenching", "digging", digging);
        Require.atLeast("trenching", "clearance", clearance, Length.ZERO);
        Require.atLeast("trenching", "setback", setback, Length.ZERO);
        Require.atLeast("trenching", "belowPipe", belowPipe, Length.ZERO);
        Require.present("trenching", "mainSeries", mainSeries);
        Require.present("trenching", "lateralSeries", lateralSeries);
        Require.atLeast("trenching", "effort", effort, 0L);
    }

    /** What other stages that lead something through the same trenches have to know. */
    public TrenchChoices choices() {
        return new TrenchChoices(digging, clearance, setback, belowPipe, seed, effort);
    }

    public static TrenchingParameters defaults() {
        TrenchChoices usual = TrenchChoices.defaults();
        return new TrenchingParameters(
                usual.digging(),
                usual.clearance(),
                usual.setback(),
                usual.below(),
                Optional.empty(),
                Optional.empty(),
                usual.seed(),
                usual.effort());
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
