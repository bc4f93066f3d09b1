package leat.calc.internal.routes;

import java.util.Arrays;

/** A tree, or while it is being changed a forest, within a graph: which edges are in, and how many meet at each node. */
final class Tree {

    final Graph graph;
    final boolean[] isTerminal;
    final boolean[] hasEdge;
    final int[] degree;

    Tree(Graph graph, boolean[] isTerminal) {
        this.graph = graph;
        this.isTerminal = isTerminal;
        this.hasEdge = new boolean[graph.edges];
        this.degree = new int[graph.nodes];
    }

    void copyFrom(Tree other) {
        System.arraycopy(other.hasEdge, 0, hasEdge, 0, hasEdge.length);
        System.arraycopy(other.degree, 0, degree, 0, degree.length);
    }

    void clear() {
        Arrays.fill(hasEdge, false);
        Arrays.fill(degree, 0);
    }

    void add(int edge) {
        if (!hasEdge[edge]) {
            hasEdge[edge] = true;
            degree[graph.from[edge]]++;
            degree[graph.to[edge]]++;
        }
    }

    void remove(int edge) {
        if (hasEdge[edge]) {
            hasEdge[edge] = false;
            degree[graph.from[edge]]--;
            degree[graph.to[edge]]--;
        }
    }

    /** Terminals belong to the tree even before an edge reaches them. */
    boolean holds(int node) {
        return degree[node] > 0 || isTerminal[node];
    }

    /** A node where the tree has a reason to be: a terminal or a junction. */
    boolean isKey(int node) {
        return isTerminal[node] || degree[node] > 2;
    }

    /** The sum over the edges, always in the order of their indices, so that equal trees cost the same to the bit. */
    double cost() {
        double sum = 0;
        for (int e = 0; e < hasEdge.length; e++) {
            if (hasEdge[e]) {
                sum += graph.cost[e];
            }
        }
        return sum;
    }

    /** Cuts off all branches that end at no terminal. */
    void prune() {
        for (int v = 0; v < degree.length; v++) {
            int at = v;
            while (degree[at] == 1 && !isTerminal[at]) {
                int edge = onlyEdgeAt(at);
                remove(edge);
                at = graph.across(edge, at);
            }
        }
    }

    private int onlyEdgeAt(int node) {
        for (int i = graph.first[node]; i < graph.first[node + 1]; i++) {
            if (hasEdge[graph.viaEdge[i]]) {
                return graph.viaEdge[i];
            }
        }
        throw new AssertionError(node);
    }

    int edgeCount() {
        int count = 0;
        for (boolean has : hasEdge) {
            if (has) {
                count++;
            }
        }
        return count;
    }

    int[] edges() {
        int[] edges = new int[edgeCount()];
        int at = 0;
        for (int e = 0; e < hasEdge.length; e++) {
            if (hasEdge[e]) {
                edges[at++] = e;
            }
        }
        return edges;
    }
}
