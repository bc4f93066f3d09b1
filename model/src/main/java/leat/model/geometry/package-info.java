/**
 * Plane geometry of the yard: x to the east, y to the north, metres inside; bearings clockwise from north.
 * <p>
 * Values only, each valid by construction. Clipping, triangles and grids are kernels of leat.calc.
 */
@NullMarked
package leat.model.geometry;

import org.jspecify.annotations.NullMarked;
