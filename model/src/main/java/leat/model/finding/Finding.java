package leat.model.finding;

import leat.model.fault.Require;
import leat.model.quantity.Quantity;

/**
 * A place where the design does not keep a rule.
 *
 * @param rule     with limit and source
 * @param severity usually the rule's own
 * @param measured what the design has
 * @param advice   what to try, without figures; may be empty
 */
public record Finding(Rule rule, Severity severity, Subject subject, Quantity measured, Quantity limit, String advice) {

    public Finding {
        Require.present("finding", "rule", rule);
        Require.present("finding", "severity", severity);
        Require.present("finding", "subject", subject);
        Require.present("finding", "measured", measured);
        Require.present("finding", "limit", limit);
        Require.present("finding", "advice", advice);
    }

    /** The usual finding: severity and limit are those of the rule. */
    public static Finding of(Rule rule, Subject subject, Quantity measured, String advice) {
        return new Finding(rule, rule.severity(), subject, measured, rule.limit(), advice);
    }
}
