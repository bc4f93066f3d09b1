package leat.script;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.script.Chain.Link;
import leat.script.ScriptSession.Suggestion;
import leat.script.ScriptSession.Suggestions;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Value;
import org.jspecify.annotations.Nullable;

/**
 * Suggests names in JavaScript: words and the session's own names, after a dot the methods of what stands before it.
 * That is found out from values that are there and from what methods give by their declaration; nothing is run.
 */
final class Completion {

    private static final List<String> LANGUAGE =
            List.of("const", "let", "for", "if", "else", "function", "return", "while", "true", "false");

    private final Surface surface;
    private final Prelude prelude;
    private final ScriptFolder folder;
    private final Value globals;

    Completion(Surface surface, Prelude prelude, ScriptFolder folder, Value globals) {
        this.surface = surface;
        this.prelude = prelude;
        this.folder = folder;
        this.globals = globals;
    }

    Suggestions at(String text, int cursor) {
        try {
            return FileSuggestions.at(text, cursor, folder).orElseGet(() -> names(text, cursor));
        } catch (PolyglotException ofTheScript) {
            return Suggestions.none(cursor); // a property that the script defines may fail when it is looked at
        }
    }

    private Suggestions names(String text, int cursor) {
        int from = Chain.startOfName(text, cursor);
        String typed = text.substring(from, cursor);
        int dot = text.substring(0, from).stripTrailing().length() - 1;
        boolean member = dot > 0 && text.charAt(dot) == '.';
        SortedMap<String, Suggestion> found = new TreeMap<>();
        if (!member) {
            addWords(found);
            if (typed.isEmpty()) {
                found.keySet().removeAll(LANGUAGE);
                found.keySet().removeAll(prelude.types().keySet());
            }
        } else {
            Chain.before(text, dot).ifPresent(chain -> addMembers(chain, found));
        }
        return new Suggestions(
                from,
                found.entrySet().stream()
                        .filter(entry -> entry.getKey().startsWith(typed))
                        .map(Map.Entry::getValue)
                        .toList());
    }

    private void addWords(SortedMap<String, Suggestion> found) {
        add(LANGUAGE, found);
        add(globals.getMemberKeys(), found);
        add(prelude.names(), found);
        addAll(prelude.functions(), found);
        addAll(prelude.sessionFunctions(), found);
    }

    private static void add(Collection<String> names, Map<String, Suggestion> found) {
        names.forEach(name -> found.put(name, new Suggestion(name, name)));
    }

    private static void addAll(SortedMap<String, Operation> operations, Map<String, Suggestion> found) {
        operations.forEach((name, operation) -> found.put(name, of(operation)));
    }

    /** With the opening bracket; with both where nothing goes between them. */
    private static Suggestion of(Operation operation) {
        boolean bare = operation.overloads().stream().allMatch(method -> method.getParameterCount() == 0);
        return new Suggestion(
                operation.name() + (bare ? "()" : "("), operation.forms().get(0));
    }

    private void addMembers(Chain chain, SortedMap<String, Suggestion> found) {
        Link first = chain.links().get(0);
        List<Link> rest = chain.links().subList(1, chain.links().size());
        if (!first.called() && globals.hasMember(first.name())) {
            Value value = globals.getMember(first.name());
            if (rest.isEmpty()) {
                addMembers(value, found);
                return;
            }
        }
        Class<?> type = first.called() ? resultOf(prelude.function(first.name())) : typeOfValue(first.name());
        if (type == null && prelude.types().containsKey(first.name()) && !rest.isEmpty()) {
            type = resultOf(Optional.ofNullable(Surface.statics(prelude.types().get(first.name()))
                    .get(rest.get(0).name())));
            rest = rest.subList(1, rest.size());
        }
        for (Link link : rest) {
            type = type == null || !link.called()
                    ? null
                    : resultOf(Optional.ofNullable(surface.members(type).get(link.name())));
        }
        if (type != null) {
            addMembers(type, found);
        }
    }

    private static @Nullable Class<?> resultOf(Optional<Operation> operation) {
        return operation
                .map(known -> known.overloads().get(0).getGenericReturnType())
                .<Class<?>>map(result ->
                        Types.raw(result) == Optional.class ? Types.raw(Types.argument(result, 0)) : Types.raw(result))
                .orElse(null);
    }

    private @Nullable Class<?> typeOfValue(String name) {
        Value value = globals.hasMember(name) ? globals.getMember(name) : null;
        return value != null && value.isProxyObject() && value.asProxyObject() instanceof HostValue view
                ? view.host().getClass()
                : null;
    }

    private void addMembers(Class<?> type, SortedMap<String, Suggestion> found) {
        if (Collection.class.isAssignableFrom(type)) {
            add(ofPrototype("Array"), found);
        } else if (type == String.class) {
            add(ofPrototype("String"), found);
        } else if (Map.class.isAssignableFrom(type)) {
            add(List.of("get", "has", "keys", "values", "size"), found);
        } else {
            addAll(surface.members(type), found);
        }
    }

    private void addMembers(Value value, SortedMap<String, Suggestion> found) {
        if (value.isProxyObject()) {
            Object proxy = value.asProxyObject();
            if (proxy instanceof TypeView type) {
                add(type.names(), found);
                addAll(type.functions(), found);
            } else if (proxy instanceof HostValue view) {
                addMembers(view.host().getClass(), found);
            }
        } else if (value.isString()) {
            add(ofPrototype("String"), found);
        } else if (value.hasArrayElements()) {
            add(ofPrototype("Array"), found);
        } else if (value.hasMembers()) {
            add(value.getMemberKeys(), found);
            add(ownNames(value), found);
        }
    }

    private List<String> ofPrototype(String type) {
        return ownNames(globals.getMember(type).getMember("prototype"));
    }

    /** What the language gives a thing, such as {@code Math} its functions: none of it shows among the keys. */
    private List<String> ownNames(Value thing) {
        Value names = globals.getMember("Object").invokeMember("getOwnPropertyNames", thing);
        List<String> found = new ArrayList<>();
        for (long i = 0; i < names.getArraySize(); i++) {
            String name = names.getArrayElement(i).asString();
            if (!name.startsWith("_") && !name.equals("constructor")) {
                found.add(name);
            }
        }
        return found;
    }
}
