package leat.script;

import leat.model.fault.LeatException;

/**
 * A script could not be run to its end. The message is ready to be shown: {@code file:line:column: what is wrong},
 * the line of the source and a caret under the place, with no stack trace.
 */
public final class ScriptFailedException extends LeatException {

    private static final long serialVersionUID = 1L;

    ScriptFailedException(String message) {
        super(message);
    }

    ScriptFailedException(String message, Throwable cause) {
        super(message, cause);
    }
}
