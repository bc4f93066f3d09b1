/**
 * Kernels of the hydraulics: loss laws and the solver for a tree of links, on primitive arrays in SI units.
 * <p>
 * Heads are metres of water, flows cubic metres a second. Enter through
 * {@link leat.calc.hydraulics.internal.TreeSolver}. For {@code leat.calc} only; may change at any time.
 */
@NullMarked
package leat.calc.hydraulics.internal;

import org.jspecify.annotations.NullMarked;
