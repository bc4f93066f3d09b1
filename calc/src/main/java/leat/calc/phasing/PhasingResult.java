package leat.calc.phasing;

import java.util.List;
import leat.model.finding.Finding;
import leat.model.finding.Status;

/**
 * What the phases of a plan mean for this year's works.
 *
 * @param ends of what is laid now and leads on later, by the thing that ends: capped, boxed, tagged
 */
public record PhasingResult(Status status, List<EarlyEnd> ends, List<Finding> findings) {

    public PhasingResult {
        ends = List.copyOf(ends);
        findings = List.copyOf(findings);
    }
}
