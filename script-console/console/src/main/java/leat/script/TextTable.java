package leat.script;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Rows of text in columns that line up; columns of figures end together, others begin together. */
final class TextTable {

    static final String GAP = "   ";
    private static final Pattern FIGURE = Pattern.compile("-?\\d[\\d.,]*( \\S+)?|none|");

    private final List<List<String>> rows = new ArrayList<>();
    private final int columns;

    TextTable(List<String> head) {
        columns = head.size();
        rows.add(head);
    }

    void add(List<String> row) {
        rows.add(row);
    }

    /** The lines, the head first; a column that is empty below its head is left out. */
    String text() {
        List<StringBuilder> lines = new ArrayList<>();
        rows.forEach(row -> lines.add(new StringBuilder()));
        for (int column = 0; column < columns; column++) {
            if (!isEmpty(column)) {
                append(column, lines);
            }
        }
        return String.join(
                "\n",
                lines.stream().map(line -> line.toString().stripTrailing()).toList());
    }

    private boolean isEmpty(int column) {
        return rows.stream().skip(1).allMatch(row -> row.get(column).isEmpty());
    }

    private void append(int column, List<StringBuilder> lines) {
        int width =
                rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
        boolean figures = rows.stream()
                .skip(1)
                .allMatch(row -> FIGURE.matcher(row.get(column)).matches());
        for (int i = 0; i < rows.size(); i++) {
            String cell = rows.get(i).get(column);
            String space = " ".repeat(width - cell.length());
            StringBuilder line = lines.get(i);
            line.append(line.isEmpty() ? "" : GAP).append(figures ? space + cell : cell + space);
        }
    }

    /** A line for each pair, the second parts beginning together. */
    static String pairs(List<List<String>> pairs) {
        int width = pairs.stream().mapToInt(pair -> pair.get(0).length()).max().orElse(0);
        String margin = " ".repeat(width) + GAP;
        List<String> lines = new ArrayList<>();
        for (List<String> pair : pairs) {
            String space = " ".repeat(width - pair.get(0).length()) + GAP;
            lines.add((pair.get(0) + space + pair.get(1).replace("\n", "\n" + margin)).stripTrailing());
        }
        return String.join("\n", lines);
    }
}
