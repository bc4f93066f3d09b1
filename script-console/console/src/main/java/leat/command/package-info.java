/**
 * The command line: reads options, calls what does the work, turns outcomes into exit codes. Thin on purpose.
 * <p>
 * Enter through {@link leat.command.Leat}.
 */
@NullMarked
package leat.command;

import org.jspecify.annotations.NullMarked;
