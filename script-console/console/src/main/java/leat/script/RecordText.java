package leat.script;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Region;
import leat.model.id.Id;
import leat.model.plan.Yard;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import org.jspecify.annotations.Nullable;

/** Records as a person reads them: by their components, whatever these are, in words and in the yard's units. */
final class RecordText {

    /** A list or map with more entries is counted where it is but a part of something. */
    private static final int MOST_LISTED = 12;

    private static final int LONGEST_PART = 100;

    private final UnitSystem units;

    RecordText(UnitSystem units) {
        this.units = units;
    }

    /** True for a public record that says nothing of itself but the text that every record has. */
    static boolean isPlainRecord(Object host) {
        Class<?> type = host.getClass();
        return type.isRecord()
                && Modifier.isPublic(type.getModifiers())
                && type.getRecordComponents().length > 0
                && host.toString()
                        .startsWith(type.getSimpleName() + "[" + type.getRecordComponents()[0].getName() + "=");
    }

    /** The components with their values, in the order in which they are declared. */
    static Map<String, Object> components(Object host) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (RecordComponent component : host.getClass().getRecordComponents()) {
            values.put(component.getName(), read(component, host));
        }
        return values;
    }

    private static Object read(RecordComponent component, Object host) {
        try {
            return component.getAccessor().invoke(host);
        } catch (InvocationTargetException thrown) {
            throw Types.unchecked(thrown);
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException("a public record that cannot be read: " + host.getClass(), impossible);
        }
    }

    /** {@code head R7}: what names the record, its id if it has one. */
    static String title(Object host) {
        String kind = Wording.words(host.getClass().getSimpleName());
        return components(host).values().stream()
                .findFirst()
                .filter(Id.class::isInstance)
                .map(id -> kind + " " + ((Id) id).name())
                .orElse(kind);
    }

    /** On one line, as a part of other text: {@code rotor R7 (family rotor-9_14, at (3.0 ft, 4.0 ft) …)}. */
    String inline(@Nullable Object value) {
        if (value == null) {
            return "none";
        }
        if (value instanceof Optional<?> optional) {
            return inline(optional.orElse(null));
        }
        if (value instanceof Quantity quantity) {
            return Units.show(quantity, units);
        }
        if (value instanceof Id id) {
            return id.name();
        }
        if (value instanceof Point point) {
            return "(" + inline(point.east()) + ", " + inline(point.north()) + ")";
        }
        if (value instanceof Region region) {
            return inline(region.area()) + ", " + region.outer().size() + " corners";
        }
        if (value instanceof Polyline route) {
            return inline(route.length()) + " from " + inline(route.start()) + " to " + inline(route.end());
        }
        if (value instanceof Enum<?> constant) {
            return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        if (value instanceof Boolean truth) {
            return truth ? "yes" : "no";
        }
        if (value instanceof Map<?, ?> map) {
            return map(map);
        }
        if (value instanceof Collection<?> collection) {
            return list(collection);
        }
        return isPlainRecord(value) && !(value instanceof Yard) ? record(value) : PlainText.text(value, units);
    }

    /** The value of a field, which need not be told again what it is: {@code start 0 deg, sweep 90 deg} for an arc. */
    String within(String field, @Nullable Object value) {
        String text = inline(value);
        String kind = Wording.words(field) + " (";
        return text.startsWith(kind) && text.endsWith(")") ? text.substring(kind.length(), text.length() - 1) : text;
    }

    private String record(Object host) {
        Map<String, Object> components = components(host);
        if (components.size() == 1) {
            return inline(components.values().iterator().next());
        }
        String rest = components.entrySet().stream()
                .filter(entry -> !(entry.getValue() instanceof Id))
                .map(entry -> Wording.words(entry.getKey()) + " " + inline(entry.getValue()))
                .collect(Collectors.joining(", "));
        String title = title(host);
        return rest.length() > LONGEST_PART ? title : title + " (" + rest + ")";
    }

    private String list(Collection<?> collection) {
        if (collection.isEmpty()) {
            return "none";
        }
        String listed = collection.size() > MOST_LISTED
                ? ""
                : collection.stream().map(this::nameOrValue).collect(Collectors.joining(", "));
        return listed.isEmpty() || listed.length() > LONGEST_PART
                ? PlainText.counted(collection.size(), noun(collection))
                : listed;
    }

    private String map(Map<?, ?> map) {
        if (map.isEmpty()) {
            return "none";
        }
        String listed = map.size() > MOST_LISTED
                ? ""
                : map.entrySet().stream()
                        .map(entry -> PlainText.key(entry.getKey()) + ": " + inline(entry.getValue()))
                        .collect(Collectors.joining(", "));
        return listed.isEmpty() || listed.length() > LONGEST_PART ? PlainText.counted(map.size(), "entry") : listed;
    }

    private String nameOrValue(Object element) {
        if (element instanceof Record && isPlainRecord(element)) {
            Object first = components(element).values().iterator().next();
            return first instanceof Id id ? id.name() : inline(element);
        }
        return inline(element);
    }

    private static String noun(Collection<?> collection) {
        List<Class<?>> kinds =
                collection.stream().<Class<?>>map(Object::getClass).distinct().toList();
        return kinds.size() == 1 ? Wording.words(kinds.get(0).getSimpleName()) : "thing";
    }

    /** A line for each component. */
    String block(Object host) {
        return title(host) + "\n" + indented(pairs(host));
    }

    /** The components that are worth a line, the id aside. */
    String pairs(Object host) {
        return TextTable.pairs(components(host).entrySet().stream()
                .filter(entry -> !(entry.getValue() instanceof Id && isFirst(entry.getKey(), host)))
                .map(entry -> Arrays.asList(Wording.words(entry.getKey()), within(entry.getKey(), entry.getValue())))
                .toList());
    }

    private static boolean isFirst(String component, Object host) {
        return host.getClass().getRecordComponents()[0].getName().equals(component);
    }

    static String indented(String lines) {
        return "  " + lines.replace("\n", "\n  ");
    }
}
