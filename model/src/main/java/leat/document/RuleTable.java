package leat.document;

import java.util.List;
import leat.model.catalog.Rules;
import leat.model.finding.Limit;
import leat.model.finding.Rule;
import leat.model.finding.Severity;
import leat.model.quantity.Dimension;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/**
 * Reads the table of rules. A limit that is a round figure in each system of units is written twice, as in
 * {@code 18 in; 450 mm}: for US yards and for metric ones.
 */
final class RuleTable {

    private RuleTable() {}

    static Rules read(String edition, UnitSystem units) {
        List<Rule> rules = Table.read(edition, "rules").stream()
                .map(row -> rule(row, units))
                .toList();
        return new Rules(Table.byKey(rules, Rule::id));
    }

    private static Rule rule(Table.Row row, UnitSystem units) {
        Dimension dimension = row.constant("dimension", Dimension.class);
        return new Rule(
                row.text("rule_id"),
                row.text("title"),
                row.constant("side", Limit.class),
                limit(row.text("limit"), dimension, units),
                row.constant("severity", Severity.class),
                row.citation());
    }

    private static Quantity limit(String cell, Dimension dimension, UnitSystem units) {
        String[] limits = cell.split("; ");
        return Units.parse(dimension, limits[units == UnitSystem.US ? 0 : limits.length - 1]);
    }
}
