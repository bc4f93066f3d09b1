/** Kernels on lines of straight pieces that several services share. May change at any time. */
@NullMarked
package leat.calc.internal.lines;

import org.jspecify.annotations.NullMarked;
