/**
 * Pressures and flows: what each head gets while its zone runs alone, how fast the water runs in each pipe, and what the
 * source is left with.
 * <p>
 * Enter through {@link leat.calc.hydraulics.Hydraulics}. Takes a yard whose laterals are laid and whose pipes have sizes;
 * changes nothing. The sizes are chosen by {@code leat.calc.sizing}; how far a head throws at its pressure says
 * {@link leat.model.catalog.HeadFamily#radius}. Formulas and sources stand in docs/theory/tree-hydraulics.md. Water is taken
 * at 15 °C.
 */
@NullMarked
package leat.calc.hydraulics;

import org.jspecify.annotations.NullMarked;
