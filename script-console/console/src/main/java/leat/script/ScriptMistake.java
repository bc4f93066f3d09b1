package leat.script;

import leat.model.fault.LeatException;

/**
 * What a script asked for and cannot have, thrown where it asks; the runner adds file, line and column.
 * Scripts may catch it like any other error.
 */
final class ScriptMistake extends LeatException {

    private static final long serialVersionUID = 1L;

    private final String word;

    ScriptMistake(String message) {
        this(message, "");
    }

    /** {@code word} is the name in the source that the caret should point at; empty for none. */
    ScriptMistake(String message, String word) {
        super(message);
        this.word = word;
    }

    String word() {
        return word;
    }
}
