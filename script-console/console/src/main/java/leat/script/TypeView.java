package leat.script;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyArray;
import org.graalvm.polyglot.proxy.ProxyObject;

/** A type by its name, for its static factories and constants: {@code Pressure.psi(60)}, {@code Severity.BREACH}. */
final class TypeView implements ProxyObject {

    private final Class<?> type;
    private final SortedMap<String, Object> members = new TreeMap<>();

    TypeView(Class<?> type, Views views) {
        this.type = type;
        for (Class<?> nested : type.getDeclaredClasses()) {
            if (views.surface().shows(nested)) {
                members.put(nested.getSimpleName(), new TypeView(nested, views));
            }
        }
        constants(type).forEach((name, value) -> members.put(name, views.present(value)));
        Surface.statics(type).forEach((name, operation) -> members.put(name, new MethodView(operation, null, views)));
    }

    /** Public constants of a type, by name. */
    static SortedMap<String, Object> constants(Class<?> type) {
        SortedMap<String, Object> constants = new TreeMap<>();
        for (Field field : type.getDeclaredFields()) {
            int modifiers = field.getModifiers();
            if (Modifier.isStatic(modifiers) && Modifier.isPublic(modifiers) && Modifier.isFinal(modifiers)) {
                constants.put(field.getName(), read(field));
            }
        }
        return constants;
    }

    private static Object read(Field field) {
        try {
            return field.get(null);
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException("a public constant that cannot be read: " + field, impossible);
        }
    }

    SortedMap<String, Operation> functions() {
        return Surface.statics(type);
    }

    Set<String> names() {
        return members.keySet();
    }

    @Override
    public Object getMember(String name) {
        Object member = members.get(name);
        if (member == null) {
            throw new ScriptMistake(
                    "there is no " + type.getSimpleName() + "." + name + Hint.nearestOrAll(name, members.keySet()),
                    name);
        }
        return member;
    }

    @Override
    public Object getMemberKeys() {
        return ProxyArray.fromList(Arrays.asList(members.keySet().toArray()));
    }

    @Override
    public boolean hasMember(String name) {
        return switch (name) {
            case "then", "toString", "valueOf" -> false;
            default -> true;
        };
    }

    @Override
    public void putMember(String name, Value value) {
        throw new ScriptMistake(type.getSimpleName() + " cannot be changed", name);
    }

    @Override
    public String toString() {
        return type.getSimpleName();
    }
}
