package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leat.calc.takeoff.CutList;
import leat.calc.takeoff.CutPiece;
import leat.calc.takeoff.CutStick;
import leat.calc.takeoff.MaterialLine;
import leat.calc.takeoff.TakeoffResult;
import leat.model.quantity.Dimension;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/** What to buy, and how to cut it, as tables. */
final class MaterialTables {

    /** So many places are named; the rest is a count, since a ledger has them all. */
    private static final int MOST_PLACES = 40;

    private MaterialTables() {}

    /** A row for each material of each phase, with the places where it goes. */
    static Table materials(TakeoffResult takeoff, UnitSystem units) {
        List<String> columns = List.of(
                "when",
                "kind",
                "material",
                "quantity",
                "unit",
                "stock to buy",
                Table.head("stock length", Dimension.LENGTH, units),
                "what to ask for",
                "where");
        List<List<Cell>> rows = new ArrayList<>();
        for (MaterialLine line : takeoff.lines()) {
            rows.add(List.of(
                    Cell.when(line.phase()),
                    Cell.text(line.kind().label()),
                    Cell.text(line.key()),
                    Cell.figure(line.quantity(), units),
                    Cell.text(unit(line.quantity(), units)),
                    line.stock()
                            .map(stock -> Cell.count((int) stock.count().value()))
                            .orElse(Cell.UNKNOWN),
                    line.stock().map(stock -> Cell.figure(stock.each(), units)).orElse(Cell.UNKNOWN),
                    Cell.text(line.text().equals(line.key()) ? "" : line.text()),
                    Cell.text(places(line, units))));
        }
        return new Table(columns, rows);
    }

    /** A row for each stick or coil, longest pieces first. */
    static Table cuts(TakeoffResult takeoff, UnitSystem units) {
        List<String> columns = List.of(
                "when",
                "material",
                "stick",
                Table.head("stock length", Dimension.LENGTH, units),
                Table.head("pieces", Dimension.LENGTH, units),
                "for",
                Table.head("left over", Dimension.LENGTH, units));
        List<List<Cell>> rows = new ArrayList<>();
        for (CutList cuts : takeoff.cuts()) {
            for (int i = 0; i < cuts.sticks().size(); i++) {
                CutStick stick = cuts.sticks().get(i);
                rows.add(List.of(
                        Cell.when(cuts.phase()),
                        Cell.text(cuts.key()),
                        Cell.count(i + 1),
                        Cell.figure(cuts.stock(), units),
                        Cell.text(joined(stick, units)),
                        Cell.text(stick.pieces().stream()
                                .map(CutPiece::of)
                                .map(Words::named)
                                .distinct()
                                .collect(Collectors.joining(", "))),
                        Cell.figure(stick.left(), units)));
            }
        }
        return new Table(columns, rows);
    }

    private static String joined(CutStick stick, UnitSystem units) {
        return stick.pieces().stream()
                .map(piece -> Units.number(piece.length(), units))
                .collect(Collectors.joining(" + "));
    }

    static String unit(Quantity quantity, UnitSystem units) {
        String symbol = Units.symbol(quantity.dimension(), units);
        return symbol.isEmpty() ? "each" : symbol;
    }

    private static String places(MaterialLine line, UnitSystem units) {
        List<String> places = line.uses().stream()
                .map(use -> Words.subject(use.subject(), units))
                .distinct()
                .toList();
        String named = places.stream().limit(MOST_PLACES).collect(Collectors.joining("; "));
        return places.size() <= MOST_PLACES ? named : named + "; and " + (places.size() - MOST_PLACES) + " more";
    }
}
