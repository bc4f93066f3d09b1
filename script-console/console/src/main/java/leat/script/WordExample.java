package leat.script;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Makes up how a word may be written, from the kinds of its arguments and the other words that give such things. It can
 * be typed as it stands, in either language.
 */
final class WordExample {

    /** Taken in turn, so that places differ and no three of them lie in a line. */
    private static final int[] NUMBERS = {3, 4, 13, 4, 13, 9, 2, 7};

    private static final int DEEPEST = 3;

    private final SortedMap<String, Operation> words;
    private int number;

    WordExample(SortedMap<String, Operation> words) {
        this.words = words;
    }

    /** A call of the first form of the word for which one can be made up. */
    Optional<String> of(Operation word) {
        number = 0;
        return word.overloads().stream()
                .flatMap(method -> call(method, 0).stream())
                .findFirst();
    }

    private Optional<String> call(Method method, int depth) {
        List<String> arguments = new ArrayList<>();
        Class<?>[] types = method.getParameterTypes();
        for (int i = 0; i < types.length; i++) {
            boolean repeats = method.isVarArgs() && i == types.length - 1;
            Class<?> type = repeats ? types[i].getComponentType() : types[i];
            boolean places = repeats && type != String.class;
            for (int times = places ? 3 : 1; times > 0; times--) {
                Optional<String> argument = argument(type, method.getParameters()[i].getName(), depth);
                if (argument.isEmpty()) {
                    return Optional.empty();
                }
                arguments.add(argument.get());
            }
        }
        return Optional.of(method.getName() + "(" + String.join(", ", arguments) + ")");
    }

    private Optional<String> argument(Class<?> type, String name, int depth) {
        if (type == String.class || type == Object.class) {
            return Optional.of("\"" + (name.equals("name") ? "front" : name) + "\"");
        }
        if (type == double.class || type == int.class) {
            return Optional.of(String.valueOf(NUMBERS[number++ % NUMBERS.length]));
        }
        if (type == boolean.class) {
            return Optional.of("true");
        }
        if (type.isEnum()) {
            String outer = type.getEnclosingClass() == null
                    ? ""
                    : type.getEnclosingClass().getSimpleName() + ".";
            return Optional.of(outer + type.getSimpleName() + "." + ((Enum<?>) type.getEnumConstants()[0]).name());
        }
        return depth == DEEPEST ? Optional.empty() : made(type, depth);
    }

    /** A call of the plainest word that gives such a thing. */
    private Optional<String> made(Class<?> type, int depth) {
        return words.values().stream()
                .flatMap(word -> word.overloads().stream())
                .filter(method -> type.isAssignableFrom(method.getReturnType()))
                .sorted(Comparator.comparing(Method::isVarArgs)
                        .thenComparing(Method::getParameterCount)
                        .thenComparing(Method::getName))
                .flatMap(method -> call(method, depth + 1).stream())
                .findFirst();
    }
}
