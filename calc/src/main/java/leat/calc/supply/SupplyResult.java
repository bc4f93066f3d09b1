package leat.calc.supply;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Finding;
import leat.model.id.PipeId;
import leat.model.water.Water;

/** Which water each pipe carries, and what is wrong with how the system hangs together. */
public record SupplyResult(SortedMap<PipeId, Water> water, List<Finding> findings) {

    public SupplyResult {
        water = Collections.unmodifiableSortedMap(new TreeMap<>(water));
        findings = List.copyOf(findings);
    }
}
