package leat.script;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What a script may call: the public methods of the public types of chosen packages, and nothing beyond them.
 * A package counts with those below it, save those named {@code internal}. Methods that every object has
 * ({@code getClass}, {@code wait} …) are never part of it.
 */
public final class Surface {

    private final List<String> packages;
    private final Map<Class<?>, SortedMap<String, Operation>> membersByType = new ConcurrentHashMap<>();

    private Surface(List<String> packages) {
        this.packages = packages;
    }

    /** The surface of Leat itself: the model and the calculations; never the reading and writing of documents. */
    public static Surface ofLeat() {
        return of("leat.model", "leat.calc");
    }

    static Surface of(String... packages) {
        return new Surface(List.of(packages));
    }

    /** All top-level types of the surface by their simple name, in order of name; found by listing class folders and jars. */
    public SortedMap<String, Class<?>> types() {
        SortedMap<String, Class<?>> types = new TreeMap<>();
        for (Class<?> type : SurfaceScan.classesIn(packages)) {
            if (shows(type) && type.getEnclosingClass() == null) {
                Class<?> other = types.putIfAbsent(type.getSimpleName(), type);
                if (other != null) {
                    throw new IllegalStateException(type + " and " + other + " have the same simple name");
                }
            }
        }
        return types;
    }

    /** True for a public type of the chosen packages whose outer types are public too. */
    boolean shows(Class<?> type) {
        String place = type.getPackageName();
        return packages.stream().anyMatch(wanted -> place.equals(wanted) || place.startsWith(wanted + "."))
                && !(place + ".").contains(".internal.")
                && isPublic(type);
    }

    /** True if a value of this class is of some type of the surface, be it by a supertype. */
    boolean knows(Class<?> type) {
        Set<Class<?>> shown = new LinkedHashSet<>();
        collectShownTypes(type, shown);
        return !shown.isEmpty();
    }

    /** What can be called on a value of this class, by name; empty for a class that the surface does not show. */
    SortedMap<String, Operation> members(Class<?> type) {
        return membersByType.computeIfAbsent(type, this::collectMembers);
    }

    /** The static factories and other static methods of a type of the surface, by name. */
    static SortedMap<String, Operation> statics(Class<?> type) {
        return group(Arrays.stream(type.getDeclaredMethods())
                .filter(method -> Modifier.isStatic(method.getModifiers()) && isCallable(method))
                .toList());
    }

    /** The public instance methods that a class itself declares, by name; the class need not be on the surface. */
    static SortedMap<String, Operation> own(Class<?> type) {
        return group(Arrays.stream(type.getDeclaredMethods())
                .filter(method -> !Modifier.isStatic(method.getModifiers()) && isCallable(method))
                .toList());
    }

    private SortedMap<String, Operation> collectMembers(Class<?> type) {
        Set<Class<?>> shown = new LinkedHashSet<>();
        collectShownTypes(type, shown);
        List<Method> methods = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (Class<?> each : shown) {
            for (Method method : each.getDeclaredMethods()) {
                String shape = method.getName() + Arrays.toString(method.getParameterTypes());
                if (!Modifier.isStatic(method.getModifiers()) && isCallable(method) && seen.add(shape)) {
                    methods.add(method);
                }
            }
        }
        return group(methods);
    }

    /** The type and its supertypes, nearest first; a hidden class is reached through the shown types above it. */
    private void collectShownTypes(Class<?> type, Set<Class<?>> shown) {
        if (shows(type)) {
            shown.add(type);
        }
        if (type.getSuperclass() != null) {
            collectShownTypes(type.getSuperclass(), shown);
        }
        for (Class<?> above : type.getInterfaces()) {
            collectShownTypes(above, shown);
        }
    }

    private static SortedMap<String, Operation> group(List<Method> methods) {
        SortedMap<String, List<Method>> byName = new TreeMap<>();
        // Reflection promises no order: sort, so that messages and the choice between overloads never vary.
        methods.stream()
                .sorted(Comparator.comparing(Method::getParameterCount).thenComparing(Method::toString))
                .forEach(method -> byName.computeIfAbsent(method.getName(), name -> new ArrayList<>())
                        .add(method));
        SortedMap<String, Operation> operations = new TreeMap<>();
        byName.forEach((name, overloads) -> operations.put(name, new Operation(name, overloads)));
        return operations;
    }

    private static boolean isCallable(Method method) {
        return Modifier.isPublic(method.getModifiers()) && !method.isSynthetic() && !isOfEveryObject(method);
    }

    private static boolean isOfEveryObject(Method method) {
        return Arrays.stream(Object.class.getDeclaredMethods())
                .anyMatch(every -> every.getName().equals(method.getName())
                        && Arrays.equals(every.getParameterTypes(), method.getParameterTypes()));
    }

    private static boolean isPublic(Class<?> type) {
        Class<?> outer = type.getEnclosingClass();
        return Modifier.isPublic(type.getModifiers())
                && !type.isAnonymousClass()
                && !type.isLocalClass()
                && (outer == null || isPublic(outer));
    }
}
