package leat.script;

import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.graalvm.polyglot.Value;
import org.jspecify.annotations.Nullable;

/**
 * One name that can be called, with all methods that bear it.
 *
 * @param name      as the script writes it
 * @param overloads in the order in which they are tried; the first of equally good ones is taken
 */
record Operation(String name, List<Method> overloads) {

    Operation {
        overloads = List.copyOf(overloads);
    }

    /**
     * Calls the method that fits the arguments best.
     *
     * @param receiver the value that is asked; null for a static method
     * @throws ScriptMistake if number or kind of the arguments fits no method
     */
    @Nullable
    Object call(@Nullable Object receiver, Value[] given, Views views) {
        Candidate best = null;
        for (Method method : overloads) {
            Candidate candidate = Candidate.of(method, given, views.conversion());
            if (candidate.isBetterThan(best)) {
                best = candidate;
            }
        }
        if (best == null || !best.fits()) {
            throw new Misfit(this, given, views.wording()).mistake();
        }
        views.calling(name);
        try {
            return best.method().invoke(receiver, best.arguments().toArray());
        } catch (InvocationTargetException thrown) {
            throw Types.unchecked(thrown);
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException("the surface shows what cannot be called: " + best.method(), impossible);
        }
    }

    /** True if it is called for what it does; a script then gets undefined. */
    boolean givesNothing() {
        return overloads.stream().allMatch(method -> method.getReturnType() == void.class);
    }

    /** How the operation is written, one line an overload: {@code radius(least, most)}. */
    List<String> forms() {
        return overloads.stream()
                .map(method -> name + "(" + String.join(", ", parameterNames(method)) + ")")
                .toList();
    }

    static List<String> parameterNames(Executable method) {
        return Arrays.stream(method.getParameters())
                .map(parameter -> {
                    String shown = parameter.isNamePresent()
                            ? parameter.getName()
                            : Wording.words(parameter.getType().getSimpleName());
                    return parameter.isVarArgs() ? shown + "…" : shown;
                })
                .toList();
    }

    /** True if the method may take that many arguments. */
    static boolean takes(Method method, int count) {
        int stated = method.getParameterCount();
        return method.isVarArgs() ? count >= stated - 1 : count == stated;
    }

    /** The type wanted for argument number {@code index}. */
    static Type typeAt(Method method, int index) {
        Type[] types = method.getGenericParameterTypes();
        if (!method.isVarArgs() || index < types.length - 1) {
            return types[index];
        }
        Class<?> last = method.getParameterTypes()[types.length - 1];
        return last.getComponentType();
    }

    /** The values that are matched with parameters one by one: as given, with the variable part flattened. */
    static List<Value> spread(Method method, Value[] given) {
        if (!method.isVarArgs() || given.length < method.getParameterCount() - 1) {
            return Arrays.asList(given);
        }
        int fixed = method.getParameterCount() - 1;
        List<Value> values = new ArrayList<>(Arrays.asList(given).subList(0, fixed));
        values.addAll(Conversion.flatten(given, fixed));
        return values;
    }

    /** One method tried with the arguments given; {@code cost} is below 0 if it does not fit. */
    private record Candidate(Method method, List<Object> arguments, int cost) {

        static Candidate of(Method method, Value[] given, Conversion conversion) {
            Candidate misfit = new Candidate(method, List.of(), -1);
            if (!takes(method, given.length)) {
                return misfit;
            }
            List<Value> values = spread(method, given);
            List<Object> arguments = new ArrayList<>();
            int cost = 0;
            for (int i = 0; i < values.size(); i++) {
                Optional<Fit> fit = conversion.fit(values.get(i), typeAt(method, i));
                if (fit.isEmpty()) {
                    return misfit;
                }
                arguments.add(fit.get().value());
                cost += fit.get().cost();
            }
            return new Candidate(method, method.isVarArgs() ? gathered(method, arguments) : arguments, cost);
        }

        private static List<Object> gathered(Method method, List<Object> arguments) {
            int fixed = method.getParameterCount() - 1;
            Class<?> component = method.getParameterTypes()[fixed].getComponentType();
            List<Object> gathered = new ArrayList<>(arguments.subList(0, fixed));
            gathered.add(Conversion.toArray(arguments.subList(fixed, arguments.size()), component));
            return gathered;
        }

        boolean fits() {
            return cost >= 0;
        }

        boolean isBetterThan(@Nullable Candidate other) {
            return fits() && (other == null || cost < other.cost);
        }
    }
}
