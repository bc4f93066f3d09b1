/**
 * What can be bought and what the trade knows about it: families of heads, pipes, devices, fittings, soils, conductors
 * and conduits; and the rules that designs are held against. Rows come from the standing tables and from the yard's own
 * additions.
 */
@NullMarked
package leat.model.catalog;

import org.jspecify.annotations.NullMarked;
