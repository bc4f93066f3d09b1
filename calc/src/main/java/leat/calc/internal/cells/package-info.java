/**
 * Kernels of coverage on plain arrays, shared by the services that measure coverage and that place heads: which cells of a
 * surface each head reaches, how fast water falls on them, and how evenly.
 * <p>
 * {@link leat.calc.internal.cells.CellGrid} lays square cells over the ground, {@link leat.calc.internal.cells.CellRuns} says
 * which of them belong to a surface, {@link leat.calc.internal.cells.HeadArrays} holds the heads,
 * {@link leat.calc.internal.cells.Wetting} adds them up and {@link leat.calc.internal.cells.Evenness} measures the sum.
 * Metres, seconds and radians throughout; angles run counter-clockwise from east, so bearings are turned before they come
 * here. Everything may change tomorrow; nothing is allocated when the same objects are used again.
 */
@NullMarked
package leat.calc.internal.cells;

import org.jspecify.annotations.NullMarked;
