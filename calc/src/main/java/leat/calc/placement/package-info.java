/**
 * Places heads on lawns and beds that want them: few heads, each spot of a lawn within reach of two and each spot of a bed of
 * one, and no water on paving, structures or outside the lot.
 * <p>
 * Enter through {@link leat.calc.placement.Placement}. Heads that the user stated stay and take part; heads whose position is
 * planned are placed anew. Radii and flows are those at reference pressure: what pressures make of them is for
 * {@code leat.calc.hydraulics}, and whether the result is good enough for {@code leat.calc.coverage} to say.
 */
@NullMarked
package leat.calc.placement;

import org.jspecify.annotations.NullMarked;
