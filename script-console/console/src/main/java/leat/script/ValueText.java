package leat.script;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.graalvm.polyglot.Value;

/** Values of a script as the console shows them: those of the host as such, the script's own in its own form. */
final class ValueText {

    private static final int DEEPEST = 3;

    private final Views views;
    private final Help help;

    ValueText(Views views, Help help) {
        this.views = views;
        this.help = help;
    }

    /** In as many lines as it takes. */
    String show(Value value) {
        if (value.isProxyObject() && value.asProxyObject() instanceof MethodView method) {
            return method.isWord() ? help.of(method.name()) : method.toString();
        }
        if (value.isProxyObject() && value.asProxyObject() instanceof TypeView type) {
            return help.of(type.toString());
        }
        if (value.isString()) {
            return value.asString();
        }
        if (value.hasArrayElements() && value.getArraySize() == 0) {
            return "none";
        }
        Optional<Object> host = host(value);
        if (host.isPresent()) {
            return views.display().show(host.get());
        }
        return value.hasArrayElements() && isPlainList(value) ? views.text(value) : brief(value);
    }

    private boolean isPlainList(Value list) {
        for (long i = 0; i < list.getArraySize(); i++) {
            Value element = list.getArrayElement(i);
            if (!element.isString() && !element.isNumber() && !element.isBoolean() && !element.isProxyObject()) {
                return false;
            }
        }
        return list.getArraySize() > 0;
    }

    /** In one line. */
    String brief(Value value) {
        String line = line(value, 0);
        return line.contains("\n") ? line.lines().findFirst().orElse("") + " …" : line;
    }

    private String line(Value value, int depth) {
        if (value.isProxyObject() && value.asProxyObject() instanceof MethodView method) {
            return method.toString();
        }
        Optional<Object> host = host(value);
        if (host.isPresent()) {
            return views.display().brief(host.get());
        }
        if (value.isProxyObject() || value.isString() || value.isNumber() || value.isBoolean() || value.isNull()) {
            return views.text(value);
        }
        if (value.hasArrayElements()) {
            return "[" + elements(value, depth) + "]";
        }
        if (value.canExecute()) {
            return "a function";
        }
        return isPlainObject(value) && depth < DEEPEST ? "{" + members(value, depth) + "}" : views.text(value);
    }

    private static boolean isPlainObject(Value value) {
        return value.hasMembers() && !value.hasHashEntries() && !value.isException() && !value.isDate();
    }

    private String elements(Value value, int depth) {
        List<String> elements = new ArrayList<>();
        for (long i = 0; i < value.getArraySize(); i++) {
            elements.add(line(value.getArrayElement(i), depth + 1));
        }
        return String.join(", ", elements);
    }

    private String members(Value value, int depth) {
        return value.getMemberKeys().stream()
                .map(key -> key + ": " + line(value.getMember(key), depth + 1))
                .collect(Collectors.joining(", "));
    }

    /** The value of the host that the script holds, or a list of such; nothing for what is the script's own. */
    private static Optional<Object> host(Value value) {
        if (value.isProxyObject()) {
            return value.asProxyObject() instanceof HostValue view ? Optional.of(view.host()) : Optional.empty();
        }
        if (value.isString() || !value.hasArrayElements() || value.getArraySize() == 0) {
            return Optional.empty();
        }
        List<Object> hosts = new ArrayList<>();
        for (long i = 0; i < value.getArraySize(); i++) {
            host(value.getArrayElement(i)).ifPresent(hosts::add);
        }
        return hosts.size() == value.getArraySize() ? Optional.of(hosts) : Optional.empty();
    }
}
