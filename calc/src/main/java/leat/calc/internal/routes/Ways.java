package leat.calc.internal.routes;

import java.util.Arrays;

/**
 * All straight trenches between places that see each other over allowed ground. Places are numbered in the order in which
 * they were added.
 */
public final class Ways {

    /** Places closer than this are one place. */
    private static final double SAME_PLACE_M = 0.01;

    private final Tolls tolls;
    private int places;
    private double[] xM = new double[64];
    private double[] yM = new double[64];
    private int edges;
    private int[] from = new int[1024];
    private int[] to = new int[1024];
    private double[] costM = new double[1024];

    public Ways(Tolls tolls) {
        this.tolls = tolls;
    }

    /** The same places and ways, to which others can be added without changing these. */
    public Ways copy() {
        var copy = new Ways(tolls);
        copy.places = places;
        copy.xM = xM.clone();
        copy.yM = yM.clone();
        copy.edges = edges;
        copy.from = from.clone();
        copy.to = to.clone();
        copy.costM = costM.clone();
        return copy;
    }

    public int places() {
        return places;
    }

    public double xM(int place) {
        return xM[place];
    }

    public double yM(int place) {
        return yM[place];
    }

    /** The number of the place here, joined to all that it sees; an old place if there is one within a centimetre. */
    public int add(double x, double y) {
        for (int p = 0; p < places; p++) {
            if (Math.abs(xM[p] - x) < SAME_PLACE_M && Math.abs(yM[p] - y) < SAME_PLACE_M) {
                return p;
            }
        }
        int place = addBlind(x, y);
        for (int p = 0; p < place; p++) {
            double cost = tolls.costM(xM[p], yM[p], x, y);
            if (cost < Double.POSITIVE_INFINITY) {
                join(p, place, cost);
            }
        }
        return place;
    }

    /** A place from which only the stub leads on: one that lies on ground where no trench may run. */
    public int addBehind(double x, double y, int exit) {
        int place = addBlind(x, y);
        join(exit, place, Math.hypot(xM[exit] - x, yM[exit] - y));
        return place;
    }

    /** One more way between two places, whatever lies between them: a trench that is dug anyhow, or a pipe that is there. */
    public void link(int a, int b, double costM) {
        if (a != b) {
            join(a, b, costM);
        }
    }

    private int addBlind(double x, double y) {
        if (places == xM.length) {
            xM = Arrays.copyOf(xM, 2 * places);
            yM = Arrays.copyOf(yM, 2 * places);
        }
        xM[places] = x;
        yM[places] = y;
        return places++;
    }

    private void join(int a, int b, double cost) {
        if (edges == from.length) {
            from = Arrays.copyOf(from, 2 * edges);
            to = Arrays.copyOf(to, 2 * edges);
            costM = Arrays.copyOf(costM, 2 * edges);
        }
        from[edges] = a;
        to[edges] = b;
        costM[edges++] = cost;
    }

    /** The graph of all ways: what shortest paths need. */
    public Graph graph() {
        return Graph.of(places, Arrays.copyOf(from, edges), Arrays.copyOf(to, edges), Arrays.copyOf(costM, edges));
    }

    /**
     * The ways that a cheapest tree over the terminals may use. A way is left out if a terminal lies between its ends, so
     * to speak: nearer to both of them than they are to each other. A cheapest tree without such ways exists always.
     *
     * @see "Duin, C. and Volgenant, A., Reduction tests for the Steiner problem in graphs, Networks 19, 1989 (special
     *     distance, from memory)"
     */
    public Graph graphFor(int[] terminals) {
        double[] toTerminal = new double[terminals.length * places];
        Arrays.fill(toTerminal, Double.POSITIVE_INFINITY);
        int[] number = new int[places];
        Arrays.fill(number, -1);
        for (int t = 0; t < terminals.length; t++) {
            number[terminals[t]] = t;
        }
        for (int e = 0; e < edges; e++) {
            noteDistance(toTerminal, number[from[e]], to[e], costM[e]);
            noteDistance(toTerminal, number[to[e]], from[e], costM[e]);
        }
        int kept = 0;
        int[] keptFrom = new int[edges];
        int[] keptTo = new int[edges];
        double[] keptCost = new double[edges];
        for (int e = 0; e < edges; e++) {
            if (!hasTerminalBetween(toTerminal, terminals.length, e)) {
                keptFrom[kept] = from[e];
                keptTo[kept] = to[e];
                keptCost[kept++] = costM[e];
            }
        }
        return Graph.of(
                places, Arrays.copyOf(keptFrom, kept), Arrays.copyOf(keptTo, kept), Arrays.copyOf(keptCost, kept));
    }

    private void noteDistance(double[] toTerminal, int terminal, int place, double cost) {
        if (terminal >= 0) {
            int at = terminal * places + place;
            toTerminal[at] = Math.min(toTerminal[at], cost);
        }
    }

    private boolean hasTerminalBetween(double[] toTerminal, int terminals, int edge) {
        for (int t = 0; t < terminals; t++) {
            int row = t * places;
            if (toTerminal[row + from[edge]] < costM[edge] && toTerminal[row + to[edge]] < costM[edge]) {
                return true;
            }
        }
        return false;
    }
}
