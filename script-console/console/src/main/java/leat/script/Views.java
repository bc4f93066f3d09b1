package leat.script;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyArray;
import org.graalvm.polyglot.proxy.ProxyIterator;
import org.jspecify.annotations.Nullable;

/**
 * Shows values of the host to one script: text, numbers and truth values as they are, constants and ids as text,
 * lists as arrays that cannot be changed, all else as a view. One value is shown as one view, so that
 * {@code ===} means what a reader expects. Figures are written in the units of the yard seen last.
 */
final class Views {

    private final Surface surface;
    private final Conversion conversion = new Conversion(this);
    private final Wording wording;
    private final ViewCache shown = new ViewCache();
    private String calling = "";
    private final UnitsSeen units;
    private Function<Object, Object> toArray = elements -> elements;
    private @Nullable Object nothing;

    Views(Surface surface, Map<Class<?>, String> examples, UnitsSeen units) {
        this.units = units;
        this.surface = surface;
        this.wording = new Wording(examples, this);
    }

    Surface surface() {
        return surface;
    }

    Conversion conversion() {
        return conversion;
    }

    Wording wording() {
        return wording;
    }

    /** The operation called last: the one to point at when the host refuses something. */
    String calling() {
        return calling;
    }

    void calling(String name) {
        calling = name;
    }

    /** {@code maker} turns a foreign array into an array of the script's language. */
    void makeArraysWith(Function<Object, Object> maker) {
        toArray = maker;
    }

    /** The value of a call that gives none, in the script's language. */
    @Nullable
    Object nothing() {
        return nothing;
    }

    void nothingIs(Object undefined) {
        nothing = undefined;
    }

    /** The value as the script sees it; null for an absent one. */
    @Nullable
    Object toScript(@Nullable Object host) {
        if (host instanceof Optional<?> optional) {
            return toScript(optional.orElse(null));
        }
        if (host instanceof OptionalDouble optional) {
            return optional.isPresent() ? optional.getAsDouble() : null;
        }
        if (host instanceof OptionalInt optional) {
            return optional.isPresent() ? optional.getAsInt() : null;
        }
        return host == null ? null : present(host);
    }

    /** The value as the script sees it. */
    Object present(Object host) {
        if (host instanceof String
                || host instanceof Boolean
                || host instanceof Integer
                || host instanceof Double
                || host instanceof Long) {
            return host;
        }
        if (host instanceof Number number) {
            return number.doubleValue();
        }
        if (host instanceof Enum<?> constant) {
            return constant.name();
        }
        if (host instanceof Collection<?> collection) {
            return list(collection);
        }
        if (host instanceof Stream<?> stream) {
            return list(stream.toList());
        }
        if (host instanceof Object[] array) {
            return list(Arrays.asList(array));
        }
        units.see(host);
        if (host instanceof Map<?, ?> map) {
            return new MapView(map, this);
        }
        if (Types.isName(host.getClass())) {
            return Types.nameIn(host);
        }
        boolean known = surface.knows(host.getClass());
        return known ? shown.computeIfAbsent(host, () -> new ScriptView(host, this)) : text(host);
    }

    Object list(Collection<?> collection) {
        List<Object> elements = new ArrayList<>();
        collection.forEach(element -> elements.add(toScript(element)));
        return toArray.apply(ProxyArray.fromList(elements));
    }

    ProxyIterator iterator(Iterator<Object> elements) {
        return ProxyIterator.from(elements);
    }

    /** How the units of the yard seen last are shown. */
    Display display() {
        return new Display(units.last());
    }

    /** A value of the host as a person reads it. */
    String text(Object host) {
        return PlainText.text(host, units.last());
    }

    /** A value of the script as a line to print; a list gives a line for each element. */
    String text(Value value) {
        if (value.isProxyObject()) {
            Object proxy = value.asProxyObject();
            if (proxy instanceof MethodView method) {
                throw method.forgotten();
            }
            return proxy instanceof HostValue view ? text(view.host()) : proxy.toString();
        }
        if (value.isString()) {
            return value.asString();
        }
        if (value.hasArrayElements()) {
            List<String> lines = new ArrayList<>();
            for (long i = 0; i < value.getArraySize(); i++) {
                lines.add(text(value.getArrayElement(i)));
            }
            return String.join("\n", lines);
        }
        if (value.isNull()) {
            return "none";
        }
        // A whole number is written without a decimal point, as the script's language does.
        return value.fitsInLong() ? String.valueOf(value.asLong()) : value.toString();
    }
}
