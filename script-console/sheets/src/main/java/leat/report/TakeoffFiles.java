package leat.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.calc.budget.BudgetResult;
import leat.model.quantity.UnitSystem;

/** The files of materials and money: for a shop, for a spreadsheet, for other programs. */
final class TakeoffFiles {

    private TakeoffFiles() {}

    /** {@code materials.csv}, {@code cuts.csv}, {@code budget.csv} and {@code materials.xlsx}, which has all three. */
    static SortedMap<String, byte[]> of(Assessment assessment) {
        UnitSystem units = assessment.yard().units();
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("materials.csv", Csv.write(MaterialTables.materials(assessment.takeoff(), units)));
        files.put("cuts.csv", Csv.write(MaterialTables.cuts(assessment.takeoff(), units)));
        files.put("budget.csv", Csv.write(budget(assessment.budget(), units)));
        files.put("materials.xlsx", MaterialWorkbook.write(assessment));
        return Collections.unmodifiableSortedMap(files);
    }

    /** The lines, and below them the sums as rows of the same columns. */
    private static Table budget(BudgetResult budget, UnitSystem units) {
        Table lines = BudgetTables.lines(budget, units);
        List<List<Cell>> rows = new ArrayList<>(lines.rows());
        Table sums = BudgetTables.sums(budget);
        int amount = lines.columns().indexOf("amount");
        int currency = lines.columns().indexOf("currency");
        for (List<Cell> sum : sums.rows()) {
            for (String what : List.of("goods", "labour", "tax", "contingency", "total")) {
                List<Cell> row =
                        new ArrayList<>(Collections.nCopies(lines.columns().size(), Cell.UNKNOWN));
                row.set(0, sum.get(0));
                row.set(1, Cell.text("sum"));
                row.set(2, Cell.text(what));
                row.set(amount, sum.get(sums.columns().indexOf(what)));
                row.set(currency, sum.get(sums.columns().indexOf("currency")));
                row.set(row.size() - 1, what.equals("total") ? sum.get(sum.size() - 1) : Cell.UNKNOWN);
                rows.add(row);
            }
        }
        return new Table(lines.columns(), rows);
    }
}
