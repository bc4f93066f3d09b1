package leat.calc.budget;

import leat.calc.takeoff.TakeoffResult;
import leat.model.fault.Require;

/**
 * What the budget goes by besides the yard's own prices and shares.
 *
 * @param takeoff of the same site
 */
public record BudgetParameters(TakeoffResult takeoff) {

    public BudgetParameters {
        Require.present("budget", "takeoff", takeoff);
    }

    public static BudgetParameters of(TakeoffResult takeoff) {
        return new BudgetParameters(takeoff);
    }
}
