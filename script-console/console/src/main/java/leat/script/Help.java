package leat.script;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import leat.model.plan.Part;

/** Explains words: what may be written, what it gives, an example; from the very methods that scripts call. */
final class Help {

    private static final int WIDTH = 98;
    private static final int LEAST_WIDTH = 40;
    private static final String SESSION = "The session";
    private static final String CONSTANTS = "Constants";

    private final Surface surface;
    private final Prelude prelude;

    Help(Surface surface, Prelude prelude) {
        this.surface = surface;
        this.prelude = prelude;
    }

    /** All words by topic. */
    String topics() {
        Map<String, List<String>> topics = new LinkedHashMap<>();
        prelude.vocabulary().forEach(type -> {
            SourceNotes notes = SourceNotes.of(type);
            for (Method method : inOrder(type, notes)) {
                List<String> words =
                        topics.computeIfAbsent(notes.heading(method.getName()), topic -> new ArrayList<>());
                if (!words.contains(method.getName())) {
                    words.add(method.getName());
                }
            }
        });
        topics.put(SESSION, List.copyOf(prelude.sessionFunctions().keySet()));
        topics.put(CONSTANTS, List.copyOf(prelude.constants().keySet()));
        List<List<String>> lines = new ArrayList<>();
        topics.forEach(
                (topic, words) -> lines.add(List.of(topic.isEmpty() ? "Words" : topic, String.join(", ", words))));
        return pairs(lines)
                + "\n\nhelp(\"rotor\") explains a word, help(\"Pressure\") a type, help(x) what can be done with x.";
    }

    private static List<Method> inOrder(Class<?> type, SourceNotes notes) {
        List<Method> methods = new ArrayList<>();
        Surface.statics(type).values().forEach(operation -> methods.addAll(operation.overloads()));
        methods.sort(Comparator.comparingInt(method -> notes.rank(method.getName())));
        return methods;
    }

    /** What the word means: a function, a type, or a method of several types; in any case of letters. */
    String of(String word) {
        String name = word.strip().replaceFirst("\\(.*", "");
        Optional<Operation> function = prelude.function(name);
        if (function.isPresent()) {
            return function(function.get());
        }
        Class<?> type = prelude.types().get(name);
        if (type != null) {
            return type(type);
        }
        if (prelude.constants().containsKey(name)) {
            Object constant = prelude.constants().get(name);
            return name + ": a constant, "
                    + Wording.withArticle(Wording.words(constant.getClass().getSimpleName()));
        }
        Optional<String> method = method(name);
        if (method.isPresent()) {
            return method.get();
        }
        throw new ScriptMistake(
                "there is no word " + name + Hint.nearest(name, Hint.likelierFirst(name, prelude.names()))
                        + "; help() lists all",
                "help");
    }

    private String function(Operation function) {
        List<String> lines = new ArrayList<>();
        Class<?> result = function.overloads().get(0).getReturnType();
        for (Method method : function.overloads()) {
            lines.add(form(method));
            String note = note(method, result);
            if (!note.isEmpty()) {
                lines.add(RecordText.indented(wrapped(note, WIDTH)));
            }
        }
        example(function).ifPresent(example -> lines.add("for example\n  " + example));
        lines.addAll(result(result));
        return String.join("\n", lines);
    }

    /** Of a part that has no comment of its own what is said of its kind. */
    private static String note(Method method, Class<?> result) {
        String own = SourceNotes.of(method.getDeclaringClass()).of(method);
        return own.isEmpty() && isPart(result) ? SourceNotes.of(result).ofType() : own;
    }

    /** A part is there to be told more; of other results their type tells. */
    private List<String> result(Class<?> result) {
        String kind = Wording.withArticle(Wording.words(result.getSimpleName()));
        if (isPart(result) && !surface.members(result).isEmpty()) {
            return List.of("then", RecordText.indented(methods(surface.members(result), false)));
        }
        boolean more = surface.shows(result) && !isPart(result) && Types.figureless(result);
        return more ? List.of("gives " + kind + "; help(\"" + result.getSimpleName() + "\") says more") : List.of();
    }

    private static boolean isPart(Class<?> type) {
        return Part.class.isAssignableFrom(type);
    }

    private Optional<String> example(Operation function) {
        for (Method method : function.overloads()) {
            String stated = SourceNotes.of(method.getDeclaringClass()).example(method);
            if (!stated.isEmpty()) {
                return Optional.of(stated);
            }
        }
        return new WordExample(prelude.functions()).of(function);
    }

