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

    void hold(String rule, Subject subject, Quantity measured, String advice) {
        Rule of = rules.get(rule);
        if (!of.isKeptBy(measured)) {
            findings.add(Finding.of(of, subject, measured, advice));
        }
    }

    /** Against a limit that goes with the thing; the rule says which side is the good one. */
    void hold(String rule, Subject subject, Quantity measured, Quantity limit, String advice) {
        Rule of = rules.get(rule);
        if (!of.stated(limit).isKeptBy(measured)) {
            findings.add(new Finding(of, of.severity(), subject, measured, limit, advice));
        }
    }

    /** Something that there should be none of. */
    void note(String rule, Subject subject, String advice) {
        hold(rule, subject, Count.of(1), advice);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }
}
