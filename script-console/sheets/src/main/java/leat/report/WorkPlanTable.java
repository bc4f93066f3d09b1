package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leat.calc.workplan.WorkKind;
import leat.calc.workplan.WorkPlanResult;
import leat.calc.workplan.WorkStep;
import leat.model.id.Id;
import leat.model.quantity.Count;
import leat.model.quantity.Quantity;
import leat.model.quantity.Unit;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/** In which order the works are done, phase by phase, for other programs. */
final class WorkPlanTable {

    private WorkPlanTable() {}

    /** All phases one below the other. */
    static Table all(WorkPlanResult plan, UnitSystem units) {
        List<List<Cell>> rows = new ArrayList<>();
        plan.steps()
                .forEach((phase, steps) -> steps.forEach(step -> {
                    List<Cell> row = new ArrayList<>(row(step, units));
                    row.add(0, Cell.when(phase));
                    rows.add(row);
                }));
        return new Table(List.of("when", "step", "what to do", "part", "to what", "figure", "by", "after"), rows);
    }

    private static List<Cell> row(WorkStep step, UnitSystem units) {
        return List.of(
                number(step.number()),
                Cell.text(step.kind().label()),
                Cell.text(step.part()),
                Cell.text(step.subjects().stream().map(Id::name).distinct().collect(Collectors.joining(", "))),
                Cell.text(figure(step.kind(), step.figure(), units)),
                Cell.text(step.kind().isForOthers() ? step.kind().worker().label() : ""),
                Cell.text(step.after().stream().map(WorkPlanTable::plain).collect(Collectors.joining(", "))));
    }

    private static Cell number(Count count) {
        return new Cell(plain(count), true);
    }

    private static String plain(Count count) {
        return Integer.toString((int) count.value());
    }

    private static String figure(WorkKind kind, Optional<Quantity> figure, UnitSystem units) {
        if (kind == WorkKind.NOTICE) {
            return figure.map(one -> plain((Count) one) + " working days before")
                    .orElse("");
        }
        if (kind == WorkKind.TEST_MAIN) {
            Unit unit = units == UnitSystem.US ? Unit.GALLON : Unit.LITRE;
            return figure.map(one -> Units.showIn(unit, 1, one) + " of water").orElse("");
        }
        return figure.map(one -> Words.show(one, units)).orElse("");
    }
}
