package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import leat.model.catalog.Rules;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.quantity.Count;
import leat.model.quantity.Quantity;

/** Holds figures against rules and notes what does not keep them. */
final class Looks {

    private final Rules rules;
    private final List<Finding> findings = new ArrayList<>();

    Looks(Rules rules) {
        this.rules = rules;
    }

    Rule rule(String id) {
        return rules.get(id);
    }

    void hold(Rule rule, Subject subject, Quantity measured, String advice) {
        if (!rule.isKeptBy(measured)) {
            findings.add(Finding.of(rule, subject, measured, advice));
        }
    }

    /** Against a limit that goes with the thing; the rule says which side is the good one. */
    void hold(Rule rule, Subject subject, Quantity measured, Quantity limit, String advice) {
        if (!rule.stated(limit).isKeptBy(measured)) {
            findings.add(new Finding(rule, rule.severity(), subject, measured, limit, advice));
        }
    }

    /** Something that there should be none of. */
    void note(Rule rule, Subject subject, String advice) {
        hold(rule, subject, Count.of(1), advice);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }
}
