/** Kernels of {@code leat.calc.digging}: volumes of trenches, and of earth in its three states. May change at any time. */
@NullMarked
package leat.calc.digging.internal;

import org.jspecify.annotations.NullMarked;
