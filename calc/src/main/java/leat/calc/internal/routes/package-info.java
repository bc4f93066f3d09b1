/**
 * Kernels that find short shared trenches, for pipes and for wires.
 * <p>
 * {@link leat.calc.internal.routes.OpenGround} says where trenches may run and what they cost,
 * {@link leat.calc.internal.routes.Ways} which straight ones there are between given places,
 * {@link leat.calc.internal.routes.SteinerSearch} finds the cheapest tree in a graph with a lower bound, and
 * {@link leat.calc.internal.routes.SharedTrench} strings them together. {@link leat.calc.internal.routes.DigSite} and
 * {@link leat.calc.internal.routes.RouteSearch} ask them for a site, {@link leat.calc.internal.routes.TrenchCuts} turns what
 * was found into trenches. The kernels work on primitive arrays, in metres and
 * cost metres (a metre dug in bare ground costs 1). Everything here may change at any time.
 */
@NullMarked
package leat.calc.internal.routes;

import org.jspecify.annotations.NullMarked;
