/**
 * Power and control outdoors: which conductors a circuit needs, what it may carry, how much voltage it loses, how full a
 * conduit may be, how deep things lie, what must be protected.
 * <p>
 * Enter through {@link leat.calc.wiring.ElectricalCode}, which answers by the family of codes that the yard is planned
 * by; nothing else asks which family it is. Formulas and sources stand in docs/theory/wiring.md. Copper only. The code in
 * force locally and licensed practice decide, whatever is computed here.
 */
@NullMarked
package leat.calc.wiring;

import org.jspecify.annotations.NullMarked;
