package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.calc.assess.Assessment;
import leat.calc.digging.DigSaving;
import leat.calc.digging.DigTotals;
import leat.calc.digging.DiggingResult;
import leat.model.plan.Yard;
import leat.model.quantity.Dimension;
import leat.model.quantity.UnitSystem;

/** Trenches as they are dug, and the stakes to dig and build by. */
final class GroundSections {

    private static final String TRENCHES = "trench-list";

    private GroundSections() {}

    static List<Section> of(Assessment assessment) {
        UnitSystem units = assessment.yard().units();
        DiggingResult digging = assessment.digging();
        Table trenches = DiggingTable.of(digging, units);
        return List.of(
                Section.of(Chapter.GROUND, TRENCHES, "Trench schedule")
                        .say("Depth is from finished grade to the bottom. What lies in a trench is named from the"
                                + " bottom; a stroke parts one layer from the next, and cover is counted to the top of"
                                + " each thing in the same order. Where it does not say by hand, a machine may dig.")
                        .say(saving(digging.saving(), units))
                        .table("Trenches", trenches)
                        .table("All together", totals(digging, units))
                        .file("trenches.csv", trenches),
                Section.of(Chapter.GROUND, "staking", "Staking sheet")
                        .say(StakingTable.ABOUT)
                        .table("Stakes", StakingTable.stakes(assessment.staking(), units))
                        .table("Marks that tapes are held at", StakingTable.marks(assessment.staking(), units))
                        .file("staking.csv", StakingTable.stakes(assessment.staking(), units)));
    }

    /** Without calculations there are only routes and depths. */
    static List<Section> of(Yard yard, ReportFigures figures) {
        Table trenches = new Schedules(yard, figures).trenches();
        return List.of(Section.of(Chapter.GROUND, TRENCHES, "Trench list")
                .say("Depth is from finished grade to the bottom. Where it does not say by hand, a machine may dig.")
                .table("", trenches)
                .file("trenches.csv", trenches));
    }

    private static String saving(DigSaving saving, UnitSystem units) {
        return saving.separate().metres() == 0
                ? ""
                : "If each thing had a trench of its own, " + Words.show(saving.separate(), units)
                        + " would be dug; sharing saves " + Words.show(saving.ofLength(), units) + " of that length.";
    }

    private static Table totals(DiggingResult digging, UnitSystem units) {
        List<String> columns = List.of(
                "when",
                Table.head("length on the ground", Dimension.LENGTH, units),
                Table.head("of it by hand", Dimension.LENGTH, units),
                Table.head("earth as it lies", Dimension.VOLUME, units),
                Table.head("loose", Dimension.VOLUME, units),
                Table.head("bedding", Dimension.VOLUME, units),
                Table.head("backfill", Dimension.VOLUME, units),
                Table.head("left over, loose", Dimension.VOLUME, units));
        List<List<Cell>> rows = new ArrayList<>();
        digging.byPhase().forEach((phase, totals) -> rows.add(total(Cell.when(phase), totals, units)));
        if (digging.byPhase().size() > 1) {
            rows.add(total(Cell.text("in all"), digging.total(), units));
        }
        return new Table(columns, rows);
    }

    private static List<Cell> total(Cell name, DigTotals totals, UnitSystem units) {
        return List.of(
                name,
                Cell.figure(totals.onGround(), units),
                Cell.figure(totals.byHand(), units),
                Cell.figure(totals.bank(), units),
                Cell.figure(totals.loose(), units),
                Cell.figure(totals.bedding(), units),
                Cell.figure(totals.backfill(), units),
                Cell.figure(totals.leftOver(), units));
    }
}
