package leat.document;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.model.fault.LeatException;

/** The first line of a table of climate: where each column stands and in which unit. */
final class ClimateHead {

    private static final Pattern FIELD = Pattern.compile("\\s*([^(]*?)\\s*(?:\\(\\s*(\\S+)\\s*\\))?\\s*");

    private final String file;
    private final Map<ClimateColumn, Integer> indexes = new EnumMap<>(ClimateColumn.class);
    private final Map<ClimateColumn, ClimateUnit> units = new EnumMap<>(ClimateColumn.class);

    private ClimateHead(String file) {
        this.file = file;
    }

    static ClimateHead read(String file, CsvRecord line) {
        ClimateHead head = new ClimateHead(file);
        for (int i = 0; i < line.getFieldCount(); i++) {
            Matcher field = FIELD.matcher(line.getField(i));
            if (field.matches()) {
                head.put(i, field.group(1), Optional.ofNullable(field.group(2)).orElse(""));
            }
        }
        for (ClimateColumn column : ClimateColumn.values()) {
            if (column.isNeeded() && !head.indexes.containsKey(column)) {
                throw head.fault("there is no column " + withUnit(column));
            }
        }
        return head;
    }

    private void put(int index, String title, String unit) {
        ClimateColumn column = Arrays.stream(ClimateColumn.values())
                .filter(one -> one.title().equals(title))
                .findFirst()
                .orElseThrow(() ->
                        fault("'" + title + "' is no column of a climate; it must be " + Words.oneOf(title, titles())));
        if (indexes.put(column, index) != null) {
            throw fault("the column " + title + " stands there twice");
        }
        if (!column.units().isEmpty()) {
            units.put(column, unit(column, unit));
        }
    }

    private ClimateUnit unit(ClimateColumn column, String symbol) {
        String wanted = symbol.replace("°", "").replace("²", "2");
        return column.units().stream()
                .filter(unit -> unit.symbol().equals(wanted))
                .findFirst()
                .orElseThrow(() -> fault("the column " + column.title()
                        + (symbol.isEmpty() ? " has no unit" : " has the unit '" + symbol + "'") + "; write "
                        + withUnit(column)));
    }

    private static String withUnit(ClimateColumn column) {
        return column.units().stream()
                .map(unit -> column.title() + " (" + unit.symbol() + ")")
                .reduce((one, other) -> one + " or " + other)
                .orElse(column.title());
    }

    private static List<String> titles() {
        return Arrays.stream(ClimateColumn.values()).map(ClimateColumn::title).toList();
    }

    private LeatException fault(String complaint) {
        return new LeatException(file + ":1: " + complaint);
    }

    Optional<Integer> index(ClimateColumn column) {
        return Optional.ofNullable(indexes.get(column));
    }

    ClimateUnit unit(ClimateColumn column) {
        return Optional.ofNullable(units.get(column)).orElseThrow();
    }
}
