/**
 * The water system: sources, main, manifolds of zone valves, zones of heads on laterals, hose bibs.
 * <p>
 * {@link leat.model.water.WaterSystem} holds all of it and checks that each name that is used exists. Pipes form trees:
 * each names what feeds it, so the sides of different waters cannot rejoin.
 */
@NullMarked
package leat.model.water;

import org.jspecify.annotations.NullMarked;
