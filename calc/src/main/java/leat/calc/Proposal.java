package leat.calc;

import java.util.List;
import leat.model.fault.Require;
import leat.model.finding.Bound;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.plan.Yard;

/**
 * What a stage answers: a yard in which its planned aspects are new and all else is as it was.
 *
 * @param bounds  proof beside the answer, one for each thing that was minimised; may be empty
 * @param reasons for what was left undone
 */
public record Proposal(Yard yard, Status status, List<Bound> bounds, List<Reason> reasons) {

    public Proposal {
        Require.present("proposal", "yard", yard);
        Require.present("proposal", "status", status);
        bounds = List.copyOf(bounds);
        reasons = List.copyOf(reasons);
    }
}
