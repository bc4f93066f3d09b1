package leat.script;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leat.model.catalog.Price;
import leat.model.catalog.PriceBook;
import leat.model.fault.InvalidValueException;
import leat.model.fault.LeatException;

/**
 * Prices in a CSV file. The first line names the columns {@code key, unit, price, currency, source, date}, in any order
 * and no others; lines that start with # are passed over. docs/reference/prices.md says what may stand in each.
 */
final class PriceTable {

    private static final List<String> COLUMNS = List.of("key", "unit", "price", "currency", "source", "date");

    private final String file;
    private final Map<String, Integer> columns = new HashMap<>();
    private final Map<String, Long> lineOf = new TreeMap<>();
    private final List<Price> prices = new ArrayList<>();

    private PriceTable(String file) {
        this.file = file;
    }

    /** @throws LeatException with file and line if the text is no table of prices */
    static PriceBook read(String file, String text) {
        PriceTable table = new PriceTable(file);
        List<CsvRecord> rows = table.rows(text);
        if (rows.isEmpty()) {
            throw new LeatException(file + " is empty; its first line must name the columns " + names(COLUMNS));
        }
        table.head(rows.get(0));
        rows.subList(1, rows.size()).forEach(table::row);
        return new PriceBook(table.prices);
    }

    private List<CsvRecord> rows(String text) {
        List<CsvRecord> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            reader.forEach(rows::add);
        } catch (CsvParseException | IOException broken) {
            throw new LeatException(file + " is no table of comma-separated values", broken);
        }
        return rows;
    }

    private void head(CsvRecord head) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < head.getFieldCount(); i++) {
            String name = head.getField(i).strip();
            found.add(name);
            columns.put(name, i);
        }
        List<String> missing =
                COLUMNS.stream().filter(name -> !found.contains(name)).toList();
        List<String> strange =
                found.stream().filter(name -> !COLUMNS.contains(name)).toList();
        if (!missing.isEmpty() || !strange.isEmpty() || columns.size() < found.size()) {
            throw new LeatException(file + ":" + head.getStartingLineNumber() + ": the columns are " + names(found)
                    + "; they must be " + names(COLUMNS)
                    + (missing.isEmpty() ? "" : ". Missing: " + names(missing))
                    + (strange.isEmpty() ? "" : ". Not known: " + names(strange)));
        }
    }

    private void row(CsvRecord row) {
        long line = row.getStartingLineNumber();
        if (row.getFieldCount() != columns.size()) {
            throw new LeatException(file + ":" + line + ": the line has " + row.getFieldCount()
                    + " fields; it must have " + columns.size());
        }
        Price price;
        try {
            price = Price.of(
                    field(row, "key"),
                    field(row, "unit"),
                    field(row, "price"),
                    field(row, "currency"),
                    field(row, "source"),
                    field(row, "date"));
        } catch (InvalidValueException refused) {
            throw new LeatException(file + ":" + line + ": " + refused.getMessage(), refused);
        }
        Long before = lineOf.putIfAbsent(price.key(), line);
        if (before != null) {
            throw new LeatException(file + ":" + line + ": '" + price.key() + "' has a price on line " + before
                    + " already; it must have one");
        }
        requireOneCurrency(price, line);
        prices.add(price);
    }

    private void requireOneCurrency(Price price, long line) {
        if (!prices.isEmpty() && !prices.get(0).currency().equals(price.currency())) {
            Price first = prices.get(0);
            throw new LeatException(file + ":" + line + ": the price of '" + price.key() + "' is in " + price.currency()
                    + "; it must be in " + first.currency() + " as on line " + lineOf.get(first.key()));
        }
    }

    private String field(CsvRecord row, String name) {
        return row.getField(columns.getOrDefault(name, 0)).strip();
    }

    private static String names(List<String> columns) {
        return String.join(", ", columns);
    }
}
