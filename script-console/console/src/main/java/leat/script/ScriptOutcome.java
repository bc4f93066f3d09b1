package leat.script;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Finding;
import leat.model.plan.Yard;

/**
 * What a script leaves when it has run to its end.
 *
 * @param yard     the one reported last, else assessed last, else planned last; none if the script did none of it
 * @param findings of that yard
 * @param files    that the script's reports consist of, by name; not yet written
 */
public record ScriptOutcome(Optional<Yard> yard, List<Finding> findings, SortedMap<String, byte[]> files) {

    public ScriptOutcome {
        findings = List.copyOf(findings);
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    }
}
