package leat.script;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyArray;
import org.graalvm.polyglot.proxy.ProxyExecutable;
import org.graalvm.polyglot.proxy.ProxyIterable;
import org.graalvm.polyglot.proxy.ProxyObject;

/**
 * A map of the host as a script sees it. Keys are texts: {@code velocity.get("R7")}; a key that is not there is an
 * error with the nearest one. {@code for (const [key, value] of map)} walks through it in order.
 */
final class MapView implements ProxyObject, ProxyIterable, HostValue {

    private final Map<?, ?> host;
    private final Views views;

    MapView(Map<?, ?> host, Views views) {
        this.host = host;
        this.views = views;
    }

    @Override
    public Object host() {
        return host;
    }

    @Override
    public Object getMember(String name) {
        return switch (name) {
            case "get" -> (ProxyExecutable) arguments -> get(onlyText(arguments, name));
            case "has" -> (ProxyExecutable) arguments -> byText().containsKey(onlyText(arguments, name));
            case "keys" -> (ProxyExecutable) arguments -> views.list(host.keySet());
            case "values" -> (ProxyExecutable) arguments -> views.list(host.values());
            case "size" -> host.size();
            case "toString", "toJSON" -> (ProxyExecutable) arguments -> toString();
            case "valueOf" -> throw new ScriptMistake("a map is no number and cannot be compared or added");
            default ->
                throw new ScriptMistake(
                        "there is no " + name + " on a map; it has get(key), has(key), keys(), values(), size", name);
        };
    }

    private static String onlyText(Value[] arguments, String name) {
        if (arguments.length == 1 && arguments[0].isString()) {
            return arguments[0].asString();
        }
        throw new ScriptMistake("write " + name + "(key) with the key as a text", name);
    }

    private Object get(String key) {
        Map<String, Object> byText = byText();
        Object value = byText.get(key);
        if (value == null) {
            throw new ScriptMistake(
                    "there is no \"" + key + "\" in this map" + Hint.nearest(key, byText.keySet()), "get");
        }
        return views.present(value);
    }

    private Map<String, Object> byText() {
        Map<String, Object> byText = new TreeMap<>();
        host.forEach((key, value) -> byText.put(PlainText.key(key), value));
        return byText;
    }

    @Override
    public Object getIterator() {
        return views.iterator(host.entrySet().stream()
                .map(entry -> views.list(Arrays.asList(entry.getKey(), entry.getValue())))
                .iterator());
    }

    @Override
    public Object getMemberKeys() {
        return ProxyArray.fromArray("get", "has", "keys", "values", "size");
    }

    @Override
    public boolean hasMember(String name) {
        return !name.equals("then");
    }

    @Override
    public void putMember(String name, Value value) {
        throw new ScriptMistake("a map of a plan cannot be changed", name);
    }

    @Override
    public String toString() {
        return views.text(host);
    }
}
