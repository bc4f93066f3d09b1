/**
 * Kernels that find short shared trenches.
 * <p>
 * {@link leat.calc.trenching.internal.OpenGround} says where trenches may run and what they cost,
 * {@link leat.calc.trenching.internal.Ways} which straight ones there are between given places,
 * {@link leat.calc.trenching.internal.SteinerSearch} finds the cheapest tree in a graph with a lower bound, and
 * {@link leat.calc.trenching.internal.SharedTrench} strings them together. All work on primitive arrays, in metres and
 * cost metres (a metre dug in bare ground costs 1). Everything here may change at any time.
 */
@NullMarked
package leat.calc.trenching.internal;

import org.jspecify.annotations.NullMarked;
