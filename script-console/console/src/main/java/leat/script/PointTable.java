package leat.script;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.model.fault.InvalidValueException;
import leat.model.fault.LeatException;
import leat.model.plan.Part;
import leat.model.plan.Parts;
import leat.model.plan.Place;
import leat.model.quantity.Length;

/**
 * Surveyed points in a CSV file. The first line names the columns, with the unit of a length in brackets:
 * {@code name, east (ft), north (ft)} for corners of shapes, {@code east (m), north (m), level (m)} for heights.
 * Columns stand in any order, others are passed over, lines that start with # too.
 */
final class PointTable {

    private static final Pattern HEAD = Pattern.compile("\\s*([^(]*?)\\s*(?:\\(\\s*(\\S+)\\s*\\))?\\s*");

    private final String file;
    private final Map<String, Column> columns = new LinkedHashMap<>();
    private final List<CsvRecord> rows = new ArrayList<>();

    /** Where a column stands, and the unit of its figures; empty for text. */
    private record Column(int index, String unit) {}

    /** @throws LeatException if the text is no table with the columns named in its first line */
    PointTable(String file, String text) {
        this.file = file;
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            for (CsvRecord row : reader) {
                rows.add(row);
            }
        } catch (CsvParseException | IOException broken) {
            throw new LeatException(file + " is no table of comma-separated values", broken);
        }
        if (rows.isEmpty()) {
            throw new LeatException(file + " is empty; its first line must name the columns");
        }
        readHead(rows.remove(0));
    }

    private void readHead(CsvRecord head) {
        for (int i = 0; i < head.getFieldCount(); i++) {
            Matcher field = HEAD.matcher(head.getField(i));
            if (field.matches()) {
                columns.put(field.group(1), new Column(i, field.group(2) == null ? "" : field.group(2)));
            }
        }
    }

    /** The points whose {@code name} is the wanted one, in the order of the file. */
    List<Place> points(String name) {
        TreeSet<String> names = new TreeSet<>();
        List<Place> points = new ArrayList<>();
        for (CsvRecord row : rows) {
            String rowName = text(row, "name");
            names.add(rowName);
            if (rowName.equals(name)) {
                points.add(place(row));
            }
        }
        if (points.isEmpty()) {
            throw new LeatException(file + ": there is no '" + name + "'" + Hint.nearestOrAll(name, names));
        }
        return points;
    }

    /** Each point with its {@code level} as a part. */
    Part levels(boolean finished) {
        Part[] parts = rows.stream()
                .map(row -> finished
                        ? Parts.finishedLevel(place(row), length(row, "level"))
                        : Parts.level(place(row), length(row, "level")))
                .toArray(Part[]::new);
        return Parts.group(parts);
    }

    private Place place(CsvRecord row) {
        return Parts.at(length(row, "east"), length(row, "north"));
    }

    private Length length(CsvRecord row, String name) {
        String cell = text(row, name);
        String unit = column(name).unit();
        if (unit.isEmpty()) {
            throw new LeatException(
                    file + ":1: the column " + name + " has no unit; write " + name + " (ft) or " + name + " (m)");
        }
        try {
            return Length.parse(cell + " " + unit);
        } catch (InvalidValueException noLength) {
            throw new LeatException(
                    file + ":" + row.getStartingLineNumber() + ": " + name + " is '" + cell + "' in '" + unit
                            + "'; it must be a number in a unit of length, such as ft or m",
                    noLength);
        }
    }

    private String text(CsvRecord row, String name) {
        int index = column(name).index();
        if (index >= row.getFieldCount()) {
            throw new LeatException(file + ":" + row.getStartingLineNumber() + ": the line has no " + name);
        }
        return row.getField(index).strip();
    }

    private Column column(String name) {
        Column column = columns.get(name);
        if (column == null) {
            throw new LeatException(
                    file + ":1: there is no column " + name + Hint.nearestOrAll(name, columns.keySet()));
        }
        return column;
    }
}
