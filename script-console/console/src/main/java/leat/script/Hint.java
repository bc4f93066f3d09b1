package leat.script;

import java.util.Collection;
import java.util.Comparator;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.model.fault.Nearest;

/** The nearest right name as the end of a message. */
final class Hint {

    private Hint() {}

    /** {@code ; did you mean X?}, or nothing when no name is near. */
    static String nearest(String typed, Collection<String> names) {
        return Nearest.to(typed, names)
                .map(name -> "; did you mean " + name + "?")
                .orElse("");
    }

    /** Of equally near names one that begins like the wrong one, large or small, is the likelier. */
    static SortedSet<String> likelierFirst(String typed, Collection<String> names) {
        SortedSet<String> sorted = new TreeSet<>(Comparator.<String, Boolean>comparing(
                        name -> Character.isUpperCase(name.charAt(0)) != Character.isUpperCase(typed.charAt(0)))
                .thenComparing(Comparator.naturalOrder()));
        sorted.addAll(names);
        return sorted;
    }

    /** The nearest name, else all of them. */
    static String nearestOrAll(String typed, Collection<String> names) {
        String nearest = nearest(typed, names);
        return nearest.isEmpty() && !names.isEmpty() ? "; it has " + String.join(", ", names) : nearest;
    }
}
