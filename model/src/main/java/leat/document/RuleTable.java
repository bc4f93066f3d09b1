package leat.document;

import java.util.List;
import leat.model.catalog.Rules;
import leat.model.finding.Limit;
import leat.model.finding.Rule;
import leat.model.finding.Severity;
import leat.model.quantity.Dimension;
import leat.model.quantity.Quantity;

/** Reads the table of rules. */
final class RuleTable {

    private RuleTable() {}

    static Rules read(String edition) {
        List<Rule> rules =
                Table.read(edition, "rules").stream().map(RuleTable::rule).toList();
        return new Rules(Table.byKey(rules, Rule::id));
    }

    private static Rule rule(Table.Row row) {
        Dimension dimension = row.constant("dimension", Dimension.class);
        return new Rule(
                row.text("rule_id"),
                row.text("title"),
                row.constant("side", Limit.class),
                row.quantity("limit", dimension, Quantity.class),
                row.constant("severity", Severity.class),
                row.citation());
    }
}
