package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leat.calc.digging.DiggingResult;
import leat.calc.digging.LaidDepth;
import leat.calc.digging.TrenchDig;
import leat.model.quantity.Dimension;
import leat.model.quantity.UnitSystem;

/** Each trench as it is dug: how long, wide and deep, what lies in it, how much earth. */
final class DiggingTable {

    private DiggingTable() {}

    static Table of(DiggingResult digging, UnitSystem units) {
        String small = Words.smallUnit(units);
        List<String> columns = List.of(
                "trench",
                Table.head("length on the ground", Dimension.LENGTH, units),
                "width, " + small,
                "depth, " + small,
                "lies in it, from the bottom",
                "cover, " + small,
                "dug",
                "earth",
                Table.head("earth as it lies", Dimension.VOLUME, units),
                Table.head("loose", Dimension.VOLUME, units),
                Table.head("bedding", Dimension.VOLUME, units),
                Table.head("backfill", Dimension.VOLUME, units),
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (TrenchDig dig : digging.trenches().values()) {
            rows.add(List.of(
                    Cell.name(dig.id()),
                    Cell.figure(dig.onGround(), units),
                    Cell.small(dig.width(), units),
                    Cell.small(dig.depth(), units),
                    Cell.text(laid(dig)),
                    Cell.text(covers(dig, units)),
                    Cell.text(dig.byHand() ? "by hand" : ""),
                    Cell.text(dig.earth().label()),
                    Cell.figure(dig.bank(), units),
                    Cell.figure(dig.loose(), units),
                    Cell.figure(dig.bedding(), units),
                    Cell.figure(dig.backfill(), units),
                    Cell.when(dig.phase())));
        }
        return new Table(columns, rows);
    }

    /** Things beside each other with a comma, layers with a stroke. */
    private static String laid(TrenchDig dig) {
        StringBuilder text = new StringBuilder();
        double layer = 1;
        for (LaidDepth one : dig.laid()) {
            text.append(text.length() == 0 ? "" : one.layer().value() > layer ? " / " : ", ");
            text.append(one.id().name());
            layer = one.layer().value();
        }
        return text.toString();
    }

    private static String covers(TrenchDig dig, UnitSystem units) {
        return dig.laid().stream()
                .map(one -> Words.smallNumber(one.cover(), units))
                .collect(Collectors.joining(", "));
    }
}
