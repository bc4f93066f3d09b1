package leat.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import leat.model.catalog.AmpacityFactor;
import leat.model.catalog.BoxSpec;
import leat.model.catalog.BreakerRating;
import leat.model.catalog.BurialCover;
import leat.model.catalog.BuriedAs;
import leat.model.catalog.BuriedUnder;
import leat.model.catalog.CableSpec;
import leat.model.catalog.CableUse;
import leat.model.catalog.ConduitSpec;
import leat.model.catalog.ElectricalTables;
import leat.model.catalog.GroundingStep;
import leat.model.catalog.ValveSupply;
import leat.model.power.CodeFamily;
import leat.model.quantity.Area;
import leat.model.quantity.Current;
import leat.model.quantity.Dimension;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Voltage;
import leat.model.quantity.Volume;

/** Reads the tables of what is needed for power; those of conductors reads {@link ConductorTable}. */
final class ElectricalTable {

    static final double SQUARE_INCH_M2 = 0.0254 * 0.0254;
    static final double CUBIC_INCH_M3 = SQUARE_INCH_M2 * 0.0254;
    static final double SQUARE_MILLIMETRE_M2 = 1e-6;

    private ElectricalTable() {}

    static ElectricalTables read(String edition) {
        return new ElectricalTables(
                ConductorTable.read(edition),
                list(edition, "cable", ElectricalTable::cable),
                conduits(edition),
                list(edition, "adjustment", ElectricalTable::factor),
                list(edition, "egc", ElectricalTable::grounding),
                list(edition, "breaker", ElectricalTable::breaker),
                list(edition, "burial", ElectricalTable::cover),
                Table.byKey(list(edition, "boxes", ElectricalTable::box), BoxSpec::key),
                valveSupply(edition));
    }

    private static <T> List<T> list(String edition, String name, Function<Table.Row, T> maker) {
        return Table.read(edition, name).stream().map(maker).toList();
    }

    private static CodeFamily family(Table.Row row) {
        return row.constant("family", CodeFamily.class);
    }

    private static CableSpec cable(Table.Row row) {
        return new CableSpec(
                row.text("cable_id"),
                row.text("cable"),
                family(row),
                row.constant("use", CableUse.class),
                row.text("conductor"),
                (int) row.number("strands"),
                new Area(row.number("fill_area_mm2") * SQUARE_MILLIMETRE_M2),
                row.citation());
    }

    private static SortedMap<String, List<ConduitSpec>> conduits(String edition) {
        SortedMap<String, List<ConduitSpec>> conduits = new TreeMap<>();
        for (Table.Row row : Table.read(edition, "conduit")) {
            ConduitSpec spec = conduit(row);
            conduits.computeIfAbsent(spec.series(), key -> new ArrayList<>()).add(spec);
        }
        return conduits;
    }

    private static ConduitSpec conduit(Table.Row row) {
        Length bore = row.quantity("bore", Dimension.LENGTH, Length.class);
        double areaM2 =
                row.has("area_in2") ? row.number("area_in2") * SQUARE_INCH_M2 : Math.PI / 4 * bore.si() * bore.si();
        return new ConduitSpec(
                row.text("series"),
                row.text("size"),
                row.text("name"),
                row.constant("buried_as", BuriedAs.class),
                bore,
                new Area(areaM2),
                row.has("od") ? Optional.of(row.quantity("od", Dimension.LENGTH, Length.class)) : Optional.empty(),
                millimetres(row, "bend_radius_mm"),
                millimetres(row, "stock_length_m").map(one -> one.times(1_000)),
                row.citation());
    }

    private static Optional<Length> millimetres(Table.Row row, String column) {
        return row.has(column) ? Optional.of(Length.millimetres(row.number(column))) : Optional.empty();
    }

    private static AmpacityFactor factor(Table.Row row) {
        return new AmpacityFactor(
                family(row),
                row.constant("kind", AmpacityFactor.Kind.class),
                whole(row, "from"),
                whole(row, "to"),
                whole(row, "conductor_rating_c"),
                Ratio.of(row.number("factor")),
                row.citation());
    }

    private static OptionalInt whole(Table.Row row, String column) {
        return row.has(column) ? OptionalInt.of((int) row.number(column)) : OptionalInt.empty();
    }

    private static GroundingStep grounding(Table.Row row) {
        return new GroundingStep(
                Current.amperes(row.number("breaker_max_a")),
                row.text("egc_copper_size"),
                row.text("egc_aluminum_size"),
                row.citation());
    }

    private static BreakerRating breaker(Table.Row row) {
        return new BreakerRating(family(row), Current.amperes(row.number("rating_a")), row.citation());
    }

    private static BurialCover cover(Table.Row row) {
        return new BurialCover(
                family(row),
                row.constant("under", BuriedUnder.class),
                row.constant("buried_as", BuriedAs.class),
                row.quantity("cover", Dimension.LENGTH, Length.class),
                row.citation());
    }

    private static BoxSpec box(Table.Row row) {
        return new BoxSpec(
                row.text("box_id"),
                row.constant("kind", BoxSpec.Kind.class),
                row.text("name"),
                row.has("volume_in3")
                        ? Optional.of(new Volume(row.number("volume_in3") * CUBIC_INCH_M3))
                        : Optional.empty(),
                row.citation());
    }

    /** That table has one figure in a row, with its name before it. */
    private static ValveSupply valveSupply(String edition) {
        SortedMap<String, Table.Row> items = Table.byKey(Table.read(edition, "control_wire"), row -> row.text("item"));
        return new ValveSupply(
                new Voltage(figure(items, "supply_voltage")),
                new Current(figure(items, "solenoid_inrush_current")),
                new Current(figure(items, "solenoid_holding_current")),
                new Voltage(figure(items, "solenoid_min_voltage")),
                row(items, "solenoid_inrush_current").citation());
    }

    private static double figure(SortedMap<String, Table.Row> items, String name) {
        return row(items, name).number("value");
    }

    private static Table.Row row(SortedMap<String, Table.Row> items, String name) {
        Table.Row row = items.get(name);
        if (row == null) {
            throw new IllegalStateException("the table control_wire has no row " + name);
        }
        return row;
    }
}
