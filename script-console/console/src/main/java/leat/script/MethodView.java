package leat.script;

import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyArray;
import org.graalvm.polyglot.proxy.ProxyExecutable;
import org.graalvm.polyglot.proxy.ProxyObject;
import org.jspecify.annotations.Nullable;

/**
 * A function of the host as a script sees it. Used as a value it is an error, for then the parentheses were
 * forgotten: {@code head.radius > feet(3)}.
 */
final class MethodView implements ProxyExecutable, ProxyObject {

    private final Operation operation;
    private final @Nullable Object receiver;
    private final Views views;

    MethodView(Operation operation, @Nullable Object receiver, Views views) {
        this.operation = operation;
        this.receiver = receiver;
        this.views = views;
    }

    String name() {
        return operation.name();
    }

    Operation operation() {
        return operation;
    }

    /** True for a function that stands by itself, not a method of some value. */
    boolean isWord() {
        return receiver == null || receiver instanceof SessionFunctions;
    }

    @Override
    public @Nullable Object execute(Value... arguments) {
        Object answer = operation.call(receiver, arguments, views);
        return operation.givesNothing() ? views.nothing() : views.toScript(answer);
    }

    @Override
    public Object getMember(String key) {
        throw forgotten();
    }

    ScriptMistake forgotten() {
        String name = operation.name();
        return new ScriptMistake(name + " is a method; write " + name + "() to get what it gives", name);
    }

    @Override
    public boolean hasMember(String key) {
        return switch (key) {
            case "call", "apply", "bind", "then" -> false; // the language's own, found on every function
            default -> true;
        };
    }

    @Override
    public Object getMemberKeys() {
        return ProxyArray.fromArray();
    }

    @Override
    public void putMember(String key, Value value) {
        throw new ScriptMistake(operation.name() + " cannot be changed", key);
    }

    @Override
    public String toString() {
        return String.join(" or ", operation.forms());
    }
}
