package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.calc.coverage.CoverageResult;
import leat.calc.coverage.SurfaceCoverage;
import leat.model.quantity.Dimension;
import leat.model.quantity.UnitSystem;

/** How well each lawn and bed is covered, surface by surface. */
final class CoverageTable {

    private CoverageTable() {}

    static Table of(CoverageResult coverage, UnitSystem units) {
        List<String> columns = List.of(
                "surface",
                "heads wanted at each spot",
                Table.head("reached as wanted", Dimension.RATIO, units),
                Table.head("low quarter", Dimension.RATIO, units),
                Table.head("Christiansen", Dimension.RATIO, units),
                Table.head("mean rate", Dimension.PRECIPITATION, units));
        List<List<Cell>> rows = new ArrayList<>();
        for (SurfaceCoverage surface : coverage.surfaces().values()) {
            rows.add(List.of(
                    Cell.name(surface.surface()),
                    Cell.figure(surface.wanted(), units),
                    Cell.figure(surface.reachedAsWanted(), units),
                    Cell.figure(surface.lowQuarter(), units),
                    Cell.figure(surface.christiansen(), units),
                    Cell.figure(surface.mean(), units)));
        }
        return new Table(columns, rows);
    }
}
