package leat.document;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leat.model.fault.InvalidValueException;
import leat.model.fault.LeatException;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Velocity;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import leat.model.water.Sunshine;

/**
 * A climate in a CSV file: twelve lines, one a month. The first line names the columns, with the unit in brackets; lines
 * that start with # are passed over. Needed are {@code latitude (deg)}, {@code altitude (m)}, {@code month}, {@code low (C)}
 * and {@code high (C)}; the others are those of {@link ClimateColumn}. An empty cell means that the figure is not known.
 */
public final class ClimateTable {

    private final String file;
    private final ClimateHead head;
    private final List<CsvRecord> rows;

    private ClimateTable(String file, List<CsvRecord> all) {
        this.file = file;
        if (all.isEmpty()) {
            throw new LeatException(file + " is empty; its first line must name the columns");
        }
        head = ClimateHead.read(file, all.get(0));
        rows = all.subList(1, all.size());
    }

    /**
     * The climate in that text.
     *
     * @param file for messages, and the name of the place
     * @throws LeatException if a column or a month is missing or given twice, or a figure cannot be; names file, line and
     *     month
     */
    public static Climate read(String text, String file) {
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
        return new ClimateTable(file, rows).climate();
    }

    private Climate climate() {
        Map<Month, Long> lines = new EnumMap<>(Month.class);
        List<ClimateMonth> months = new ArrayList<>();
        for (CsvRecord row : rows) {
            Month month = month(row);
            Long before = lines.put(month, row.getStartingLineNumber());
            if (before != null) {
                throw new LeatException(place(row) + ClimateMonth.name(month) + " stands in line " + before
                        + " already; each month must have one line");
            }
            months.add(month(row, month));
        }
        refuseGaps(lines);
        CsvRecord first = rows.get(0);
        try {
            return new Climate(
                    file,
                    Angle.degrees(
                            needed(first, ClimateColumn.LATITUDE, months.get(0).month())),
                    Length.metres(
                            needed(first, ClimateColumn.ALTITUDE, months.get(0).month())),
                    months);
        } catch (InvalidValueException fault) {
            throw new LeatException(place(first) + fault.getMessage(), fault);
        }
    }

    private void refuseGaps(Map<Month, Long> lines) {
        String missing = Arrays.stream(Month.values())
                .filter(month -> !lines.containsKey(month))
                .map(ClimateMonth::name)
                .collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            throw new LeatException(file
                    + ": the year has gaps; there must be a line for each month, and none is there for " + missing);
        }
    }

    private ClimateMonth month(CsvRecord row, Month month) {
        try {
            return new ClimateMonth(
                    month,
                    needed(row, ClimateColumn.LOW, month),
                    needed(row, ClimateColumn.HIGH, month),
                    find(row, ClimateColumn.DEW_POINT, month),
                    find(row, ClimateColumn.HUMIDITY, month).map(Ratio::percent),
                    find(row, ClimateColumn.WIND, month).map(Velocity::metresPerSecond),
                    new Sunshine(
                            find(row, ClimateColumn.SUNSHINE, month),
                            find(row, ClimateColumn.SUNSHINE_SHARE, month).map(Ratio::percent),
                            find(row, ClimateColumn.SOLAR, month)),
                    find(row, ClimateColumn.RAIN, month).map(Length::metres));
        } catch (InvalidValueException fault) {
            throw new LeatException(place(row) + fault.getMessage(), fault);
        }
    }

    /** By its number, or by its name or the first three letters of it. */
    private Month month(CsvRecord row) {
        String cell = cell(row, ClimateColumn.MONTH).orElse("");
        String wanted = cell.toUpperCase(Locale.ROOT);
        return Arrays.stream(Month.values())
                .filter(month -> wanted.equals(String.valueOf(month.getValue()))
                        || wanted.length() >= 3 && month.name().startsWith(wanted))
                .findFirst()
                .orElseThrow(() -> new LeatException(
                        place(row) + "month is '" + cell + "'; it must be 1 to 12, or a name such as January or Jan"));
    }

    private double needed(CsvRecord row, ClimateColumn column, Month month) {
        return find(row, column, month)
                .orElseThrow(() -> new LeatException(place(row) + column.title() + " of " + ClimateMonth.name(month)
                        + " is missing; it must be given"));
    }

    /** The figure in the unit in which the model has it. */
    private Optional<Double> find(CsvRecord row, ClimateColumn column, Month month) {
        return cell(row, column).map(cell -> {
            try {
                double figure = Double.parseDouble(cell);
                if (Double.isFinite(figure)) {
                    return head.unit(column).toModel(figure);
                }
            } catch (NumberFormatException noNumber) {
                throw new LeatException(noFigure(row, column, month, cell), noNumber);
            }
            throw new LeatException(noFigure(row, column, month, cell));
        });
    }

    private String noFigure(CsvRecord row, ClimateColumn column, Month month, String cell) {
        return place(row) + column.title() + " of " + ClimateMonth.name(month) + " is '" + cell
                + "'; it must be a number, or empty when it is not known";
    }

    /** What stands there; empty if the column or the cell is. */
    private Optional<String> cell(CsvRecord row, ClimateColumn column) {
        return head.index(column)
                .filter(index -> index < row.getFieldCount())
                .map(index -> row.getField(index).strip())
                .filter(cell -> !cell.isEmpty());
    }

    private String place(CsvRecord row) {
        return file + ":" + row.getStartingLineNumber() + ": ";
    }
}
