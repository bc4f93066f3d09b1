package leat.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import leat.calc.budget.BudgetLine;
import leat.calc.budget.BudgetResult;
import leat.calc.budget.Purchase;
import leat.calc.takeoff.MaterialLine;
import leat.calc.takeoff.StockPieces;
import leat.model.catalog.Costs;
import leat.model.catalog.MaterialKind;
import leat.model.catalog.PriceUnit;
import leat.model.site.Phase;
import org.dhatim.fastexcel.Worksheet;
import org.joda.money.CurrencyUnit;

/**
 * The budget as a sheet that reckons. First the shares, then the sums, then the lines: a price that is changed or filled
 * in changes all that follows from it, by the same rounding as {@code leat.calc.budget}.
 */
final class BudgetSheet {

    private static final int TAX_ROW = 1;
    private static final int CONTINGENCY_ROW = 2;
    private static final int SUMS_ROW = 4;
    private static final int LINES_ROW = 9;

    private static final List<String> COLUMNS = List.of(
            "when",
            "kind",
            "material",
            "needed, in price unit",
            "waste",
            "stock of the cut list",
            "price unit",
            "bought",
            "price",
            "amount",
            "source",
            "date",
            "note");

    private final Worksheet sheet;
    private final int firstRow;
    private final int lastRow;
    private final int decimals;

    private BudgetSheet(Worksheet sheet, int lines, int decimals) {
        this.sheet = sheet;
        this.firstRow = LINES_ROW + 2; // as a sheet counts, from 1, below the heads
        this.lastRow = firstRow + Math.max(1, lines) - 1;
        this.decimals = decimals;
    }

    static void write(Worksheet sheet, Costs costs, BudgetResult budget) {
        int decimals =
                costs.prices().currency().map(CurrencyUnit::getDecimalPlaces).orElse(2);
        BudgetSheet own = new BudgetSheet(sheet, budget.lines().size(), decimals);
        own.shares(costs);
        own.sums();
        own.lines(budget.lines());
    }

    private void shares(Costs costs) {
        sheet.value(
                0,
                0,
                costs.prices()
                        .currency()
                        .map(one -> "Prices in " + one.getCode() + "; change one and the sums follow")
                        .orElse("No prices yet; fill in the column of prices"));
        sheet.style(0, 0).bold().set();
        share(TAX_ROW, "tax", costs.tax().value());
        share(CONTINGENCY_ROW, "contingency", costs.contingency().value());
    }

    private void share(int row, String name, double share) {
        sheet.value(row, 0, name);
        sheet.value(row, 1, BigDecimal.valueOf(share));
        sheet.style(row, 1).format("0.##%").set();
    }

    private void sums() {
        MaterialWorkbook.head(
                sheet,
                SUMS_ROW,
                List.of("when", "goods", "labour", "tax", "contingency", "total", "lines without a price"));
        for (Phase phase : Phase.values()) {
            int row = SUMS_ROW + 1 + phase.ordinal();
            int name = row + 1;
            sheet.value(row, 0, Words.when(phase));
            String labour = MaterialKind.LABOUR.label();
            sheet.formula(
                    row,
                    1,
                    "SUMIFS(" + lines("J") + "," + lines("A") + ",A" + name + "," + lines("B") + ",\"<>" + labour
                            + "\")");
            sheet.formula(
                    row,
                    2,
                    "SUMIFS(" + lines("J") + "," + lines("A") + ",A" + name + "," + lines("B") + ",\"" + labour
                            + "\")");
            sheet.formula(row, 3, rounded("B" + name + "*$B$" + (TAX_ROW + 1)));
            sheet.formula(row, 4, rounded("(B" + name + "+C" + name + "+D" + name + ")*$B$" + (CONTINGENCY_ROW + 1)));
            sheet.formula(row, 5, "SUM(B" + name + ":E" + name + ")");
            sheet.formula(row, 6, "COUNTIFS(" + lines("A") + ",A" + name + "," + lines("I") + ",\"\")");
        }
        int row = SUMS_ROW + 1 + Phase.values().length;
        sheet.value(row, 0, "in all");
        for (char column = 'B'; column <= 'G'; column++) {
            sheet.formula(row, column - 'A', "SUM(" + column + (SUMS_ROW + 2) + ":" + column + row + ")");
        }
        sheet.formula(
                row, 7, "IF(G" + (row + 1) + "=0,\"\",\"incomplete: \"&G" + (row + 1) + "&\" lines without a price\")");
    }

