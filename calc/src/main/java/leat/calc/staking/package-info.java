/**
 * Where the stakes of a plan are driven, and how each is found again with two tapes.
 * <p>
 * Enter through {@link leat.calc.staking.Staking}. Marks are corners that stand already: of structures and of the lot. Each
 * stake is tied to the two marks that place it best, and to a third as a check. See docs/theory/staking.md.
 */
@NullMarked
package leat.calc.staking;

import org.jspecify.annotations.NullMarked;
