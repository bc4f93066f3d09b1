/**
 * Where trenches run, and which pipes lie in them: routes the planned pipes of a yard along few shared trenches, and looks
 * over the trenches that a yard has.
 * <p>
 * {@link leat.calc.trenching.Trenching} is the stage: it routes what is planned and leaves given routes alone.
 * {@link leat.calc.trenching.TrenchReview} is the calculation: it measures all trenches and changes nothing. Sizes of
 * pipes are {@code leat.calc.sizing}. Kernels live in {@code internal} and may change at any time. Before anybody digs,
 * the lines in the ground have to be marked by those who own them; a plan does not replace that.
 */
@NullMarked
package leat.calc.trenching;

import org.jspecify.annotations.NullMarked;
