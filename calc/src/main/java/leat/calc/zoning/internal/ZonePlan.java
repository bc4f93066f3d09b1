package leat.calc.zoning.internal;

/**
 * A partition with its proof.
 *
 * @param zoneOf      zone of each head, from 0 without gaps
 * @param zones       how many
 * @param costM       zone costs and shortest trees from the manifold, in metres of pipe
 * @param fewestZones no partition has fewer
 * @param boundM      no partition costs less
 * @param interrupted whether somebody asked to stop
 */
public record ZonePlan(int[] zoneOf, int zones, double costM, int fewestZones, double boundM, boolean interrupted) {}
