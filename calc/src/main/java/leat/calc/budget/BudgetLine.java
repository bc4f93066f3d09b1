package leat.calc.budget;

import java.util.Optional;
import leat.calc.takeoff.MaterialLine;
import leat.model.fault.Require;
import leat.model.quantity.Ratio;

/**
 * A line of the takeoff and what it costs.
 *
 * @param waste    share bought beyond the need
 * @param purchase empty where there is no price that fits
 * @param note     why there is none; empty otherwise
 */
public record BudgetLine(MaterialLine material, Ratio waste, Optional<Purchase> purchase, String note) {

    public BudgetLine {
        Require.present("budget line", "material", material);
        Require.present("budget line", "waste", waste);
        Require.present("budget line", "purchase", purchase);
        Require.present("budget line", "note", note);
    }
}
