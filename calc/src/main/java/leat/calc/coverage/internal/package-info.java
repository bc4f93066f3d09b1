/**
 * Kernels of coverage on plain arrays: which cells of a surface each head reaches, how fast water falls on them, and how evenly.
 * <p>
 * {@link leat.calc.coverage.internal.CellGrid} lays square cells over the ground, {@link leat.calc.coverage.internal.CellRuns}
 * says which of them belong to a surface, {@link leat.calc.coverage.internal.HeadArrays} holds the heads,
 * {@link leat.calc.coverage.internal.Wetting} adds them up and {@link leat.calc.coverage.internal.Evenness} measures the sum.
 * Metres, seconds and radians throughout; angles run counter-clockwise from east, so bearings are turned before they come here.
 * Everything may change tomorrow; nothing is allocated when the same objects are used again.
 */
@NullMarked
package leat.calc.coverage.internal;

import org.jspecify.annotations.NullMarked;
