package leat.script;

import java.util.Collection;
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

    /** The nearest name, else all of them. */
    static String nearestOrAll(String typed, Collection<String> names) {
        String nearest = nearest(typed, names);
        return nearest.isEmpty() && !names.isEmpty() ? "; it has " + String.join(", ", names) : nearest;
    }
}
