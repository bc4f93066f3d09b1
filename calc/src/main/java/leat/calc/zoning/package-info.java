/**
 * Which heads run together: parts the heads of a yard into zones that the supply can feed, and looks over the zones that
 * a yard has.
 * <p>
 * {@link leat.calc.zoning.Zoning} is the stage: it fills the zones that are planned and leaves given ones alone.
 * {@link leat.calc.zoning.ZoneReview} is the calculation: it measures all zones and changes nothing. Flows here are those
 * at the reference pressure of each head; what the pipes leave of the pressure is {@code leat.calc.hydraulics}. Kernels
 * live in {@code internal} and may change at any time.
 */
@NullMarked
package leat.calc.zoning;

import org.jspecify.annotations.NullMarked;
