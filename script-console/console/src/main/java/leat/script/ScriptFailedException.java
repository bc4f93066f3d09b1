package leat.script;

import org.jspecify.annotations.Nullable;

/**
 * A script could not be run to its end. The message is ready to be shown: {@code file:line:column: what is wrong},
 * the line of the source and a caret under the place, with no stack trace.
 */
public final class ScriptFailedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    ScriptFailedException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
