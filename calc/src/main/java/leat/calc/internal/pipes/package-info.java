/**
 * The laws of flow in a pipe, shared by the services that solve pipes and that size them: friction, fittings, velocity.
 * Enter through {@link leat.calc.internal.pipes.PipeLaw}. Metres, seconds; pressure as metres of water. May change at any
 * time.
 */
@NullMarked
package leat.calc.internal.pipes;

import org.jspecify.annotations.NullMarked;
