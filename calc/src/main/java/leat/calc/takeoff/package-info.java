/**
 * What has to be bought to build the plan: pipes with their real lengths and how to cut them from stock, fittings from
 * the geometry of the pipes, valves, boxes, heads, wires, conduits, bedding.
 * <p>
 * Enter through {@link leat.calc.takeoff.Takeoff}. It measures and changes nothing. Each line of the result knows the
 * things and places that make it up. What it costs is {@code leat.calc.budget}. Kernels live in {@code internal} and may
 * change at any time; docs/theory/takeoff.md tells how everything is counted.
 */
@NullMarked
package leat.calc.takeoff;

import org.jspecify.annotations.NullMarked;
