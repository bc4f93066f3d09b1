package leat.calc.internal.routes;

/**
 * An undirected graph in compressed rows. Edge {@code e} joins {@code from[e]} and {@code to[e]} at {@code cost[e]} of at
 * least 0; the entries {@code first[v] .. first[v + 1] - 1} of {@code farNode} and {@code viaEdge} are the edges at node
 * {@code v}, by edge index. The arrays are shared for speed; nobody writes to them after {@link #of}.
 */
public final class Graph {

    final int nodes;
    final int edges;
    final int[] from;
    final int[] to;
    final double[] cost;
    final int[] first;
    final int[] farNode;
    final int[] viaEdge;

    private Graph(int nodes, int[] from, int[] to, double[] cost) {
        this.nodes = nodes;
        this.edges = cost.length;
        this.from = from;
        this.to = to;
        this.cost = cost;
        this.first = new int[nodes + 1];
        this.farNode = new int[2 * edges];
        this.viaEdge = new int[2 * edges];
        fillRows();
    }

    /** A graph over copies of the given arrays, which are parallel, one entry an edge. */
    public static Graph of(int nodes, int[] from, int[] to, double[] cost) {
        for (int e = 0; e < cost.length; e++) {
            if (!(cost[e] >= 0) || from[e] < 0 || from[e] >= nodes || to[e] < 0 || to[e] >= nodes || from[e] == to[e]) {
                throw new IllegalArgumentException("edge " + e + " from " + from[e] + " to " + to[e] + " costs "
                        + cost[e] + " of " + nodes + " nodes");
            }
        }
        return new Graph(nodes, from.clone(), to.clone(), cost.clone());
    }

    /** The graph of some of the edges, renumbered in their order; nodes keep their numbers. */
    Graph only(int[] kept) {
        int[] keptFrom = new int[kept.length];
        int[] keptTo = new int[kept.length];
        double[] keptCost = new double[kept.length];
        for (int i = 0; i < kept.length; i++) {
            keptFrom[i] = from[kept[i]];
            keptTo[i] = to[kept[i]];
            keptCost[i] = cost[kept[i]];
        }
        return new Graph(nodes, keptFrom, keptTo, keptCost);
    }

    private void fillRows() {
        for (int e = 0; e < edges; e++) {
            first[from[e] + 1]++;
            first[to[e] + 1]++;
        }
        for (int v = 0; v < nodes; v++) {
            first[v + 1] += first[v];
        }
        int[] next = first.clone();
        for (int e = 0; e < edges; e++) {
            put(next[from[e]]++, to[e], e);
            put(next[to[e]]++, from[e], e);
        }
    }

    private void put(int at, int node, int edge) {
        farNode[at] = node;
        viaEdge[at] = edge;
    }

    public int from(int edge) {
        return from[edge];
    }

    public int to(int edge) {
        return to[edge];
    }

    public double cost(int edge) {
        return cost[edge];
    }

    public int nodeCount() {
        return nodes;
    }

    public int edgeCount() {
        return edges;
    }

    int mostEdgesAtANode() {
        int most = 0;
        for (int v = 0; v < nodes; v++) {
            most = Math.max(most, first[v + 1] - first[v]);
        }
        return most;
    }

    /** Which nodes can be reached from one. */
    public boolean[] reachableFrom(int start) {
        boolean[] reached = new boolean[nodes];
        int[] queue = new int[nodes];
        int tail = 1;
        queue[0] = start;
        reached[start] = true;
        for (int head = 0; head < tail; head++) {
            for (int i = first[queue[head]]; i < first[queue[head] + 1]; i++) {
                if (!reached[farNode[i]]) {
                    reached[farNode[i]] = true;
                    queue[tail++] = farNode[i];
                }
            }
        }
        return reached;
    }

    /** The other end of an edge. */
    int across(int edge, int node) {
        return from[edge] ^ to[edge] ^ node;
    }
}
