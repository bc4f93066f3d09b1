package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.quantity.Quantity;

/** A limit of the yard's own for a rule, since local codes differ. */
public record RuleLimit(String rule, Quantity limit) {

    public RuleLimit {
        Require.name("rule limit", "rule", rule);
        Require.present("rule limit " + rule, "limit", limit);
    }
}
