package leat.script;

import java.lang.reflect.Method;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.graalvm.polyglot.Value;

/** Says what is wrong with the arguments of a call that fits no overload. */
final class Misfit {

    private final Operation operation;
    private final Value[] given;
    private final Wording wording;

    Misfit(Operation operation, Value[] given, Wording wording) {
        this.operation = operation;
        this.given = given;
        this.wording = wording;
    }

    ScriptMistake mistake() {
        List<Method> ofThatCount = operation.overloads().stream()
                .filter(method -> Operation.takes(method, given.length))
                .toList();
        return new ScriptMistake(ofThatCount.isEmpty() ? wrongCount() : wrongKind(ofThatCount), operation.name());
    }

    private String wrongCount() {
        String forms = String.join(" or ", operation.forms());
        return "write " + forms + "; " + (given.length == 0 ? "no" : String.valueOf(given.length))
                + (given.length == 1 ? " argument was given" : " arguments were given");
    }

    /** Points at the first argument that no overload takes, and names what the overloads that got so far want. */
    private String wrongKind(List<Method> methods) {
        int furthest = methods.stream().mapToInt(this::firstMisfit).max().orElseThrow();
        Set<String> wanted = new LinkedHashSet<>();
        for (Method method : methods) {
            if (firstMisfit(method) == furthest) {
                wanted.add(wording.ofType(Operation.typeAt(method, furthest)));
            }
        }
        Method first = methods.stream()
                .filter(method -> firstMisfit(method) == furthest)
                .findFirst()
                .orElseThrow();
        Value value = Operation.spread(first, given).get(furthest);
        return operation.name() + ": argument " + (furthest + 1) + label(first, furthest) + " is "
                + wording.ofValue(value) + "; it must be "
                + wanted.stream().collect(Collectors.joining(" or "))
                + wording.nearestConstant(value, Operation.typeAt(first, furthest));
    }

    private int firstMisfit(Method method) {
        List<Value> values = Operation.spread(method, given);
        for (int i = 0; i < values.size(); i++) {
            if (wording.conversion()
                    .fit(values.get(i), Operation.typeAt(method, i))
                    .isEmpty()) {
                return i;
            }
        }
        return 0;
    }

    private static String label(Method method, int index) {
        if (index >= method.getParameterCount() || !method.getParameters()[index].isNamePresent()) {
            return "";
        }
        return " (" + method.getParameters()[index].getName() + ")";
    }
}
