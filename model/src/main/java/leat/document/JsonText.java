package leat.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Prints values as JSON that a person likes to read: what fits on a line stands on one, save lists of objects, which
 * have a line or more for each. Same values, same text.
 */
final class JsonText {

    private static final int WIDTH = 110;

    private JsonText() {}

    /** @param value maps, collections, strings, booleans, integers and finite doubles */
    static String print(Map<String, ?> value) {
        StringBuilder out = new StringBuilder();
        open(value, "", out);
        return out.append('\n').toString();
    }

    private static void print(Object value, String indent, int before, StringBuilder out) {
        String compact = compact(value);
        boolean fits = indent.length() + before + compact.length() <= WIDTH && !holdsObjects(value);
        if (fits || !(value instanceof Map || value instanceof Collection)) {
            out.append(compact);
        } else {
            open(value, indent, out);
        }
    }

    private static boolean holdsObjects(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.values().stream().anyMatch(JsonText::holdsObjects);
        }
        return value instanceof Collection<?> items && items.stream().anyMatch(one -> one instanceof Map);
    }

    private static void open(Object value, String indent, StringBuilder out) {
        String deeper = indent + "  ";
        boolean isMap = value instanceof Map;
        Collection<?> entries = value instanceof Map<?, ?> map ? map.entrySet() : (Collection<?>) value;
        out.append(isMap ? '{' : '[');
        String comma = "";
        for (Object entry : entries) {
            out.append(comma).append('\n').append(deeper);
            Object item = entry;
            int before = 0;
            if (entry instanceof Map.Entry<?, ?> field) {
                String name = quoted((String) field.getKey()) + ": ";
                out.append(name);
                before = name.length();
                item = field.getValue();
            }
            print(item, deeper, before + 1, out); // one for the comma behind it
            comma = ",";
        }
        out.append('\n').append(indent).append(isMap ? '}' : ']');
    }

    private static String compact(Object value) {
        if (value instanceof Map<?, ?> map) {
            List<String> fields = new ArrayList<>();
            map.forEach((name, one) -> fields.add(quoted((String) name) + ": " + compact(one)));
            return "{" + String.join(", ", fields) + "}";
        }
        if (value instanceof Collection<?> items) {
            return "[" + String.join(", ", items.stream().map(JsonText::compact).toList()) + "]";
        }
        return value instanceof String text ? quoted(text) : value.toString();
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(codePoint -> {
            if (codePoint == '"' || codePoint == '\\') {
                out.append('\\').appendCodePoint(codePoint);
            } else if (Character.isISOControl(codePoint) || Character.getType(codePoint) == Character.SURROGATE) {
                out.append(String.format(Locale.ROOT, "\\u%04x", codePoint)); // half a pair is no UTF-8
            } else {
                out.appendCodePoint(codePoint);
            }
        });
        return out.append('"').toString();
    }
}
