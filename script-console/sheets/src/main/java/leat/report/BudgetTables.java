package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leat.calc.budget.BudgetLine;
import leat.calc.budget.BudgetResult;
import leat.calc.budget.BudgetSum;
import leat.calc.budget.Purchase;
import leat.calc.takeoff.MaterialLine;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.site.Phase;
import org.joda.money.Money;

/** What all costs, as tables. */
final class BudgetTables {

    private BudgetTables() {}

    /** A row for each line, priced or not. */
    static Table lines(BudgetResult budget, UnitSystem units) {
        List<String> columns = List.of(
                "when",
                "kind",
                "material",
                "needed",
                "unit",
                "waste, %",
                "bought",
                "price unit",
                "price",
                "amount",
                "currency",
                "source",
                "date",
                "note");
        List<List<Cell>> rows = new ArrayList<>();
        for (BudgetLine line : budget.lines()) {
            MaterialLine material = line.material();
            List<Cell> row = new ArrayList<>(List.of(
                    Cell.when(material.phase()),
                    Cell.text(material.kind().label()),
                    Cell.text(material.key()),
                    Cell.figure(material.quantity(), units),
                    Cell.text(MaterialTables.unit(material.quantity(), units)),
                    Cell.figure(line.waste(), units)));
            row.addAll(line.purchase().map(BudgetTables::purchase).orElse(OPEN));
            row.add(Cell.text(line.note()));
            rows.add(row);
        }
        return new Table(columns, rows);
    }

    private static final List<Cell> OPEN =
            List.of(Cell.UNKNOWN, Cell.UNKNOWN, Cell.UNKNOWN, Cell.UNKNOWN, Cell.UNKNOWN, Cell.UNKNOWN, Cell.UNKNOWN);

    private static List<Cell> purchase(Purchase purchase) {
        return List.of(
                new Cell(purchase.count().toPlainString(), true),
                Cell.text(purchase.price().unit().symbol()),
                new Cell(purchase.price().digits(), true),
                money(purchase.amount()),
                Cell.text(purchase.price().currency()),
                Cell.text(purchase.price().source()),
                Cell.text(purchase.price().date().toString()));
    }

    /** Sums by phase and of all; empty while there is no price. The last column says what a total leaves out. */
    static Table sums(BudgetResult budget) {
        List<String> columns =
                List.of("when", "goods", "labour", "tax", "contingency", "total", "currency", "without a price");
        List<List<Cell>> rows = new ArrayList<>();
        for (Map.Entry<Phase, BudgetSum> phase : budget.byPhase().entrySet()) {
            rows.add(sum(Words.when(phase.getKey()), phase.getValue()));
        }
        if (budget.byPhase().size() > 1) {
            budget.total().ifPresent(total -> rows.add(sum("in all", total)));
        }
        return new Table(columns, rows);
    }

    private static List<Cell> sum(String name, BudgetSum sum) {
        Quantity missing = sum.withoutPrice();
        return List.of(
                Cell.text(name),
                money(sum.goods()),
                money(sum.labour()),
                money(sum.tax()),
                money(sum.contingency()),
                money(sum.total()),
                Cell.text(sum.goods().getCurrencyUnit().getCode()),
                Cell.text(sum.isComplete() ? "" : "incomplete: " + Page.plural((long) missing.si(), "line", "lines")));
    }

    private static Cell money(Money money) {
        return new Cell(money.getAmount().toPlainString(), true);
    }
}
