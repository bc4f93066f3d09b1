package leat.calc;

import leat.model.fault.Require;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;

/**
 * What all stages that lead something through trenches have to know alike.
 *
 * @param digging   what digging costs on each sort of ground
 * @param clearance kept from structures, water, obstacles and no-dig zones; default 0.3 m, common practice, no source
 * @param setback   kept from the outline of the lot; default 0.3 m, common practice, no source
 * @param below     added to the cover for what lies in the trench and what it lies on; default 75 mm, common practice, no
 *     source
 * @param seed      of the search; the same seed and effort give the same routes
 * @param effort    edges looked at for each tree of trenches; the default takes well under a second for 50 places
 */
public record TrenchChoices(
        DiggingCosts digging, Length clearance, Length setback, Length below, long seed, long effort) {

    private static final long USUAL_EFFORT = 8_000_000;

    public TrenchChoices {
        Require.present("trenches", "digging", digging);
        Require.atLeast("trenches", "clearance", clearance, Length.ZERO);
        Require.atLeast("trenches", "setback", setback, Length.ZERO);
        Require.atLeast("trenches", "below", below, Length.ZERO);
        Require.atLeast("trenches", "effort", effort, 0L);
    }

    public static TrenchChoices defaults() {
        return new TrenchChoices(
                DiggingCosts.defaults(),
                Length.metres(0.3),
                Length.metres(0.3),
                Length.millimetres(75),
                1,
                USUAL_EFFORT);
    }

    public TrenchChoices withSharedTrench(Ratio cost) {
        return new TrenchChoices(
                new DiggingCosts(digging.bed(), digging.paving(), digging.handDig(), digging.roots(), cost),
                clearance,
                setback,
                below,
                seed,
                effort);
    }
}
