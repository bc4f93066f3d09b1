package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.power.CodeFamily;
import leat.model.quantity.Current;

/** A rating that breakers are made with. */
public record BreakerRating(CodeFamily family, Current rating, Citation citation) {

    public BreakerRating {
        Require.present("breaker", "family", family);
        Require.moreThan("breaker", "rating", rating, Current.ZERO);
        Require.present("breaker", "citation", citation);
    }
}
