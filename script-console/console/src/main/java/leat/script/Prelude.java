package leat.script;

import java.lang.reflect.Method;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The words of a script that are there from the start: the static factories and constants of the vocabulary classes,
 * the functions of the session, and each type of the surface by its simple name.
 */
final class Prelude {

    private final SortedMap<String, Operation> functions = new TreeMap<>();
    private final SortedMap<String, Object> constants = new TreeMap<>();
    private final SortedMap<String, Class<?>> types;
    private final SessionFunctions session;

    Prelude(Surface surface, List<Class<?>> vocabulary, SessionFunctions session) {
        this.session = session;
        this.types = surface.types();
        for (Class<?> each : vocabulary) {
            functions.putAll(Surface.statics(each));
            constants.putAll(TypeView.constants(each));
        }
    }

    /** For each type that a one-figure factory gives, how a script may write it: {@code feet(1)}. */
    Map<Class<?>, String> examples() {
        Map<Class<?>, String> examples = new LinkedHashMap<>();
        for (Operation operation : functions.values()) {
            for (Method method : operation.overloads()) {
                Class<?>[] types = method.getParameterTypes();
                if (types.length == 1 && types[0] == double.class) {
                    examples.putIfAbsent(method.getReturnType(), operation.name() + "(1)");
                }
            }
        }
        return examples;
    }

    /** Every name, whatever it stands for. */
    SortedSet<String> names() {
        SortedSet<String> names = new TreeSet<>(types.keySet());
        names.addAll(constants.keySet());
        names.addAll(functions.keySet());
        names.addAll(Surface.own(SessionFunctions.class).keySet());
        return names;
    }

    /** Every name with what it stands for, in order of name. */
    SortedMap<String, Object> bindings(Views views) {
        SortedMap<String, Object> bindings = new TreeMap<>();
        types.forEach((name, type) -> bindings.put(name, new TypeView(type, views)));
        constants.forEach((name, value) -> bindings.put(name, views.present(value)));
        functions.forEach((name, operation) -> bindings.put(name, new MethodView(operation, null, views)));
        bindings.putAll(session.bindings(views));
        return Collections.unmodifiableSortedMap(bindings);
    }
}
