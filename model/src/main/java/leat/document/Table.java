package leat.document;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.quantity.Dimension;
import leat.model.quantity.Quantity;
import leat.model.quantity.Units;
import org.jspecify.annotations.Nullable;

/** Reads a standing table. They come with the program, so whatever is wrong in one is a defect of ours. */
final class Table {

    private Table() {}

    static List<Row> read(String edition, String name) {
        String file = edition + "/" + name + ".csv";
        try (InputStream stream = Table.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("the table " + file + " is missing");
            }
            List<Row> rows = new ArrayList<>();
            CsvReader.builder()
                    .ofNamedCsvRecord(stream, StandardCharsets.UTF_8)
                    .forEach(one -> rows.add(new Row(file, one)));
            return List.copyOf(rows);
        } catch (IOException e) {
            throw new IllegalStateException("the table " + file + " cannot be read", e);
        }
    }

    /** The things by key; a key that is used twice is a defect. */
    static <T> SortedMap<String, T> byKey(List<T> things, Function<T, String> key) {
        SortedMap<String, T> byKey = new TreeMap<>();
        for (T thing : things) {
            if (byKey.put(key.apply(thing), thing) != null) {
                throw new IllegalStateException("the standing tables use the key " + key.apply(thing) + " twice");
            }
        }
        return byKey;
    }

    /** One row; empty cells mean "not known" or "does not apply". */
    record Row(String file, NamedCsvRecord cells) {

        String text(String column) {
            return cells.findField(column)
                    .orElseThrow(() -> new IllegalStateException(file + " has no column " + column));
        }

        boolean has(String column) {
            return !text(column).isEmpty();
        }

        double number(String column) {
            try {
                return Double.parseDouble(text(column));
            } catch (NumberFormatException e) {
                throw fault(column, e);
            }
        }

        double number(String column, double otherwise) {
            return has(column) ? number(column) : otherwise;
        }

        /** A figure that carries its unit in the cell. */
        <Q extends Quantity> Q quantity(String column, Dimension dimension, Class<Q> type) {
            return type.cast(Units.parse(dimension, text(column)));
        }

        <E extends Enum<E>> E constant(String column, Class<E> type) {
            try {
                return Enum.valueOf(type, text(column));
            } catch (IllegalArgumentException e) {
                throw fault(column, e);
            }
        }

        Citation citation() {
            return citation(text("source"));
        }

        /** The standing of the row with a source that says more than the row's own. */
        Citation citation(String source) {
            String standing = text("standing");
            return Arrays.stream(Standing.values())
                    .filter(one -> !standing.isEmpty() && one.label().startsWith(standing))
                    .findFirst()
                    .map(one -> new Citation(source, one))
                    .orElseThrow(() -> fault("standing", null));
        }

        private IllegalStateException fault(String column, @Nullable Throwable cause) {
            String where = file + ", line " + cells.getStartingLineNumber() + ", " + column;
            return new IllegalStateException(where + ": '" + text(column) + "' cannot be read", cause);
        }
    }
}
