/**
 * Power and control: circuits, cables, conduits and valve wires of a yard.
 * <p>
 * {@link leat.calc.wiring.Wiring} is the stage: it gives loads their circuits, leads cables along shared trenches and
 * chooses sizes.
 */
@NullMarked
package leat.calc.wiring;

import org.jspecify.annotations.NullMarked;
