package leat.script;

import java.lang.reflect.Field;
import jdk.jshell.execution.LocalExecutionControl;
import org.jspecify.annotations.Nullable;

/** Runs snippets in this process, and shows the values of their variables as they are, where others show a text. */
final class SnippetControl extends LocalExecutionControl {

    private @Nullable Object seen;

    SnippetControl(SnippetLoader loader) {
        super(loader);
    }

    /** Looks at a variable; its value is then {@link #seen()}. */
    @Override
    public String varValue(String className, String variable) {
        try {
            Field field = findClass(className).getDeclaredField(variable);
            field.setAccessible(true); // it is public, but its class is not
            seen = field.get(null);
            return "";
        } catch (ReflectiveOperationException fault) {
            throw new IllegalStateException(variable + " cannot be looked at", fault);
        }
    }

    /** The value that was looked at last. */
    @Nullable
    Object seen() {
        return seen;
    }
}
