package leat.calc.sizing.internal;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest choice of a size for each pipe of a tree, so that each node has the head that it needs and no pipe is
 * larger than the one that feeds it. Exact: from the leaves to the source it keeps, for each pipe and each size that
 * its upstream pipe may have, all ways below it that no other way beats in both head and price.
 * <p>
 * Pipe i feeds node i from its parent, which has a smaller number; node 0 is the source. Arrays are by pipe, entry 0 is
 * not used; sizes are numbered from the smallest bore up.
 */
public final class SizeChoice {

    private static final int FREE = -1;

    private final int[] parent;
    private final int sizes;
    private final double[][] lossM;
    private final double[][] price;
    private final int[] given;
    private final Front[][] below;

    private SizeChoice(int[] parent, double[][] lossM, double[][] price, int[] given) {
        this.parent = parent;
        this.lossM = lossM;
        this.price = price;
        this.given = given;
        sizes = IntStream.range(1, parent.length)
                .map(i -> lossM[i].length)
                .max()
                .orElse(0);
        below = new Front[parent.length][];
    }

    /**
     * @param size of each pipe; entry 0 is not used
     * @param price of all pipes together, given ones included
     */
    public record Sizes(int[] size, double price) {}

    /**
     * @param lossM       loss of head of each pipe in each size at its design flow
     * @param price       of each pipe in each size; infinite where it may not have that size
     * @param neededHeadM at each node; minus infinity where none is needed
     * @param given       size of each pipe that is not free, -1 for those that are; given pipes may be larger than the
     *                    one upstream
     * @return empty if no choice gives each node the head that it needs
     */
    public static Optional<Sizes> cheapest(
            int[] parent, double[][] lossM, double[][] price, double[] neededHeadM, int[] given, double sourceHeadM) {
        return new SizeChoice(parent, lossM, price, given).solve(neededHeadM, sourceHeadM);
    }

    private Optional<Sizes> solve(double[] neededHeadM, double sourceHeadM) {
        Front[][] atNode = new Front[parent.length][sizes];
        for (int i = parent.length - 1; i >= 0; i--) {
            for (int s = 0; s < sizes; s++) {
                atNode[i][s] = startAt(atNode[i][s], neededHeadM[i]);
            }
            if (i > 0) {
                below[i] = behindPipe(i, atNode[i]);
                for (int s = 0; s < sizes; s++) {
                    Front sofar = atNode[parent[i]][s];
                    atNode[parent[i]][s] = sofar == null ? below[i][s] : Front.together(sofar, below[i][s]);
                }
                atNode[i] = new Front[0];
            }
        }
        Front whole = atNode[0][sizes - 1];
        int best = whole.cheapestWithin(sourceHeadM);
        if (best < 0) {
            return Optional.empty();
        }
        return Optional.of(new Sizes(chosen(whole.neededM(best)), whole.price(best)));
    }

    private static Front startAt(@Nullable Front children, double neededHeadM) {
        var own = new Front(1);
        own.add(neededHeadM, 0, 0, 0);
        return children == null ? own : Front.together(children, own);
    }

    /** The ways below the upper end of pipe i, for each greatest size that it may have. */
    private Front[] behindPipe(int i, Front[] atNode) {
        var ways = new Front[sizes];
        var upTo = new Front(0);
        for (int s = 0; s < sizes; s++) {
            boolean allowed = given[i] == FREE ? price[i][s] < Double.POSITIVE_INFINITY : given[i] == s;
            if (allowed) {
                upTo = Front.best(upTo, atNode[s].behindPipe(lossM[i][s], price[i][s], s));
            }
            ways[s] = upTo;
        }
        if (given[i] != FREE) {
            Arrays.fill(ways, ways[given[i]]);
        }
        return ways;
    }

    /** Walks down again: each pipe takes the cheapest way within the head that was found to be enough above it. */
    private int[] chosen(double headM) {
        int[] size = new int[parent.length];
        double[] allowedM = new double[parent.length];
        size[0] = sizes - 1;
        allowedM[0] = headM;
        for (int i = 1; i < parent.length; i++) {
            Front ways = below[i][size[parent[i]]];
            int way = ways.cheapestWithin(allowedM[parent[i]]);
            size[i] = ways.size(way);
            allowedM[i] = ways.belowM(way);
        }
        return size;
    }
}
