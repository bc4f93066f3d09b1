package leat.document;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import leat.model.fault.Nearest;
import leat.model.power.CodeFamily;
import leat.model.quantity.UnitSystem;

/** How documents spell the constants of the model, and phrases that messages share. */
final class Words {

    private static final int MOST_SHOWN = 60;

    private Words() {}

    /** {@code DRIP_LINE} is written {@code drip line}. */
    static String of(Enum<?> constant) {
        String name = constant.name().replace('_', ' ');
        boolean abbreviated = constant == UnitSystem.US || constant instanceof CodeFamily;
        return abbreviated ? name : name.toLowerCase(Locale.ROOT);
    }

    static <E extends Enum<E>> List<String> all(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Words::of).toList();
    }

    /** The text as messages show it: in quotes, cut when long, without characters that a terminal would act on. */
    static String quoted(String text) {
        String shown = text.length() > MOST_SHOWN ? text.substring(0, MOST_SHOWN) + "…" : text;
        return "'" + shown.codePoints().mapToObj(Words::visible).collect(Collectors.joining()) + "'";
    }

    private static String visible(int codePoint) {
        boolean hidden = Character.isISOControl(codePoint)
                || Character.getType(codePoint) == Character.SURROGATE
                || Character.getType(codePoint) == Character.FORMAT;
        return hidden ? String.format(Locale.ROOT, "\\u%04x", codePoint) : Character.toString(codePoint);
    }

    /** "one of a, b, c", and the nearest of them if one is near. */
    static String oneOf(String wrong, Collection<String> allowed) {
        String list = (allowed.size() > 1 ? "one of " : "") + String.join(", ", allowed);
        // comparing takes the product of both lengths; nobody means a name by a page of text
        return wrong.length() > MOST_SHOWN
                ? list
                : list
                        + Nearest.to(wrong, allowed)
                                .map(near -> "; perhaps '" + near + "'")
                                .orElse("");
    }
}
