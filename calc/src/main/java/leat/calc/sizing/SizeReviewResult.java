package leat.calc.sizing;

import java.util.List;
import leat.model.fault.Require;
import leat.model.finding.Finding;
import leat.model.finding.Status;

/** Pipes that are larger than the one that feeds them. */
public record SizeReviewResult(Status status, List<Finding> findings) {

    public SizeReviewResult {
        Require.present("size review", "status", status);
        findings = List.copyOf(findings);
    }
}
