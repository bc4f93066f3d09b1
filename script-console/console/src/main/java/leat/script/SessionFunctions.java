package leat.script;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.Arrays;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/** The functions that need to know which script is running: its settings, its folder, where its output goes. */
final class SessionFunctions {

    private final Settings settings;
    private final ScriptFolder folder;
    private final ScriptHost host;

    SessionFunctions(Settings settings, ScriptFolder folder, ScriptHost host) {
        this.settings = settings;
        this.folder = folder;
        this.host = host;
    }

    SortedMap<String, Object> bindings(Views views) {
        SortedMap<String, Object> bindings = new TreeMap<>();
        Surface.own(SessionFunctions.class)
                .forEach((name, operation) -> bindings.put(name, new MethodView(operation, this, views)));
        bindings.put("print", (ProxyExecutable) values -> {
            host.print(Arrays.stream(values).map(views::text).collect(Collectors.joining(" ")));
            return null;
        });
        return bindings;
    }

    /** What {@code --set name=value} states, read as the same kind of thing as {@code otherwise}, else that. */
    public Object param(String name, Object otherwise) {
        return settings.get(name, otherwise);
    }

    /** The text of a file in the script's folder. */
    public String readText(String file) {
        return folder.read(file);
    }
}
