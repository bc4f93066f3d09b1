package leat.script;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.id.Id;

/** Ids of any kind as text: the kind and the name, such as {@code head R7}, as findings write them too. */
final class KindAndName {

    private KindAndName() {}

    /** The id that the text writes, if it begins with one of the kinds that {@code wanted} allows. */
    static Optional<Object> read(String text, Class<?> wanted) {
        for (Class<?> kind : kindsOf(wanted)) {
            String word = ((Id) Types.named(kind, "x")).kind() + " ";
            if (text.startsWith(word) && text.length() > word.length()) {
                return Optional.of(Types.named(kind, text.substring(word.length())));
            }
        }
        return Optional.empty();
    }

    private static List<Class<?>> kindsOf(Class<?> type) {
        if (!type.isSealed()) {
            return List.of(type);
        }
        List<Class<?>> kinds = new ArrayList<>();
        for (Class<?> permitted : type.getPermittedSubclasses()) {
            kinds.addAll(kindsOf(permitted));
        }
        return kinds;
    }
}
