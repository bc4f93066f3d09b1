/**
 * The console: Leat typed line by line, by a person at a terminal or by another program through a pipe.
 * <p>
 * Enter through {@link leat.console.TypedDialogue} for a person and {@link leat.console.PipedDialogue} for a program.
 * What an entry means is the business of {@link leat.script.ScriptSession}, in whatever language that is; here are
 * prompts, history, completion, interrupts and where text goes.
 */
@NullMarked
package leat.console;

import org.jspecify.annotations.NullMarked;
