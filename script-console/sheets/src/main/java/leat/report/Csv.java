package leat.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Tables for other programs: RFC 4180, UTF-8. */
final class Csv {

    private static final String DANGEROUS = "=+-@\t\r";

    private Csv() {}

    static byte[] write(Table table) {
        StringWriter text = new StringWriter();
        try (CsvWriter writer = CsvWriter.builder().build(text)) {
            writer.writeRecord(table.columns());
            for (List<Cell> row : table.rows()) {
                writer.writeRecord(row.stream().map(Csv::guarded).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** A text that a spreadsheet would take for a formula gets a leading apostrophe; figures may begin with a minus. */
    static String guarded(Cell cell) {
        String text = cell.text();
        boolean dangerous = !cell.number() && !text.isEmpty() && DANGEROUS.indexOf(text.charAt(0)) >= 0;
        return dangerous ? "'" + text : text;
    }
}
