package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.model.quantity.Dimension;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/**
 * A schedule, the same in the page and in the file for other programs.
 *
 * @param columns heads, with the unit where the column has figures
 * @param rows each as long as the columns
 */
record Table(List<String> columns, List<List<Cell>> rows) {

    Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (List<Cell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "table: a row has " + row.size() + " fields; it must have " + columns.size());
            }
        }
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** A head with its unit, such as {@code radius, ft}. */
    static String head(String name, Dimension dimension, UnitSystem units) {
        String symbol = Units.symbol(dimension, units);
        return symbol.isEmpty() ? name : name + ", " + symbol;
    }

    /** The same without columns in which no row says anything. */
    Table withoutEmptyColumns() {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            if (rows.isEmpty()
                    || rows.stream().anyMatch(row -> !row.get(column).text().isEmpty())) {
                kept.add(i);
            }
        }
        return new Table(
                kept.stream().map(columns::get).toList(),
                rows.stream().map(row -> kept.stream().map(row::get).toList()).toList());
    }
}
