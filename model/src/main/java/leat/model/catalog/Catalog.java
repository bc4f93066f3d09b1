package leat.model.catalog;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.Require;
import leat.model.water.TradeSize;

/** All rows that a yard may name, by key. Looking up a key that is not there names the nearest one that is. */
public record Catalog(
        SortedMap<String, HeadFamily> heads,
        SortedMap<String, Profile> profiles,
        SortedMap<String, PipeSeries> pipes,
        SortedMap<String, Device> devices,
        SortedMap<String, Fitting> fittings,
        SortedMap<String, SoilTexture> soils,
        WateringTables watering,
        ElectricalTables electrical) {

    /** A catalogue without a row. */
    public static final Catalog EMPTY = new Catalog(
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            WateringTables.EMPTY,
            ElectricalTables.EMPTY);

    public Catalog {
        heads = kept(heads);
        profiles = kept(profiles);
        pipes = kept(pipes);
        devices = kept(devices);
        fittings = kept(fittings);
        soils = kept(soils);
        Require.present("catalogue", "watering", watering);
        Require.present("catalogue", "electrical", electrical);
    }

    public HeadFamily head(String key) {
        return find("head family", heads, key);
    }

    public Profile profile(String key) {
        return find("profile", profiles, key);
    }

    public PipeSeries series(String name) {
        return find("pipe series", pipes, name);
    }

    public PipeSpec pipe(TradeSize size) {
        return series(size.series()).spec(size.size());
    }

    public Device device(String key) {
        return find("device", devices, key);
    }

    public Fitting fitting(String key) {
        return find("fitting", fittings, key);
    }

    public SoilTexture soil(String key) {
        return find("soil", soils, key);
    }

    /** The same catalogue with these families added; one with a known key takes its place. */
    public Catalog withHeads(List<HeadFamily> more) {
        SortedMap<String, HeadFamily> all = new TreeMap<>(heads);
        more.forEach(family -> all.put(family.key(), family));
        return new Catalog(all, profiles, pipes, devices, fittings, soils, watering, electrical);
    }

    private static <T> SortedMap<String, T> kept(SortedMap<String, T> rows) {
        return Collections.unmodifiableSortedMap(new TreeMap<>(rows));
    }

    private static <T> T find(String thing, SortedMap<String, T> rows, String key) {
        T row = rows.get(key);
        if (row == null) {
            throw new InvalidValueException(
                    thing, "key", "'" + key + "'", "a key of the catalogue" + Nearest.hint(key, rows.keySet()));
        }
        return row;
    }
}
