package leat.calc.staking;

import java.util.List;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.geometry.Point;
import leat.model.quantity.Length;

/**
 * The stakes of a plan.
 *
 * @param origin the corner that the survey starts at; east and north of a stake count from it. The yard's datum where
 *     there is no survey
 * @param marks  that tapes are held at, by name
 * @param stakes by kind, then by label
 */
public record StakingResult(
        Status status, Point origin, List<TapeMark> marks, List<Stake> stakes, List<Finding> findings) {

    public StakingResult {
        marks = List.copyOf(marks);
        stakes = List.copyOf(stakes);
        findings = List.copyOf(findings);
    }

    /** How far the stake lies to the east of the origin; negative to the west. */
    public Length east(Stake stake) {
        return stake.at().east().minus(origin.east());
    }

    /** How far the stake lies to the north of the origin; negative to the south. */
    public Length north(Stake stake) {
        return stake.at().north().minus(origin.north());
    }
}
