package leat.script;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import jdk.jshell.SourceCodeAnalysis;
import leat.script.ScriptSession.Suggestion;
import leat.script.ScriptSession.Suggestions;

/** Suggests names in Java, as the compiler knows them; without what every object has. */
final class JavaCompletion {

    private static final Set<String> OF_EVERY_OBJECT = Arrays.stream(Object.class.getMethods())
            .map(method -> method.getName())
            .collect(Collectors.toUnmodifiableSet());

    private final JavaShell java;
    private final Prelude prelude;
    private final ScriptFolder folder;

    JavaCompletion(JavaShell java, Prelude prelude, ScriptFolder folder) {
        this.java = java;
        this.prelude = prelude;
        this.folder = folder;
    }

    Suggestions at(String text, int cursor) {
        return FileSuggestions.at(text, cursor, folder).orElseGet(() -> names(text, cursor));
    }

    private Suggestions names(String text, int cursor) {
        int[] from = {cursor};
        boolean member = text.substring(0, Chain.startOfName(text, cursor))
                .stripTrailing()
                .endsWith(".");
        SortedMap<String, Suggestion> found = new TreeMap<>();
        for (SourceCodeAnalysis.Suggestion each : java.analysis().completionSuggestions(text, cursor, from)) {
            String name = each.continuation().replaceFirst("\\(.*", "");
            if (!OF_EVERY_OBJECT.contains(name) && !name.contains("$")) {
                found.put(
                        name,
                        new Suggestion(
                                each.continuation(), member ? each.continuation() : shown(name, each.continuation())));
            }
        }
        if (Chain.startOfName(text, cursor) == cursor
                && text.substring(0, cursor).isBlank()) {
            // At an empty line the compiler offers all of Java; the words of Leat are meant.
            found.keySet().retainAll(prelude.functionNames());
        }
        return new Suggestions(from[0], List.copyOf(found.values()));
    }

    private String shown(String name, String continuation) {
        Optional<Operation> word = continuation.endsWith("(") ? prelude.function(name) : Optional.empty();
        return word.map(known -> known.forms().get(0)).orElse(continuation);
    }
}
