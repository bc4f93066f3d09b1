package leat.script;

import java.lang.reflect.Method;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The first snippets of a Java session, which give it the words that a script in JavaScript has: imports of the
 * vocabulary and of all types of the surface, and a method for each function of the session that forwards to it.
 */
final class JavaPrelude {

    /** The forwarding methods find their session through the loader of their own class. */
    static final String DOOR = "door$()";

    private static final String DOOR_METHOD =
            "leat.script.JavaDoor door$() { return (leat.script.JavaDoor) java.lang.invoke.MethodHandles.lookup().lookupClass().getClassLoader(); }";

    private JavaPrelude() {}

    static List<String> snippets(Surface surface, List<Class<?>> vocabulary) {
        List<String> snippets = new ArrayList<>(List.of("import java.util.*;", "import java.util.stream.*;"));
        TreeSet<String> packages = new TreeSet<>();
        surface.types().values().forEach(type -> packages.add(type.getPackageName()));
        packages.forEach(each -> snippets.add("import " + each + ".*;"));
        vocabulary.forEach(type -> snippets.add("import static " + type.getName() + ".*;"));
        snippets.add(DOOR_METHOD);
        for (Operation operation : Surface.own(SessionFunctions.class).values()) {
            operation.overloads().forEach(method -> snippets.add(forwarding(method)));
        }
        return List.copyOf(snippets);
    }

    /** {@code Yard plan(Yard yard) { return door$().functions().plan(yard); }}, types written in full. */
    static String forwarding(Method method) {
        Type[] types = method.getGenericParameterTypes();
        List<String> declared = new ArrayList<>();
        List<String> passed = new ArrayList<>();
        for (int i = 0; i < types.length; i++) {
            boolean last = method.isVarArgs() && i == types.length - 1;
            String type = written(types[i]);
            declared.add((last ? type.substring(0, type.length() - 2) + "..." : type) + " a" + i);
            passed.add("a" + i);
        }
        String result = written(method.getGenericReturnType());
        String call = DOOR + ".functions()." + method.getName() + "(" + String.join(", ", passed) + ");";
        return typeParameters(method) + result + " " + method.getName() + "(" + String.join(", ", declared) + ") { "
                + (result.equals("void") ? call : "return " + call) + " }";
    }

    private static String typeParameters(Method method) {
        String names = Arrays.stream(method.getTypeParameters())
                .map(TypeVariable::getName)
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "" : "<" + names + "> ";
    }

    private static String written(Type type) {
        return type.getTypeName().replace('$', '.');
    }
}
