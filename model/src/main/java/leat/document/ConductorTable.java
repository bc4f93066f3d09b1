package leat.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.catalog.ConductorSpec;
import leat.model.catalog.Copper;
import leat.model.catalog.InsulationColumn;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.power.CodeFamily;
import leat.model.quantity.Area;
import leat.model.quantity.Current;
import leat.model.quantity.Resistance;
import leat.model.quantity.Volume;

/** Reads the tables of conductors, one for each family. */
final class ConductorTable {

    private static final double CIRCULAR_MIL_M2 = Math.PI / 4 * 0.0000254 * 0.0000254;
    private static final double THOUSAND_FEET_M = 304.8;
    private static final double METRES_IN_A_KILOMETRE = 1_000;

    private ConductorTable() {}

    static List<ConductorSpec> read(String edition) {
        List<ConductorSpec> all = new ArrayList<>();
        Table.read(edition, "conductor").forEach(row -> all.add(byGauge(row)));
        Table.read(edition, "conductor_metric").forEach(row -> all.add(metric(row)));
        return all;
    }

    private static ConductorSpec byGauge(Table.Row row) {
        return new ConductorSpec(
                CodeFamily.NFPA_70,
                row.text("size"),
                new Copper(
                        new Area(row.number("cmil") * CIRCULAR_MIL_M2),
                        Resistance.ohms(row.number("r_stranded_cu_ohm_kft") / THOUSAND_FEET_M),
                        found(row, "r_solid_cu_ohm_kft").map(ohm -> Resistance.ohms(ohm / THOUSAND_FEET_M)),
                        75),
                new Area(row.number("thhn_thwn2_area_in2") * ElectricalTable.SQUARE_INCH_M2),
                List.of(ampacityByGauge(row, 60), ampacityByGauge(row, 75), ampacityByGauge(row, 90)),
                found(row, "small_conductor_breaker_cu_a").map(Current::amperes),
                found(row, "box_room_in3").map(in3 -> new Volume(in3 * ElectricalTable.CUBIC_INCH_M3)),
                row.citation());
    }

    private static InsulationColumn ampacityByGauge(Table.Row row, int celsius) {
        return new InsulationColumn(
                celsius,
                found(row, "ampacity_cu_" + celsius + "c_a").map(Current::amperes),
                Optional.empty(),
                row.citation());
    }

    private static ConductorSpec metric(Table.Row row) {
        double diameterM = row.number("insulated_diameter_mm") / METRES_IN_A_KILOMETRE;
        return new ConductorSpec(
                CodeFamily.IEC_60364,
                row.text("area_mm2"),
                new Copper(
                        new Area(row.number("area_mm2") * ElectricalTable.SQUARE_MILLIMETRE_M2),
                        Resistance.ohms(row.number("r20_class1_2_cu_ohm_km") / METRES_IN_A_KILOMETRE),
                        Optional.empty(),
                        20),
                new Area(Math.PI / 4 * diameterM * diameterM),
                List.of(
                        new InsulationColumn(
                                70,
                                found(row, "ampacity_duct_in_ground_a").map(Current::amperes),
                                loop(row, 70),
                                new Citation("IEC 60364-5-52, method D1", Standing.FROM_MEMORY)),
                        new InsulationColumn(90, Optional.empty(), loop(row, 90), row.citation())),
                Optional.empty(),
                Optional.empty(),
                row.citation());
    }

    /** Millivolts for each ampere and metre are thousandths of an ohm. */
    private static Optional<Resistance> loop(Table.Row row, int celsius) {
        return found(row, "voltage_drop_" + celsius + "c_two_core_mv_a_m").map(mv -> Resistance.ohms(mv / 1_000));
    }

    private static Optional<Double> found(Table.Row row, String column) {
        return row.has(column) ? Optional.of(row.number(column)) : Optional.empty();
    }
}
