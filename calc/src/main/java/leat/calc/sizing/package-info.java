/**
 * The sizes of pipes: the stage that chooses them, and the calculation that finds pipes larger than what feeds them.
 * <p>
 * Enter through {@link leat.calc.sizing.Sizing} to plan and {@link leat.calc.sizing.SizeReview} to check. Takes laid
 * pipes; pressures that come of the sizes are {@code leat.calc.hydraulics}. Only sizes that are planned or missing are
 * chosen; given ones come out equal.
 */
@NullMarked
package leat.calc.sizing;

import org.jspecify.annotations.NullMarked;
