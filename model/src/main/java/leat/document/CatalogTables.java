package leat.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import leat.model.catalog.Catalog;
import leat.model.catalog.Device;
import leat.model.catalog.DeviceKind;
import leat.model.catalog.Fitting;
import leat.model.catalog.LossLaw;
import leat.model.catalog.PipeSeries;
import leat.model.catalog.PipeSpec;
import leat.model.catalog.Profile;
import leat.model.catalog.SoilTexture;
import leat.model.quantity.Dimension;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Pressure;
import leat.model.quantity.Ratio;
import leat.model.water.TradeSize;

/** Reads the tables of what can be bought and of the soil. */
final class CatalogTables {

    private static final double LITRES_IN_A_CUBIC_METRE = 1_000;

    private CatalogTables() {}

    static Catalog read(String edition) {
        return new Catalog(
                HeadTable.read(edition),
                profiles(edition),
                pipes(edition),
                Table.byKey(list(edition, "devices", CatalogTables::device), Device::key),
                fittings(edition),
                Table.byKey(list(edition, "soil", CatalogTables::soil), SoilTexture::key),
                WateringTableFiles.read(edition),
                ElectricalTable.read(edition));
    }

    private static <T> List<T> list(String edition, String name, Function<Table.Row, T> maker) {
        return Table.read(edition, name).stream().map(maker).toList();
    }

    /** Rows of one profile stand together, from the head outwards in even steps. */
    private static SortedMap<String, Profile> profiles(String edition) {
        SortedMap<String, List<Double>> depths = new TreeMap<>();
        for (Table.Row row : Table.read(edition, "head_profile")) {
            depths.computeIfAbsent(row.text("profile_id"), key -> new ArrayList<>())
                    .add(row.number("relative_depth"));
        }
        SortedMap<String, Profile> profiles = new TreeMap<>();
        depths.forEach((key, some) -> profiles.put(key, new Profile(key, some)));
        return profiles;
    }

    private static SortedMap<String, PipeSeries> pipes(String edition) {
        SortedMap<String, List<PipeSpec>> specs = new TreeMap<>();
        for (Table.Row row : Table.read(edition, "pipe")) {
            PipeSpec spec = pipe(row);
            specs.computeIfAbsent(spec.size().series(), key -> new ArrayList<>())
                    .add(spec);
        }
        SortedMap<String, PipeSeries> pipes = new TreeMap<>();
        specs.forEach((name, some) -> pipes.put(name, new PipeSeries(name, some)));
        return pipes;
    }

    private static PipeSpec pipe(Table.Row row) {
        String size = row.text("size_label");
        boolean inches = size.endsWith(" in"); // the standard of the row counts in them; millimetres are rounded
        return new PipeSpec(
                new TradeSize(seriesName(row), size),
                row.text("material"),
                row.quantity("bore", Dimension.LENGTH, Length.class),
                inches ? Length.inches(row.number("od_in")) : Length.millimetres(row.number("od_mm")),
                Pressure.kilopascals(row.number("pressure_rating_kpa_23c")),
                Ratio.of(row.number("hazen_williams_c")),
                Length.metres(row.number("stock_length_m")),
                row.citation(row.text("source") + "; bore: " + row.text("bore_basis")));
    }

    /** "PVC Schedule 40", but "PVC-U PN 10 (SDR 21)" without its material before it. */
    private static String seriesName(Table.Row row) {
        String series = row.text("series");
        return series.startsWith(row.text("material")) ? series : row.text("material") + " " + series;
    }

    private static Device device(Table.Row row) {
        double exponent = row.number("n");
        double pascals = row.number("k_kpa_per_l_s_n") * 1_000; // at 1 L/s
        return new Device(
                row.text("device_id"),
                row.constant("kind", DeviceKind.class),
                row.text("title"),
                row.text("size_in") + " in",
                new LossLaw(
                        Pressure.kilopascals(row.number("p0_kpa")),
                        pascals * Math.pow(LITRES_IN_A_CUBIC_METRE, exponent),
                        exponent),
                Flow.gpm(row.number("max_flow_gpm")),
                row.has("continuous_flow_gpm")
                        ? Optional.of(Flow.gpm(row.number("continuous_flow_gpm")))
                        : Optional.empty(),
                row.citation());
    }

    /** Those that the table gives as one coefficient; of others, such as reducers, it gives formulas of the bores. */
    private static SortedMap<String, Fitting> fittings(String edition) {
        List<Fitting> fittings = Table.read(edition, "fittings").stream()
                .filter(row -> row.has("k_at_25mm"))
                .map(row -> new Fitting(
                        row.text("fitting_id"), row.text("fitting"), Ratio.of(row.number("k_at_25mm")), row.citation()))
                .toList();
        return Table.byKey(fittings, Fitting::key);
    }

    private static SoilTexture soil(Table.Row row) {
        return new SoilTexture(
                row.text("texture"),
                Ratio.of(row.number("available_water_mid_mm_m") / 1_000),
                PrecipitationRate.millimetresPerHour(row.number("basic_intake_mm_h")),
                row.citation());
    }
}
