/**
 * Whether the water system hangs together: each part is fed, meets what feeds it, and drinking water is safe from what
 * flows back.
 * <p>
 * Enter through {@link leat.calc.supply.Supply}. Pressures and flows are {@code leat.calc.hydraulics}.
 */
@NullMarked
package leat.calc.supply;

import org.jspecify.annotations.NullMarked;
