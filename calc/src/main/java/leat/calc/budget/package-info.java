/**
 * What the materials of the takeoff cost, by phase, at the prices of the yard.
 * <p>
 * Enter through {@link leat.calc.budget.Budget}. What has no price stays a line without one, and the sums say how many
 * such lines there are. Materials are {@code leat.calc.takeoff}; rounding and order of reckoning are told in
 * docs/theory/takeoff.md.
 */
@NullMarked
package leat.calc.budget;

import org.jspecify.annotations.NullMarked;
