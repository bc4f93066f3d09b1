package leat.script;

import java.util.OptionalDouble;
import java.util.SortedMap;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyArray;
import org.graalvm.polyglot.proxy.ProxyExecutable;
import org.graalvm.polyglot.proxy.ProxyObject;

/**
 * A value of the host as a script sees it: its methods on the surface, and an error with the nearest right name for
 * any other name. {@code <} and {@code >} compare quantities by their SI figure.
 */
final class ScriptView implements ProxyObject, HostValue {

    private final Object host;
    private final SortedMap<String, Operation> members;
    private final Views views;

    ScriptView(Object host, Views views) {
        this.host = host;
        this.members = views.surface().members(host.getClass());
        this.views = views;
    }

    @Override
    public Object host() {
        return host;
    }

    @Override
    public Object getMember(String name) {
        Operation operation = members.get(name);
        if (operation != null) {
            return new MethodView(operation, host, views);
        }
        return switch (name) {
            case "toString", "toJSON" -> (ProxyExecutable) arguments -> views.text(host);
            case "valueOf" -> (ProxyExecutable) arguments -> figure();
            case "equals" ->
                (ProxyExecutable) arguments -> arguments.length == 1
                        && arguments[0].isProxyObject()
                        && arguments[0].asProxyObject() instanceof HostValue other
                        && host.equals(other.host());
            default -> throw unknown(name);
        };
    }

    private double figure() {
        OptionalDouble figure = Types.figure(host);
        return figure.orElseThrow(() -> new ScriptMistake(kind() + " is no number and cannot be compared or added"));
    }

    private ScriptMistake unknown(String name) {
        return new ScriptMistake(
                "there is no " + name + " on " + kind() + Hint.nearestOrAll(name, members.keySet()), name);
    }

    private String kind() {
        return Wording.withArticle(Wording.words(host.getClass().getSimpleName()));
    }

    @Override
    public Object getMemberKeys() {
        return ProxyArray.fromArray(members.keySet().toArray());
    }

    /** True for names that do not exist as well, so that asking for one is an error and not undefined. */
    @Override
    public boolean hasMember(String name) {
        return !name.equals("then"); // asked of everything that is awaited
    }

    @Override
    public void putMember(String name, Value value) {
        throw new ScriptMistake(
                name + " cannot be set: " + kind() + " never changes; a method gives a changed copy", name);
    }

    @Override
    public String toString() {
        return host.toString();
    }
}
