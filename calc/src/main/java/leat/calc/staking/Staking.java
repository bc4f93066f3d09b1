package leat.calc.staking;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Rule;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.plan.Site;
import leat.model.quantity.Angle;
import leat.model.quantity.Count;
import leat.model.site.Ground;
import leat.model.site.Survey;

/** The calculation that says where stakes are driven, and how each place is taped from corners that stand already. */
public final class Staking {

    private Staking() {}

    /** Stakes for all that is on the plan; those of trenches only where no other stake stands. */
    public static StakingResult run(Site site, StakingParameters parameters, Progress progress) {
        List<TapeMark> marks = TapeMarks.of(site.yard().terrain());
        List<StakePlaces.Wanted> wanted = StakePlaces.of(site.yard(), parameters.sameStake());
        var ties = new Ties(site, marks, parameters);
        Ground ground = site.yard().terrain().ground();
        Rule rule = site.rules().get("staking.crossing");
        List<Stake> stakes = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Status status = Status.COMPLETE;
        for (StakePlaces.Wanted one : wanted) {
            if (progress.stopped()) {
                status = Status.STOPPED;
                break;
            }
            progress.at((double) stakes.size() / wanted.size(), "stake " + one.label());
            Ties.Chosen chosen = ties.choose(one.at());
            stakes.add(new Stake(
                    one.label(),
                    one.kind(),
                    one.id(),
                    one.at(),
                    ground.levelFinished(one.at()),
                    one.phase(),
                    chosen.tie()));
            if (chosen.tie().isEmpty() && marks.size() >= 2) {
                findings.add(Finding.of(
                        rule,
                        Subject.of(one.id()),
                        Angle.radians(chosen.acuteRad()),
                        "set a peg of your own in sight of it, tie the peg to two marks, and tape from there"));
            }
        }
        if (!stakes.isEmpty() && marks.size() < 2) {
            findings.add(Finding.of(
                    site.rules().get("staking.marks"),
                    Subject.yard(),
                    Count.of(marks.size()),
                    "state the lot or a structure: their corners are marks"));
        }
        Point origin = site.yard().terrain().survey().map(Survey::start).orElse(new Point(0, 0));
        return new StakingResult(status, origin, marks, stakes, findings);
    }

    /**
     * How a tape of a stake came about, from the places on the plan; the last line equals the figure to the last bit.
     *
     * @param label  what is written on the stake
     * @param figure {@code first tape}, {@code second tape}, {@code check tape}, {@code crossing} or {@code within}
     * @throws InvalidValueException if there is no such stake or figure, or no two marks place the stake well
     */
    public static Ledger why(StakingResult result, StakingParameters parameters, String label, String figure) {
        Stake stake = StakeLedger.find(result, label)
                .orElseThrow(() -> new InvalidValueException(
                        "why", "stake", "'" + label + "'", "what is written on a stake of the plan"));
        return new StakeLedger(stake, parameters).of(figure);
    }
}
