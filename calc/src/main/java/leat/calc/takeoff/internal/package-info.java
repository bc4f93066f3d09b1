/** Arithmetic of the takeoff: cutting pieces from stock. May change at any time. */
@NullMarked
package leat.calc.takeoff.internal;

import org.jspecify.annotations.NullMarked;
