package leat.console;

import leat.script.ScriptHost;
import leat.script.ScriptSession;

/** Opens a session in the language that the user chose. */
@FunctionalInterface
public interface SessionOpener {

    ScriptSession open(ScriptHost host);
}
