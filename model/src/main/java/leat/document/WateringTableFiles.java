package leat.document;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.catalog.ClimateStation;
import leat.model.catalog.HeadShape;
import leat.model.catalog.IntakeRate;
import leat.model.catalog.PlantKind;
import leat.model.catalog.UsualFigure;
import leat.model.catalog.WateringTables;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Ratio;
import leat.model.quantity.Velocity;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import leat.model.water.GrowingPlace;
import leat.model.water.Sunshine;

/** Reads the tables of climate, plants and intake. */
final class WateringTableFiles {

    /** Which row of the table of evenness stands for which shape of head. */
    private static final Map<String, HeadShape> SHAPES = Map.of(
            "fixed spray", HeadShape.SPRAY,
            "gear rotor", HeadShape.ROTOR,
            "bubbler", HeadShape.BUBBLER,
            "drip", HeadShape.DRIP_LINE);

    private WateringTableFiles() {}

    static WateringTables read(String edition) {
        SortedMap<String, String> words = new TreeMap<>();
        Table.read(edition, "planting_word").forEach(row -> words.put(row.text("word"), row.text("crop_id")));
        SortedMap<HeadShape, UsualFigure> evenness = new TreeMap<>();
        for (Table.Row row : Table.read(edition, "efficiency")) {
            HeadShape shape = SHAPES.get(row.text("method"));
            if (shape != null) {
                evenness.put(shape, usual(row, "distribution_uniformity_low_quarter"));
            }
        }
        return new WateringTables(
                stations(edition),
                plants(edition),
                words,
                intakes(edition),
                factors(edition, "density"),
                factors(edition, "microclimate"),
                evenness);
    }

    private static UsualFigure usual(Table.Row row, String column) {
        return new UsualFigure(Ratio.of(row.number(column)), row.citation());
    }

    private static SortedMap<GrowingPlace.Grade, UsualFigure> factors(String edition, String factor) {
        SortedMap<GrowingPlace.Grade, UsualFigure> factors = new TreeMap<>();
        for (Table.Row row : Table.read(edition, "landscape_factor")) {
            if (row.text("factor").equals(factor)) {
                String grade = row.text("level").toUpperCase(Locale.ROOT);
                factors.put(GrowingPlace.Grade.valueOf(grade), usual(row, "typical"));
            }
        }
        return factors;
    }

    private static SortedMap<String, ClimateStation> stations(String edition) {
        SortedMap<String, List<Table.Row>> rows = new TreeMap<>();
        for (Table.Row row : Table.read(edition, "climate")) {
            rows.computeIfAbsent(row.text("station_id"), key -> new ArrayList<>())
                    .add(row);
        }
        SortedMap<String, ClimateStation> stations = new TreeMap<>();
        rows.forEach((key, months) -> stations.put(key, station(key, months)));
        return stations;
    }

    private static ClimateStation station(String key, List<Table.Row> rows) {
        Table.Row first = rows.get(0);
        Climate climate = new Climate(
                first.text("station"),
                Angle.degrees(first.number("latitude_deg")),
                Length.metres(first.number("altitude_m")),
                rows.stream().map(WateringTableFiles::month).toList());
        return new ClimateStation(key, climate, first.citation(first.text("source") + ", " + first.text("period")));
    }

    private static ClimateMonth month(Table.Row row) {
        return new ClimateMonth(
                Month.of((int) row.number("month")),
                row.number("tmin_c"),
                row.number("tmax_c"),
                figure(row, "tdew_c"),
                percent(row, "rh_mean_pct"),
                figure(row, "wind_2m_m_s").map(Velocity::metresPerSecond),
                new Sunshine(figure(row, "sunshine_h_d"), percent(row, "sunshine_pct"), figure(row, "rs_mj_m2_d")),
                figure(row, "precip_mm_month").map(Length::millimetres));
    }

    private static Optional<Double> figure(Table.Row row, String column) {
        return row.has(column) ? Optional.of(row.number(column)) : Optional.empty();
    }

    private static Optional<Ratio> percent(Table.Row row, String column) {
        return figure(row, column).map(Ratio::percent);
    }

    private static SortedMap<String, PlantKind> plants(String edition) {
        List<Table.Row> turf = Table.read(edition, "kc_turf_monthly");
        Map<String, String> monthly = Map.of("turf-cool-uc", "kc_cool_season", "turf-warm-uc", "kc_warm_season");
        List<PlantKind> plants = Table.read(edition, "kc").stream()
                .map(row -> {
                    String column = monthly.get(row.text("crop_id"));
                    List<Ratio> months = column == null
                            ? List.of()
                            : turf.stream()
                                    .map(month -> Ratio.of(month.number(column)))
                                    .toList();
                    return plant(row, months);
                })
                .toList();
        return Table.byKey(plants, PlantKind::key);
    }

    /** The lesser depth of roots: plants that are watered often draw from there (note of table 22 of FAO 56). */
    private static PlantKind plant(Table.Row row, List<Ratio> monthly) {
        return new PlantKind(
                row.text("crop_id"),
                row.text("crop"),
                figure(row, "kc_ini").map(Ratio::of),
                Ratio.of(row.number("kc_mid")),
                figure(row, "kc_end").map(Ratio::of),
                monthly,
                Length.metres(row.number("root_depth_min_m")),
                Ratio.of(row.number("depletion_fraction_p")),
                row.citation());
    }

    /** The rows of the table, each for the textures that the map gives to its description of the soil. */
    private static List<IntakeRate> intakes(String edition) {
        List<Table.Row> rows = Table.read(edition, "intake_rate");
        List<IntakeRate> intakes = new ArrayList<>();
        for (Table.Row texture : Table.read(edition, "intake_map")) {
            rows.stream()
                    .filter(row -> row.text("soil_class").equals(texture.text("soil_class")))
                    .map(row -> intake(texture.text("soil_id").replace('-', ' '), row))
                    .forEach(intakes::add);
        }
        return intakes;
    }

    private static IntakeRate intake(String soil, Table.Row row) {
        return new IntakeRate(
                soil,
                Ratio.percent(row.number("slope_min_pct")),
                percent(row, "slope_max_pct"),
                row.text("cover").equals("cover"),
                PrecipitationRate.inchesPerHour(row.number("max_rate_in_h")),
                row.citation());
    }
}
