package leat.script;

import java.lang.reflect.Array;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import leat.model.id.Id;
import org.graalvm.polyglot.Value;

/**
 * Turns what a script passes into what a Java parameter takes: text, numbers, truth values, lists, functions, and
 * the host values behind the views. Text stands for a constant or an id where one is wanted. Nothing is guessed
 * beyond that: a number is no length, a text is no number.
 */
final class Conversion {

    private final Views views;

    Conversion(Views views) {
        this.views = views;
    }

    /** The value as {@code wanted}, or nothing when it does not fit; undefined and null never fit. */
    Optional<Fit> fit(Value value, Type wanted) {
        Class<?> raw = Types.raw(wanted);
        if (value.isNull()) {
            return Optional.empty();
        }
        if (value.isProxyObject()) {
            return fitView(value.asProxyObject(), raw);
        }
        if (value.isString()) {
            return fitText(value.asString(), raw);
        }
        if (value.isNumber()) {
            return fitNumber(value, raw);
        }
        if (value.isBoolean()) {
            return when(raw == boolean.class || raw.isAssignableFrom(Boolean.class), value.asBoolean(), raw);
        }
        if (value.hasArrayElements()) {
            return fitList(value, wanted, raw);
        }
        if (value.canExecute()) {
            return Functional.of(raw).map(method -> new Fit(Functional.implement(wanted, method, value, views), 1));
        }
        return raw.isAssignableFrom(TreeMap.class) && value.hasMembers() ? fitMap(value, wanted) : Optional.empty();
    }

    private static Optional<Fit> when(boolean fits, Object value, Class<?> raw) {
        return fits ? Optional.of(new Fit(value, raw == Object.class ? 5 : 0)) : Optional.empty();
    }

    private static Optional<Fit> fitView(Object proxy, Class<?> raw) {
        if (proxy instanceof HostValue view) {
            return when(raw.isInstance(view.host()), view.host(), raw);
        }
        return Optional.empty();
    }

    private static Optional<Fit> fitText(String text, Class<?> raw) {
        if (raw.isAssignableFrom(String.class)) {
            return Optional.of(new Fit(text, raw == String.class ? 0 : 5));
        }
        if (raw.isEnum()) {
            return Types.constant(raw, text).map(constant -> new Fit(constant, 1));
        }
        if (Types.isName(raw)) {
            return Optional.of(new Fit(Types.named(raw, text), 2));
        }
        return Id.class.isAssignableFrom(raw)
                ? KindAndName.read(text, raw).map(id -> new Fit(id, 3))
                : Optional.empty();
    }

    private static Optional<Fit> fitNumber(Value value, Class<?> raw) {
        if (raw == int.class || raw == Integer.class) {
            return value.fitsInInt() ? Optional.of(new Fit(value.asInt(), 0)) : Optional.empty();
        }
        if (raw == long.class || raw == Long.class) {
            return value.fitsInLong() ? Optional.of(new Fit(value.asLong(), 0)) : Optional.empty();
        }
        double number = value.asDouble();
        boolean fits = raw == double.class || raw.isAssignableFrom(Double.class);
        return fits && Double.isFinite(number)
                ? Optional.of(new Fit(number, raw == double.class || raw == Double.class ? 1 : 5))
                : Optional.empty();
    }

    private Optional<Fit> fitList(Value value, Type wanted, Class<?> raw) {
        boolean array = raw.isArray();
        if (!array && !raw.isAssignableFrom(List.class)) {
            return Optional.empty();
        }
        Type element = array ? elementOf(wanted, raw) : Types.argument(wanted, 0);
        List<Object> elements = new ArrayList<>();
        int cost = raw == Object.class ? 5 : 0;
        for (long i = 0; i < value.getArraySize(); i++) {
            Optional<Fit> fit = fit(value.getArrayElement(i), element);
            if (fit.isEmpty()) {
                return Optional.empty();
            }
            elements.add(fit.get().value());
            cost = Math.max(cost, fit.get().cost());
        }
        Object list = array ? toArray(elements, Types.raw(element)) : List.copyOf(elements);
        return Optional.of(new Fit(list, cost));
    }

    private static Type elementOf(Type wanted, Class<?> raw) {
        return wanted instanceof GenericArrayType array ? array.getGenericComponentType() : raw.getComponentType();
    }

    static Object toArray(List<Object> elements, Class<?> componentType) {
        Object array = Array.newInstance(componentType, elements.size());
        for (int i = 0; i < elements.size(); i++) {
            Array.set(array, i, elements.get(i));
        }
        return array;
    }

    /** A plain object of the script, such as {@code {a: 1}}, as a map sorted by key. */
    private Optional<Fit> fitMap(Value value, Type wanted) {
        TreeMap<Object, Object> map = new TreeMap<>();
        int cost = 0;
        for (String key : value.getMemberKeys()) {
            Optional<Fit> fittedKey = fitText(key, Types.raw(Types.argument(wanted, 0)));
            Optional<Fit> fitted = fit(value.getMember(key), Types.argument(wanted, 1));
            if (fittedKey.isEmpty() || fitted.isEmpty()) {
                return Optional.empty();
            }
            map.put(fittedKey.get().value(), fitted.get().value());
            cost = Math.max(cost, fitted.get().cost());
        }
        return Optional.of(new Fit(map, cost));
    }

    /** All arguments of a call flattened into one list: in a variable argument an array stands for its elements. */
    static List<Value> flatten(Value[] values, int from) {
        List<Value> flat = new ArrayList<>();
        for (Value value : Arrays.asList(values).subList(from, values.length)) {
            if (!value.isProxyObject() && !value.isString() && value.hasArrayElements()) {
                for (long i = 0; i < value.getArraySize(); i++) {
                    flat.add(value.getArrayElement(i));
                }
            } else {
                flat.add(value);
            }
        }
        return flat;
    }
}
