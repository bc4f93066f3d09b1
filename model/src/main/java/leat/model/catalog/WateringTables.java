package leat.model.catalog;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.Require;
import leat.model.quantity.Ratio;
import leat.model.water.GrowingPlace;

/**
 * What the watering schedule looks up.
 *
 * @param plantWords everyday words for plantings, each with the key of its kind
 * @param intakes    of each soil by slope and cover
 * @param densities  factor on the crop coefficient, for each class of density
 * @param microclimates factor on the crop coefficient, for each class of microclimate
 * @param evenness   usual low-quarter distribution uniformity, by shape of head
 */
public record WateringTables(
        SortedMap<String, ClimateStation> stations,
        SortedMap<String, PlantKind> plants,
        SortedMap<String, String> plantWords,
        List<IntakeRate> intakes,
        SortedMap<GrowingPlace.Grade, UsualFigure> densities,
        SortedMap<GrowingPlace.Grade, UsualFigure> microclimates,
        SortedMap<HeadShape, UsualFigure> evenness) {

    public static final WateringTables EMPTY = new WateringTables(
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            List.of(),
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            Collections.emptySortedMap());

    public WateringTables {
        stations = kept(stations);
        plants = kept(plants);
        plantWords = kept(plantWords);
        intakes = Require.entries("watering tables", "intakes", intakes);
        densities = kept(densities);
        microclimates = kept(microclimates);
        evenness = kept(evenness);
    }

    /** @throws InvalidValueException with the nearest key if there is no such station */
    public ClimateStation station(String key) {
        return find("climate station", stations, key);
    }

    /** @throws InvalidValueException with the nearest key if there is no such kind */
    public PlantKind plant(String key) {
        return find("planting", plants, key);
    }

    /** The row for that soil, slope and cover; empty if the table does not know the soil. */
    public Optional<IntakeRate> intake(String soil, Ratio slope, boolean covered) {
        return intakes.stream().filter(row -> row.holds(soil, slope, covered)).findFirst();
    }

    private static <K extends Comparable<K>, T> SortedMap<K, T> kept(SortedMap<K, T> rows) {
        return Collections.unmodifiableSortedMap(new TreeMap<>(rows));
    }

    /** Factor on the crop coefficient. */
    public UsualFigure density(GrowingPlace.Grade grade) {
        return find("density", densities, grade);
    }

    /** Factor on the crop coefficient. */
    public UsualFigure microclimate(GrowingPlace.Grade grade) {
        return find("microclimate", microclimates, grade);
    }

    /** Low-quarter distribution uniformity where the plan's own is not known. */
    public UsualFigure evenness(HeadShape shape) {
        return find("evenness", evenness, shape);
    }

    private static <K extends Comparable<K>, T> T find(String thing, SortedMap<K, T> rows, K key) {
        T row = rows.get(key);
        if (row == null) {
            List<String> names = rows.keySet().stream().map(K::toString).toList();
            throw new InvalidValueException(
                    thing,
                    "key",
                    "'" + key + "'",
                    "one of " + String.join(", ", names) + Nearest.hint(key.toString(), names));
        }
        return row;
    }
}
