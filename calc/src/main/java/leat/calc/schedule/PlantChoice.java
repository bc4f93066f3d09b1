package leat.calc.schedule;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.catalog.PlantKind;
import leat.model.catalog.WateringTables;
import leat.model.fault.Nearest;
import leat.model.site.Surface;

/**
 * The kind of planting that stands for what a surface says of its plants: by key or title, by a word that the table of
 * everyday words knows, by the nearest of these, or by the kind of surface.
 *
 * @param doubt why it may be another one; empty when the surface says it
 */
record PlantChoice(PlantKind kind, String doubt) {

    private static final String USUAL_OF_LAWNS = "turf-cool";
    private static final String USUAL_OF_BEDS = "landscape-moderate";

    static PlantChoice of(Surface surface, WateringTables tables) {
        PlantKind usual = tables.plant(surface.isLawn() ? USUAL_OF_LAWNS : USUAL_OF_BEDS);
        Optional<String> text = surface.planting().filter(one -> !one.isBlank());
        if (text.isEmpty()) {
            return new PlantChoice(usual, "taken as " + usual.title() + "; say what grows there");
        }
        String said = text.get().strip().toLowerCase(Locale.ROOT);
        SortedMap<String, String> names = names(tables);
        return Optional.ofNullable(names.get(said))
                .or(() -> within(said, names))
                .map(key -> new PlantChoice(tables.plant(key), ""))
                .or(() -> Nearest.to(said, names.keySet())
                        .map(near -> guess(tables.plant(names.getOrDefault(near, usual.key())), near)))
                .orElseGet(() -> guess(
                        usual, "one of " + String.join(", ", tables.plants().keySet())));
    }

    /** By a word in the name of the tree, else as landscape planting of moderate use. */
    static PlantChoice ofTree(String name, WateringTables tables) {
        String key = within(name.toLowerCase(Locale.ROOT), names(tables)).orElse(USUAL_OF_BEDS);
        return new PlantChoice(tables.plant(key), "");
    }

    private static PlantChoice guess(PlantKind kind, String instead) {
        return new PlantChoice(kind, "not known by that name, taken as " + kind.title() + "; perhaps say " + instead);
    }

    /** All names in small letters, each with the key of its kind. */
    private static SortedMap<String, String> names(WateringTables tables) {
        SortedMap<String, String> names = new TreeMap<>(tables.plantWords());
        tables.plants().forEach((key, kind) -> {
            names.put(key, key);
            names.put(kind.title().toLowerCase(Locale.ROOT), key);
        });
        return names;
    }

    /** The longest name that stands in the text as words of its own: {@code raspberries in three rows}. */
    private static Optional<String> within(String said, Map<String, String> names) {
        List<String> words = List.of(said.split("[^\\p{L}\\p{N}.-]+"));
        String spaced = " " + String.join(" ", words) + " ";
        return names.entrySet().stream()
                .filter(name -> spaced.contains(" " + name.getKey() + " "))
                .max(Comparator.comparingInt((Map.Entry<String, String> name) ->
                                name.getKey().length())
                        .thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getValue);
    }
}
