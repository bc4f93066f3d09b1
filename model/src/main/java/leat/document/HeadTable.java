package leat.document;

import java.util.List;
import java.util.SortedMap;
import leat.model.catalog.FlowRule;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.HeadShape;
import leat.model.catalog.Jet;
import leat.model.catalog.PressureRange;
import leat.model.quantity.Angle;
import leat.model.quantity.Dimension;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;

/** Reads the table of heads. */
final class HeadTable {

    private static final double ALL_AROUND = 360;

    private HeadTable() {}

    /** All but the rows without a shape: strip nozzles wet a rectangle, which no head of the model does. */
    static SortedMap<String, HeadFamily> read(String edition) {
        List<HeadFamily> families = Table.read(edition, "heads").stream()
                .filter(row -> row.has("shape"))
                .map(HeadTable::family)
                .toList();
        return Table.byKey(families, HeadFamily::key);
    }

    private static HeadFamily family(Table.Row row) {
        return new HeadFamily(
                row.text("head_id"),
                row.constant("shape", HeadShape.class),
                jet(row),
                new PressureRange(
                        Pressure.kilopascals(row.number("min_pressure_kpa")),
                        Pressure.kilopascals(row.number("ref_pressure_kpa")),
                        Pressure.kilopascals(row.number("max_pressure_kpa"))),
                new Angle(row.number("arc_min_deg", ALL_AROUND)),
                new Angle(row.number("arc_max_deg", ALL_AROUND)),
                Length.millimetres(row.number("popup_height_mm", 0)),
                row.citation());
    }

    private static Jet jet(Table.Row row) {
        Length radius = Length.metres(row.number("radius_m"));
        return new Jet(
                radius,
                radius.times(row.number("least_radius_share")),
                row.quantity("flow", Dimension.FLOW, Flow.class),
                row.constant("flow_rule", FlowRule.class),
                row.number("flow_pressure_exponent"),
                row.number("radius_pressure_exponent"),
                row.text("profile_id"));
    }
}