    /** {@code arc(start: angle, sweep: angle)}. */
    private static String form(Method method) {
        List<String> names = Operation.parameterNames(method);
        List<String> shown = new ArrayList<>();
        Class<?>[] types = method.getParameterTypes();
        for (int i = 0; i < types.length; i++) {
            Class<?> type = types[i].isArray() ? types[i].getComponentType() : types[i];
            String kind = kind(type);
            shown.add(names.get(i) + (kind.equals(names.get(i).replace("…", "")) || kind.isEmpty() ? "" : ": " + kind));
        }
        return method.getName() + "(" + String.join(", ", shown) + ")";
    }

    private static String kind(Class<?> type) {
        if (type == String.class) {
            return "text";
        }
        if (type == Object.class) {
            return "";
        }
        return type.isPrimitive()
                ? type == boolean.class ? "true or false" : "number"
                : Wording.words(type.getSimpleName());
    }

    private String type(Class<?> type) {
        List<String> lines = new ArrayList<>();
        String note = SourceNotes.of(type).ofType();
        lines.add(type.getSimpleName() + (note.isEmpty() ? "" : ": " + wrapped(note, WIDTH)));
        if (type.isEnum()) {
            lines.add("one of " + constants(type));
        }
        SortedMap<String, Operation> statics = Surface.statics(type);
        if (!statics.isEmpty() && !type.isEnum()) {
            lines.add("made by");
            lines.add(RecordText.indented(
                    methods(statics, false).replaceAll("(?m)^(?=\\S)", type.getSimpleName() + ".")));
        }
        SortedMap<String, Operation> members = surface.members(type);
        if (!members.isEmpty()) {
            lines.add("with");
            lines.add(RecordText.indented(methods(members, true)));
        }
        return String.join("\n", lines);
    }

    private static String constants(Class<?> enumType) {
        return Arrays.stream(enumType.getEnumConstants())
                .map(constant -> ((Enum<?>) constant).name())
                .collect(Collectors.joining(", "));
    }

    /** What can be done with a value. */
    String ofValue(Object value) {
        Class<?> type = value.getClass();
        if (surface.shows(type)) {
            return type(type);
        }
        return surface.knows(type)
                ? Wording.words(type.getSimpleName()) + " with\n"
                        + RecordText.indented(methods(surface.members(type), true))
                : Wording.withArticle(Wording.words(type.getSimpleName()));
    }

    private String methods(SortedMap<String, Operation> members, boolean plainFirst) {
        List<List<String>> lines = new ArrayList<>();
        for (Operation member : members.values()) {
            for (Method method : member.overloads()) {
                lines.add(List.of(
                        plainFirst && method.getParameterCount() == 0 ? method.getName() + "()" : form(method),
                        SourceNotes.of(method.getDeclaringClass()).of(method)));
            }
        }
        return pairs(lines);
    }

    /** The method on each type that has one of that name. */
    private Optional<String> method(String name) {
        Map<String, String> byText = new TreeMap<>();
        for (Class<?> type : prelude.types().values()) {
            Operation operation = surface.members(type).get(name);
            if (operation != null) {
                String text = methods(new TreeMap<>(Map.of(name, operation)), true);
                byText.merge(text, Wording.words(type.getSimpleName()), (some, more) -> some + ", " + more);
            }
        }
        SortedSet<String> lines = new TreeSet<>();
        byText.forEach((text, kinds) -> lines.add("of " + kinds + "\n" + RecordText.indented(text)));
        return lines.isEmpty() ? Optional.empty() : Optional.of(name + "\n" + String.join("\n", lines));
    }

    /** Pairs of what is written and what is said of it, the latter broken into lines so that all fits the screen. */
    private static String pairs(List<List<String>> pairs) {
        int left = pairs.stream().mapToInt(pair -> pair.get(0).length()).max().orElse(0);
        int right = Math.max(LEAST_WIDTH, WIDTH - left - TextTable.GAP.length());
        return TextTable.pairs(pairs.stream()
                .map(pair -> List.of(pair.get(0), wrapped(pair.get(1), right)))
                .toList());
    }

    /** Broken into lines between words. */
    private static String wrapped(String text, int most) {
        StringBuilder lines = new StringBuilder();
        int width = 0;
        for (String word : text.split(" ")) {
            if (width > 0 && width + 1 + word.length() > most) {
                lines.append('\n');
                width = 0;
            } else if (width > 0) {
                lines.append(' ');
                width++;
            }
            lines.append(word);
            width += word.length();
        }
        return lines.toString();
    }
}
