package leat.command;

import leat.model.fault.LeatException;
import leat.script.ScriptFailedException;
import picocli.CommandLine.ParameterException;

/** What the program's exit code says. The one table from kinds of failure to codes. */
enum Exit {
    /** Done, and the plan has no breach. */
    FINE(0),
    /** Done, and the plan has a breach. */
    BREACH(1),
    /** What was asked makes no sense, or what was given cannot be read. */
    WRONG_INPUT(2),
    /** The script has a mistake, failed, or ran too long. */
    SCRIPT_FAILED(3),
    /** Our fault. */
    DEFECT(70);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }

    /** The code of a run that a failure ended. */
    static Exit of(Throwable failure) {
        if (failure instanceof ScriptFailedException) {
            return SCRIPT_FAILED;
        }
        if (failure instanceof LeatException || failure instanceof ParameterException) {
            return WRONG_INPUT;
        }
        return DEFECT;
    }
}
