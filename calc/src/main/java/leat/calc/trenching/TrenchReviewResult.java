package leat.calc.trenching;

import java.util.List;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;

/**
 * How much is dug, and what is wrong with it.
 *
 * @param trenches   length of all trenches
 * @param byHand     of which by hand
 * @param pipes      length of all pipes that are new
 * @param shareSaved of the digging, against a trench of its own for each pipe; 0 where no pipe lies in a trench
 */
public record TrenchReviewResult(
        Status status, Length trenches, Length byHand, Length pipes, Ratio shareSaved, List<Finding> findings) {

    public TrenchReviewResult {
        findings = List.copyOf(findings);
    }
}
