/** Kernels of {@code leat.calc.staking}: two tapes, and lines of sight. May change at any time. */
@NullMarked
package leat.calc.staking.internal;

import org.jspecify.annotations.NullMarked;
