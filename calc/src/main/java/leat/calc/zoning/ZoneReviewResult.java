package leat.calc.zoning;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.id.ZoneId;
import leat.model.quantity.Count;
import leat.model.quantity.Flow;
import leat.model.quantity.Ratio;

/** What each zone draws, and what is wrong with the zones. */
public record ZoneReviewResult(Status status, SortedMap<ZoneId, Figures> zones, List<Finding> findings) {

    public ZoneReviewResult {
        zones = Collections.unmodifiableSortedMap(new TreeMap<>(zones));
        findings = List.copyOf(findings);
    }

    /**
     * Figures of one zone.
     *
     * @param flow       of all its heads at their reference pressures
     * @param safeFlow   what a zone there may take; empty if nothing is known that limits it
     * @param heads      how many
     * @param rateSpread largest over least precipitation rate of its heads, at least 1
     */
    public record Figures(Flow flow, Optional<Flow> safeFlow, Count heads, Ratio rateSpread) {}
}
