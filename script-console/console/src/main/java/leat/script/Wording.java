package leat.script;

import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import leat.model.id.Id;
import org.graalvm.polyglot.Value;

/** Puts types and values into the words of a message: "a length, such as feet(1)", "the text "22"". */
final class Wording {

    private final Map<Class<?>, String> examples;
    private final Views views;

    /** {@code examples} tells for a type how a script may write a value of it. */
    Wording(Map<Class<?>, String> examples, Views views) {
        this.examples = examples;
        this.views = views;
    }

    Conversion conversion() {
        return views.conversion();
    }

    String ofType(Type type) {
        Class<?> raw = Types.raw(type);
        if (raw == int.class || raw == long.class || raw == Integer.class || raw == Long.class) {
            return "a whole number";
        }
        if (raw == double.class || Number.class.isAssignableFrom(raw)) {
            return "a number";
        }
        if (raw == boolean.class || raw == Boolean.class) {
            return "true or false";
        }
        if (CharSequence.class.isAssignableFrom(raw)) {
            return "a text";
        }
        if (raw.isEnum()) {
            return "one of " + constants(raw);
        }
        if (raw.isArray() || Collection.class.isAssignableFrom(raw)) {
            Type element = raw.isArray() ? raw.getComponentType() : Types.argument(type, 0);
            return "a list, each " + ofType(element);
        }
        if (Functional.of(raw).isPresent()) {
            return "a function";
        }
        String example = Id.class.isAssignableFrom(raw) && raw.isInterface() ? "\"head R7\"" : examples.get(raw);
        String suffix = Types.isName(raw) ? " or its name as text" : "";
        return withArticle(words(raw.getSimpleName())) + suffix + (example == null ? "" : ", such as " + example);
    }

    private static String constants(Class<?> enumType) {
        return Arrays.stream(enumType.getEnumConstants())
                .map(constant -> ((Enum<?>) constant).name())
                .collect(Collectors.joining(", "));
    }

    /** "; did you mean X?" where a text misses the constants of an enum by little. */
    String nearestConstant(Value value, Type wanted) {
        Class<?> raw = Types.raw(wanted);
        if (!raw.isEnum() || !value.isString()) {
            return "";
        }
        return Hint.nearest(
                value.asString(),
                Arrays.stream(raw.getEnumConstants())
                        .map(constant -> ((Enum<?>) constant).name())
                        .toList());
    }

    String ofValue(Value value) {
        if (value.isNull()) {
            return "undefined";
        }
        if (value.isProxyObject() && value.asProxyObject() instanceof MethodView method) {
            return "the method " + method.name() + " itself, not what it gives (write " + method.name() + "())";
        }
        if (value.isProxyObject() && value.asProxyObject() instanceof HostValue view) {
            String kind = withArticle(words(view.host().getClass().getSimpleName()));
            return Types.figure(view.host()).isPresent() ? kind + " (" + views.text(view.host()) + ")" : kind;
        }
        if (value.isString()) {
            return "the text \"" + value.asString() + "\"";
        }
        if (value.isNumber()) {
            boolean finite = Double.isFinite(value.asDouble());
            return finite ? "the number " + value : value + ", the outcome of a sum that has none";
        }
        if (value.isBoolean()) {
            return String.valueOf(value.asBoolean());
        }
        if (value.hasArrayElements()) {
            return "a list";
        }
        return value.canExecute() ? "a function" : "an object";
    }

    /** {@code PrecipitationRate} as "precipitation rate". */
    static String words(String typeName) {
        return typeName.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    static String withArticle(String noun) {
        return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }
}
