package leat.calc.digging;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.id.SegmentId;
import leat.model.site.Phase;

/**
 * Every trench as it is dug.
 *
 * @param trenches by name
 * @param byPhase  a phase in which nothing is dug is not there
 * @param total    of all phases
 */
public record DiggingResult(
        Status status,
        SortedMap<SegmentId, TrenchDig> trenches,
        SortedMap<Phase, DigTotals> byPhase,
        DigTotals total,
        DigSaving saving,
        List<Finding> findings) {

    public DiggingResult {
        trenches = Collections.unmodifiableSortedMap(new TreeMap<>(trenches));
        byPhase = Collections.unmodifiableSortedMap(new TreeMap<>(byPhase));
        findings = List.copyOf(findings);
    }

    public Optional<TrenchDig> trench(SegmentId id) {
        return Optional.ofNullable(trenches.get(id));
    }
}
