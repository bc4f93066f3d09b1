/**
 * Kernels that part heads into zones: few zones, each within the flow that the source can give, each of one kind, and
 * short to pipe.
 * <p>
 * Enter through {@link leat.calc.zoning.internal.ZoneSplit}. All work on primitive arrays in SI units. Everything here
 * may change at any time.
 */
@NullMarked
package leat.calc.zoning.internal;

import org.jspecify.annotations.NullMarked;
