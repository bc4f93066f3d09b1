/**
 * Kernels of placement on plain arrays: a {@link leat.calc.placement.internal.Plot} knows what may be thrown on, a
 * {@link leat.calc.placement.internal.ThrowFinder} what a head at a spot can reach, a
 * {@link leat.calc.placement.internal.Pool} holds such heads, and a {@link leat.calc.placement.internal.Search} chooses among
 * them. Metres and degrees; bearings run clockwise from north, as in the model. Everything may change tomorrow.
 */
@NullMarked
package leat.calc.placement.internal;

import org.jspecify.annotations.NullMarked;
