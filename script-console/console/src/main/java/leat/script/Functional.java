package leat.script;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.graalvm.polyglot.Value;
import org.jspecify.annotations.Nullable;

/** Lets a function of the script stand where Java takes an interface of one method. */
final class Functional {

    private Functional() {}

    /** The one method to implement; nothing when the type is no open interface of one method. */
    static Optional<Method> of(Class<?> type) {
        if (!type.isInterface() || type.isSealed()) {
            return Optional.empty();
        }
        List<Method> open = Arrays.stream(type.getMethods())
                .filter(method -> Types.isAbstract(method) && !isOfEveryObject(method))
                .toList();
        return open.size() == 1 ? Optional.of(open.get(0)) : Optional.empty();
    }

    private static boolean isOfEveryObject(Method method) {
        return Arrays.stream(Object.class.getMethods())
                .anyMatch(every -> every.getName().equals(method.getName())
                        && Arrays.equals(every.getParameterTypes(), method.getParameterTypes()));
    }

    static Object implement(Type wanted, Method method, Value function, Views views) {
        Class<?> raw = Types.raw(wanted);
        Type result = Types.resolve(method.getGenericReturnType(), wanted);
        InvocationHandler handler = (self, called, arguments) -> {
            if (called.equals(method)) {
                return call(function, arguments == null ? new Object[0] : arguments, result, views);
            }
            if (called.isDefault()) {
                return InvocationHandler.invokeDefault(self, called, arguments);
            }
            return switch (called.getName()) {
                case "equals" -> self == arguments[0];
                case "hashCode" -> System.identityHashCode(self);
                default -> "a function of the script";
            };
        };
        return Proxy.newProxyInstance(
                raw.getClassLoader() == null ? Functional.class.getClassLoader() : raw.getClassLoader(),
                new Class<?>[] {raw},
                handler);
    }

    private static @Nullable Object call(Value function, Object[] arguments, Type result, Views views) {
        Value answer =
                function.execute(Arrays.stream(arguments).map(views::toScript).toArray());
        if (result == void.class) {
            return null;
        }
        return views.conversion()
                .fit(answer, result)
                .map(Fit::value)
                .orElseThrow(() -> new ScriptMistake(
                        "the function gives " + views.wording().ofValue(answer) + "; it must give "
                                + views.wording().ofType(result)));
    }
}
