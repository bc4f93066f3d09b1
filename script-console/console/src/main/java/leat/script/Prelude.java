package leat.script;

import java.lang.reflect.Method;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private final List<Class<?>> vocabulary;

    Prelude(Surface surface, List<Class<?>> vocabulary) {
        this.vocabulary = List.copyOf(vocabulary);
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

    /** The classes whose static methods and constants are words. */
    List<Class<?>> vocabulary() {
        return vocabulary;
    }

    SortedMap<String, Operation> functions() {
        return Collections.unmodifiableSortedMap(functions);
    }

    SortedMap<String, Object> constants() {
        return Collections.unmodifiableSortedMap(constants);
    }

    SortedMap<String, Class<?>> types() {
        return Collections.unmodifiableSortedMap(types);
    }

    /** The functions that a session adds to the vocabulary; the same in every language. */
    SortedMap<String, Operation> sessionFunctions() {
        return Surface.own(SessionFunctions.class);
    }

    /** The function of that name, of the vocabulary or of the session. */
    Optional<Operation> function(String name) {
        return Optional.ofNullable(functions.get(name))
                .or(() -> Optional.ofNullable(sessionFunctions().get(name)));
    }

    /** The names of all functions. */
    SortedSet<String> functionNames() {
        SortedSet<String> names = new TreeSet<>(functions.keySet());
        names.addAll(sessionFunctions().keySet());
        return names;
    }

    /** Every name, whatever it stands for. */
    SortedSet<String> names() {
        SortedSet<String> names = new TreeSet<>(types.keySet());
        names.addAll(constants.keySet());
        names.addAll(functionNames());
        return names;
    }

    /** Every name with what it stands for, in order of name. */
    SortedMap<String, Object> bindings(Views views, SessionFunctions session) {
        SortedMap<String, Object> bindings = new TreeMap<>();
        types.forEach((name, type) -> bindings.put(name, new TypeView(type, views)));
        constants.forEach((name, value) -> bindings.put(name, views.present(value)));
        functions.forEach((name, operation) -> bindings.put(name, new MethodView(operation, null, views)));
        bindings.putAll(session.bindings(views));
        return Collections.unmodifiableSortedMap(bindings);
    }
}
