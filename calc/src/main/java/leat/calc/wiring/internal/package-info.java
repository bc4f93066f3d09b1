/** Formulas of wiring on SI doubles. They may change at any time. */
@NullMarked
package leat.calc.wiring.internal;

import org.jspecify.annotations.NullMarked;
