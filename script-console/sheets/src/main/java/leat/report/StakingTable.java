package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.staking.Stake;
import leat.calc.staking.StakingResult;
import leat.calc.staking.TapeMark;
import leat.calc.staking.TapeTo;
import leat.calc.staking.TwoTapeTie;
import leat.model.quantity.Angle;
import leat.model.quantity.Dimension;
import leat.model.quantity.UnitSystem;

/** Where each stake stands and how it is taped; the marks that tapes are held at. */
final class StakingTable {

    /** What stands above the table. */
    static final String ABOUT =
            "East and north count from the corner that the survey starts at. Tapes are held level, with a"
                    + " plumb line at the low end: a tape that lies on a slope reads too much. A stake is where both tapes meet, on"
                    + " the side stated when looking from the first mark to the second; the check must fit as well.";

    private StakingTable() {}

    static Table stakes(StakingResult staking, UnitSystem units) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Stake stake : staking.stakes()) {
            List<Cell> row = new ArrayList<>(List.of(
                    Cell.text(stake.label()),
                    Cell.text(stake.id().kind()),
                    TapeWords.coordinate(staking.east(stake), units),
                    TapeWords.coordinate(staking.north(stake), units),
                    TapeWords.coordinate(stake.level(), units)));
            row.addAll(tie(stake.tie(), units));
            row.add(Cell.when(stake.phase()));
            rows.add(row);
        }
        return new Table(columns(units), rows);
    }

    private static List<String> columns(UnitSystem units) {
        return List.of(
                "stake",
                "for",
                Table.head("east", Dimension.LENGTH, units),
                Table.head("north", Dimension.LENGTH, units),
                Table.head("level", Dimension.LENGTH, units),
                "first mark",
                TapeWords.tapeHead("first tape", units),
                "second mark",
                TapeWords.tapeHead("second tape", units),
                "side",
                "check mark",
                TapeWords.tapeHead("check tape", units),
                Table.head("crossing", Dimension.ANGLE, units),
                "within, " + Words.smallUnit(units),
                "when");
    }

    private static List<Cell> tie(Optional<TwoTapeTie> tie, UnitSystem units) {
        return List.of(
                mark(tie.map(TwoTapeTie::first)),
                tape(tie.map(TwoTapeTie::first), units),
                mark(tie.map(TwoTapeTie::second)),
                tape(tie.map(TwoTapeTie::second), units),
                tie.map(one -> Cell.text(one.side().label())).orElse(Cell.UNKNOWN),
                mark(tie.flatMap(TwoTapeTie::check)),
                tape(tie.flatMap(TwoTapeTie::check), units),
                tie.map(one -> Cell.figure(whole(one.crossing()), units)).orElse(Cell.UNKNOWN),
                tie.map(one -> Cell.small(one.accuracy(), units)).orElse(Cell.UNKNOWN));
    }

    private static Cell mark(Optional<TapeTo> tape) {
        return tape.map(one -> Cell.text(one.mark().name())).orElse(Cell.UNKNOWN);
    }

    private static Cell tape(Optional<TapeTo> tape, UnitSystem units) {
        return tape.map(one -> TapeWords.tape(one.level(), units)).orElse(Cell.UNKNOWN);
    }

    private static Angle whole(Angle angle) {
        return Angle.degrees(Math.rint(angle.degrees()));
    }

    static Table marks(StakingResult staking, UnitSystem units) {
        List<List<Cell>> rows = new ArrayList<>();
        for (TapeMark mark : staking.marks()) {
            rows.add(List.of(
                    Cell.text(mark.name()),
                    TapeWords.coordinate(mark.at().east().minus(staking.origin().east()), units),
                    TapeWords.coordinate(
                            mark.at().north().minus(staking.origin().north()), units)));
        }
        return new Table(
                List.of(
                        "mark",
                        Table.head("east", Dimension.LENGTH, units),
                        Table.head("north", Dimension.LENGTH, units)),
                rows);
    }
}
