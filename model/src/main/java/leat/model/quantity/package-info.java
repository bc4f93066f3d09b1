/**
 * Quantities with their units. Values are SI inside (angles in degrees); units stand only at the edge.
 * <p>
 * Make one with a factory named after the unit ({@code Length.feet(12)}) or from text ({@code Length.parse("12 ft")});
 * print one with {@link leat.model.quantity.Units}. Kernels take plain SI doubles instead.
 */
@NullMarked
package leat.model.quantity;

import org.jspecify.annotations.NullMarked;