    private String lines(String column) {
        return "$" + column + "$" + firstRow + ":$" + column + "$" + lastRow;
    }

    /** Half to even, which sheets have no function for. */
    private String rounded(String value) {
        String scale = "1" + "0".repeat(decimals);
        String scaled = value + "*" + scale;
        return "IF(ABS(MOD(" + scaled + ",1)-0.5)<0.0000001,2*ROUND(" + scaled + "/2,0),ROUND(" + scaled + ",0))/"
                + scale;
    }

    private void lines(List<BudgetLine> lines) {
        MaterialWorkbook.head(sheet, LINES_ROW, COLUMNS);
        for (int i = 0; i < lines.size(); i++) {
            line(LINES_ROW + 1 + i, lines.get(i));
        }
        double[] widths = {8, 18, 42, 14, 10, 12, 12, 10, 10, 12, 30, 12, 40};
        for (int column = 0; column < widths.length; column++) {
            sheet.width(column, widths[column]);
        }
    }

    private void line(int row, BudgetLine line) {
        MaterialLine material = line.material();
        PriceUnit unit = line.purchase().map(one -> one.price().unit()).orElse(usual(material));
        sheet.value(row, 0, Words.when(material.phase()));
        sheet.value(row, 1, material.kind().label());
        sheet.value(row, 2, material.key());
        sheet.value(row, 3, BigDecimal.valueOf(needed(material, unit)));
        sheet.value(row, 4, BigDecimal.valueOf(line.waste().value()));
        sheet.style(row, 4).format("0.##%").set();
        if (unit.isStock()) {
            material.stock()
                    .ifPresent(stock -> sheet.value(row, 5, (long) stock.count().value()));
        }
        sheet.value(row, 6, unit.symbol());
        int name = row + 1;
        int places = unit == PriceUnit.EACH || unit.isStock() ? 0 : 2;
        String up = String.format(Locale.ROOT, "ROUNDUP(ROUND(D%d*(1+E%d),9),%d)", name, name, places);
        sheet.formula(row, 7, unit.isStock() ? "MAX(F" + name + "," + up + ")" : up);
        line.purchase().map(Purchase::price).ifPresent(price -> {
            sheet.value(row, 8, price.amount().getAmount());
            sheet.value(row, 10, price.source());
            sheet.value(row, 11, price.date().toString());
        });
        sheet.formula(row, 9, "IF(I" + name + "=\"\",\"\"," + rounded("H" + name + "*I" + name) + ")");
        if (!line.note().isEmpty()) {
            sheet.value(row, 12, line.note());
        }
    }

    /** What a price would be for that nobody stated yet. */
    private static PriceUnit usual(MaterialLine material) {
        return switch (material.quantity().dimension()) {
            case LENGTH -> material.stock().isPresent() ? PriceUnit.STICK : PriceUnit.METRE;
            case VOLUME -> PriceUnit.CUBIC_METRE;
            default -> PriceUnit.EACH;
        };
    }

    /** In whole sticks where the price is for one; so the cut list and the length with its waste can be compared. */
    private static double needed(MaterialLine material, PriceUnit unit) {
        double si = material.quantity().si();
        double each =
                material.stock().map(StockPieces::each).map(one -> one.metres()).orElse(1.0);
        return unit.isStock() ? si / each : si / unit.factor();
    }
}
