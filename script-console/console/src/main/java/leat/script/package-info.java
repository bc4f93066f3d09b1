/**
 * Runs scripts that describe and judge yards, and lets them see the model and the calculations and nothing else.
 * <p>
 * Enter through {@link leat.script.ScriptRunner}. What a script can name is one table, {@link leat.script.Surface};
 * JavaScript is fed from it. A script reaches no class of the host, no file outside its own folder, no network, no
 * process and no thread. Every mistake in a script ends in one {@link leat.script.ScriptFailedException} that points at
 * file, line and column. Nothing is written here: what a script reports is handed back to the caller.
 */
@NullMarked
package leat.script;

import org.jspecify.annotations.NullMarked;
