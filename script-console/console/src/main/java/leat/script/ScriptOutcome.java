package leat.script;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.model.finding.Finding;
import leat.model.plan.Yard;

/**
 * What a script leaves when it has run to its end.
 *
 * @param yard       the one reported last, else assessed last, else planned last; none if the script did none of it
 * @param assessment of that yard, if the script asked for one
 * @param files      that the script's reports consist of, by name; not yet written
 */
public record ScriptOutcome(Optional<Yard> yard, Optional<Assessment> assessment, SortedMap<String, byte[]> files) {

    public ScriptOutcome {
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    }

    /** What was found against that yard; empty also if it was not assessed. */
    public List<Finding> findings() {
        return assessment.map(Assessment::findings).orElse(List.of());
    }
}
