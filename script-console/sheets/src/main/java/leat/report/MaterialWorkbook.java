package leat.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import leat.calc.assess.Assessment;
import leat.calc.takeoff.TakeoffResult;
import leat.model.quantity.UnitSystem;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Materials, cut list and budget in one workbook (Office Open XML). The budget reckons anew when a price is changed. */
final class MaterialWorkbook {

    private static final double WIDEST = 60;

    private MaterialWorkbook() {}

    static byte[] write(Assessment assessment) {
        UnitSystem units = assessment.yard().units();
        TakeoffResult takeoff = assessment.takeoff();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            Workbook workbook = new Workbook(bytes, "Leat", "1.0");
            workbook.properties().setTitle("Materials of " + assessment.yard().name());
            table(workbook.newWorksheet("materials"), MaterialTables.materials(takeoff, units));
            table(workbook.newWorksheet("cuts"), MaterialTables.cuts(takeoff, units));
            BudgetSheet.write(workbook.newWorksheet("budget"), assessment.yard().costs(), assessment.budget());
            workbook.finish();
            return PlainZip.rewritten(bytes.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void table(Worksheet sheet, Table table) {
        head(sheet, 0, table.columns());
        for (int row = 0; row < table.rows().size(); row++) {
            List<Cell> cells = table.rows().get(row);
            for (int column = 0; column < cells.size(); column++) {
                cell(sheet, row + 1, column, cells.get(column));
            }
        }
        for (int column = 0; column < table.columns().size(); column++) {
            int at = column;
            int widest = table.rows().stream()
                    .mapToInt(cells -> cells.get(at).text().length())
                    .max()
                    .orElse(0);
            sheet.width(
                    column,
                    Math.min(
                            WIDEST,
                            2 + Math.max(widest, table.columns().get(column).length())));
        }
        sheet.freezePane(0, 1);
    }

    static void head(Worksheet sheet, int row, List<String> columns) {
        for (int column = 0; column < columns.size(); column++) {
            sheet.value(row, column, columns.get(column));
            sheet.style(row, column).bold().set();
        }
    }

    /** A text is always written as a text, whatever it begins with: a workbook takes nothing but a formula for one. */
    private static void cell(Worksheet sheet, int row, int column, Cell cell) {
        if (cell.number()) {
            sheet.value(row, column, new BigDecimal(cell.text()));
        } else if (!cell.text().isEmpty()) {
            sheet.value(row, column, cell.text());
        }
    }
}
