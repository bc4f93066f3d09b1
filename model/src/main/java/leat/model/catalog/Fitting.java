package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Ratio;

/**
 * A fitting and what it costs in pressure: K times the velocity head.
 *
 * @param k loss coefficient, at least 0
 */
public record Fitting(String key, String title, Ratio k, Citation citation) {

    public Fitting {
        Require.name("fitting", "key", key);
        Require.present("fitting " + key, "title", title);
        Require.atLeast("fitting " + key, "k", k, Ratio.ZERO);
        Require.present("fitting " + key, "citation", citation);
    }
}
