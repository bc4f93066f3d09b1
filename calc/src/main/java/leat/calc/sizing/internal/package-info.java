/**
 * Kernel of the sizing: the cheapest sizes for a tree of pipes, exact. Enter through
 * {@link leat.calc.sizing.internal.SizeChoice}. May change at any time.
 */
@NullMarked
package leat.calc.sizing.internal;

import org.jspecify.annotations.NullMarked;
