package leat.calc.staking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.staking.internal.TwoTapes;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;

/** Tells how the tapes of a stake came about. */
final class StakeLedger {

    static final List<String> FIGURES = List.of("first tape", "second tape", "check tape", "crossing", "within");

    private static final Citation PLANE = new Citation("geometry, docs/theory/staking.md", Standing.RECOMPUTED);
    private static final Citation PLAN = new Citation("the plan", Standing.RECOMPUTED);

    private final Stake stake;
    private final StakingParameters parameters;
    private final List<Step> steps = new ArrayList<>();

    StakeLedger(Stake stake, StakingParameters parameters) {
        this.stake = stake;
        this.parameters = parameters;
    }

    Ledger of(String figure) {
        TwoTapeTie tie = stake.tie().orElseThrow(() -> refused("tie", "none", "placed well by two marks that it sees"));
        switch (figure) {
            case "first tape" -> addTape("the first mark", tie.first());
            case "second tape" -> addTape("the second mark", tie.second());
            case "check tape" ->
                addTape(
                        "the check mark",
                        tie.check().orElseThrow(() -> refused("check tape", "none", "in sight of a third mark")));
            case "crossing" -> addCrossing(tie);
            case "within" -> addWithin(tie);
            default ->
                throw new InvalidValueException(
                        "why",
                        "figure",
                        "'" + figure + "'",
                        String.join(", ", FIGURES) + Nearest.hint(figure, FIGURES));
        }
        return new Ledger(Subject.of(stake.id()), figure, steps);
    }

    private InvalidValueException refused(String field, String value, String allowed) {
        return new InvalidValueException("stake " + stake.label(), field, value, allowed);
    }

    private Length addTape(String which, TapeTo tape) {
        Point from = tape.mark().at();
        Point to = stake.at();
        Length east = to.east().minus(from.east());
        Length north = to.north().minus(from.north());
        steps.add(new Step(
                "the stake from " + tape.mark().name() + ", to the east",
                "stake - mark",
                List.of(new Step.Input("stake", to.east()), new Step.Input("mark", from.east())),
                east,
                PLAN));
        steps.add(new Step(
                "the same to the north",
                "stake - mark",
                List.of(new Step.Input("stake", to.north()), new Step.Input("mark", from.north())),
                north,
                PLAN));
        Length level = new Length(from.distanceM(to));
        steps.add(new Step(
                "tape from " + which + ", held level",
                "√(east² + north²)",
                List.of(new Step.Input("east", east), new Step.Input("north", north)),
                level,
                PLANE));
        return level;
    }

    private Angle addCrossing(TwoTapeTie tie) {
        addTape("the first mark", tie.first());
        addTape("the second mark", tie.second());
        Point at = stake.at();
        Point one = tie.first().mark().at();
        Point other = tie.second().mark().at();
        Angle crossing =
                Angle.radians(TwoTapes.crossingRad(at.xM(), at.yM(), one.xM(), one.yM(), other.xM(), other.yM()));
        steps.add(
                new Step("angle between the two tapes at the stake", "atan2(cross, dot)", List.of(), crossing, PLANE));
        return crossing;
    }

    private void addWithin(TwoTapeTie tie) {
        Angle crossing = addCrossing(tie);
        Length first = off("first", tie.first());
        Length second = off("second", tie.second());
        steps.add(new Step(
                "how far off the place may be",
                "√(first² + second²) / sin(crossing)",
                List.of(
                        new Step.Input("first", first),
                        new Step.Input("second", second),
                        new Step.Input("crossing", crossing)),
                tie.accuracy(),
                PLANE));
    }

    private Length off(String which, TapeTo tape) {
        Length off = new Length(parameters.reading().metres()
                + parameters.perLength().value() * tape.level().metres());
        steps.add(new Step(
                "what the " + which + " tape may be off",
                "reading + share · length",
                List.of(
                        new Step.Input("reading", parameters.reading()),
                        new Step.Input("share", parameters.perLength()),
                        new Step.Input("length", tape.level())),
                off,
                new Citation("two people with a builder's tape", Standing.COMMON_PRACTICE)));
        return off;
    }

    static Optional<Stake> find(StakingResult result, String label) {
        return result.stakes().stream()
                .filter(stake -> stake.label().equals(label))
                .findFirst();
    }
}
