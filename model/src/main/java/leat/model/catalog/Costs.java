package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.quantity.Ratio;

/**
 * What the budget has to go by.
 *
 * @param tax on all that is bought
 */
public record Costs(Ratio tax) {

    public static final Costs NONE = new Costs(new Ratio(0));

    public Costs {
        Require.present("costs", "tax", tax);
    }
}
