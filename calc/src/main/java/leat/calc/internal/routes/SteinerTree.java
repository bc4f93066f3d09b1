package leat.calc.internal.routes;

/**
 * The cheapest tree found that joins all terminals, with its proof.
 *
 * @param edges       edge indices, ascending; the array is the caller's
 * @param cost        the sum over the edges, in the order of their indices
 * @param bound       no tree that joins the terminals costs less
 * @param interrupted whether somebody asked to stop before the work was done
 */
public record SteinerTree(int[] edges, double cost, double bound, boolean interrupted) {

    /** What may be missing to the optimum, as a share of the bound; 0 where nothing costs anything. */
    public double gapFraction() {
        return bound > 0 ? Math.max(0, cost / bound - 1) : cost > 0 ? Double.POSITIVE_INFINITY : 0;
    }
}
