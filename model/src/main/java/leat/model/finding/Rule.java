package leat.model.finding;

import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Quantity;

/**
 * A limit that a design is held against.
 *
 * @param id       dotted, such as {@code hydraulics.velocity}
 * @param title    what it asks, as a short sentence without figures
 * @param side     whether the limit is the most or the least
 * @param limit    the figure; a user of the yard may state another, since local codes differ
 * @param severity of a finding when the limit is not kept
 */
public record Rule(String id, String title, Limit side, Quantity limit, Severity severity, Citation citation) {

    public Rule {
        Require.name("rule", "id", id);
        Require.present("rule " + id, "title", title);
        Require.present("rule " + id, "side", side);
        Require.present("rule " + id, "limit", limit);
        Require.present("rule " + id, "severity", severity);
        Require.present("rule " + id, "citation", citation);
    }

    /** The same rule with a limit that the user stated. */
    public Rule stated(Quantity newLimit) {
        if (newLimit.dimension() != limit.dimension()) {
            throw new InvalidValueException(
                    "rule " + id,
                    "limit",
                    newLimit.toString(),
                    limit.dimension().withArticle());
        }
        return new Rule(id, title, side, newLimit, severity, Citation.OF_THE_YARD);
    }

    /** Whether the measured figure keeps the limit; the limit itself is kept. */
    public boolean isKeptBy(Quantity measured) {
        return side == Limit.AT_MOST ? measured.si() <= limit.si() : measured.si() >= limit.si();
    }
}
