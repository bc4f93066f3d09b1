package leat.calc.internal.routes;

import java.util.Arrays;

/**
 * Takes parts out of a tree and joins what is left by the cheapest paths: a key path (between two neighbouring terminals
 * or junctions), or a junction with all its key paths. Distances grow from all pieces but the largest, no farther than
 * what was taken out.
 *
 * @see "Duin, C. and Voss, S., Efficient path and vertex exchange in Steiner tree algorithms, Networks 29, 1997 (idea
 *     from memory)"
 */
final class PathExchange {

    /** Junctions where more paths meet are left alone; trenches hardly know any. */
    private static final int MOST_PIECES = 12;

    private static final int NONE = -1;

    private final Graph graph;
    private final NodeHeap heap;
    private final double[] distance;
    private final int[] parentEdge;
    private final int[] piece;
    private final boolean[] isSettled;
    private final int[] touched;
    private int touchedCount;
    private final int[] pieceStart = new int[MOST_PIECES];
    private final int[] pieceEnd = new int[MOST_PIECES];
    private final int[] ends = new int[MOST_PIECES];
    private int pieces;
    private final int[] removed;
    private int removedCount;
    private final double[] linkCost = new double[MOST_PIECES * MOST_PIECES];
    private final int[] linkEdge = new int[MOST_PIECES * MOST_PIECES];
    private final boolean[] isJoined = new boolean[MOST_PIECES];
    private final int[] chosenLinks = new int[MOST_PIECES];

    PathExchange(Graph graph) {
        this.graph = graph;
        this.heap = new NodeHeap(graph.nodes);
        this.distance = new double[graph.nodes];
        this.parentEdge = new int[graph.nodes];
        this.piece = new int[graph.nodes];
        this.isSettled = new boolean[graph.nodes];
        this.touched = new int[graph.nodes];
        this.removed = new int[graph.nodes];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        Arrays.fill(piece, NONE);
    }

    /** One look at every key path; returns whether the tree became cheaper by more than {@code least}. */
    boolean improveByPaths(Tree tree, double least, Effort effort) {
        boolean improved = false;
        for (int e = 0; e < graph.edges && effort.lasts(); e++) {
            if (tree.hasEdge[e] && isFirstOfItsPath(tree, e)) {
                improved |= exchange(tree, least, effort);
            }
        }
        return improved;
    }

    /** One look at every junction that is no terminal. */
    boolean improveByJunctions(Tree tree, double least, Effort effort) {
        boolean improved = false;
        for (int v = 0; v < graph.nodes && effort.lasts(); v++) {
            if (!tree.isTerminal[v] && tree.degree[v] > 2 && tree.degree[v] <= MOST_PIECES) {
                removedCount = 0;
                pieces = 0;
                for (int i = graph.first[v]; i < graph.first[v + 1]; i++) {
                    if (tree.hasEdge[graph.viaEdge[i]]) {
                        ends[pieces++] = walk(tree, v, graph.viaEdge[i]);
                    }
                }
                improved |= exchange(tree, least, effort);
            }
        }
        return improved;
    }

    private boolean isFirstOfItsPath(Tree tree, int edge) {
        removedCount = 0;
        pieces = 2;
        ends[0] = walk(tree, graph.from[edge], edge);
        // The first walk noted the edge itself first, and the second will note it again.
        removed[0] = removed[--removedCount];
        ends[1] = walk(tree, graph.to[edge], edge);
        for (int i = 0; i < removedCount; i++) {
            if (removed[i] < edge) {
                return false;
            }
        }
        return true;
    }

    /** Notes the edges from a node over {@code edge} up to the next key node, and returns that node. */
    private int walk(Tree tree, int from, int edge) {
        int at = from;
        int via = edge;
        while (true) {
            removed[removedCount++] = via;
            at = graph.across(via, at);
            if (tree.isKey(at)) {
                return at;
            }
            via = otherEdge(tree, at, via);
        }
    }

    private int otherEdge(Tree tree, int node, int not) {
        for (int i = graph.first[node]; i < graph.first[node + 1]; i++) {
            if (tree.hasEdge[graph.viaEdge[i]] && graph.viaEdge[i] != not) {
                return graph.viaEdge[i];
            }
        }
        throw new AssertionError(node);
    }

    private boolean exchange(Tree tree, double least, Effort effort) {
        double before = 0;
        for (int i = 0; i < removedCount; i++) {
            tree.remove(removed[i]);
            before += graph.cost[removed[i]];
        }
        markPieces(tree);
        spread(before, effort);
        boolean better = chooseLinks() < before - least;
        if (better) {
            for (int i = 1; i < pieces; i++) {
                addLink(tree, chosenLinks[i]);
            }
            tree.prune();
        } else {
            for (int i = 0; i < removedCount; i++) {
                tree.add(removed[i]);
            }
        }
        forget();
        effort.spend(touchedCount);
        return better;
    }

    private void markPieces(Tree tree) {
        touchedCount = 0;
        for (int p = 0; p < pieces; p++) {
            pieceStart[p] = touchedCount;
            mark(ends[p], p);
            for (int at = pieceStart[p]; at < touchedCount; at++) {
                int node = touched[at];
                for (int i = graph.first[node]; i < graph.first[node + 1]; i++) {
                    if (tree.hasEdge[graph.viaEdge[i]] && piece[graph.farNode[i]] == NONE) {
                        mark(graph.farNode[i], p);
                    }
                }
            }
            pieceEnd[p] = touchedCount;
        }
    }

    private void mark(int node, int p) {
        piece[node] = p;
        distance[node] = 0;
        parentEdge[node] = NONE;
        touched[touchedCount++] = node;
    }

    private void spread(double limit, Effort effort) {
        int largest = 0;
        for (int p = 1; p < pieces; p++) {
            largest = pieceEnd[p] - pieceStart[p] > pieceEnd[largest] - pieceStart[largest] ? p : largest;
        }
        Arrays.fill(linkCost, 0, pieces * MOST_PIECES, Double.POSITIVE_INFINITY);
        for (int p = 0; p < pieces; p++) {
            for (int at = pieceStart[p]; p != largest && at < pieceEnd[p]; at++) {
                heap.offer(touched[at], 0);
            }
        }
        long looked = 0;
        while (!heap.isEmpty()) {
            double enough = pieces == 2 ? Math.min(limit, linkCost[1]) : limit;
            if (heap.leastKey() >= enough) {
                break;
            }
            looked += settle(heap.poll(), enough);
        }
        heap.clear();
        effort.spend(looked);
    }

    /** Links are noted only between nodes whose distance, and so whose piece, can no longer change. */
    private int settle(int node, double limit) {
        isSettled[node] = true;
        for (int i = graph.first[node]; i < graph.first[node + 1]; i++) {
            int far = graph.farNode[i];
            int edge = graph.viaEdge[i];
            double there = distance[node] + graph.cost[edge];
            if (there < distance[far] && there < limit) {
                if (piece[far] == NONE) {
                    touched[touchedCount++] = far;
                }
                distance[far] = there;
                parentEdge[far] = edge;
                piece[far] = piece[node];
                heap.offer(far, there);
            } else if (piece[far] != NONE && piece[far] != piece[node] && (isSettled[far] || distance[far] == 0)) {
                note(piece[node], piece[far], there + distance[far], edge);
            }
        }
        return graph.first[node + 1] - graph.first[node];
    }

    private void note(int a, int b, double cost, int edge) {
        int at = Math.min(a, b) * MOST_PIECES + Math.max(a, b);
        if (cost < linkCost[at]) {
            linkCost[at] = cost;
            linkEdge[at] = edge;
        }
    }

    /** Prim's method over the pieces. */
    private double chooseLinks() {
        Arrays.fill(isJoined, 0, pieces, false);
        isJoined[0] = true;
        double sum = 0;
        for (int round = 1; round < pieces; round++) {
            int best = NONE;
            for (int a = 0; a < pieces; a++) {
                for (int b = a + 1; b < pieces; b++) {
                    int at = a * MOST_PIECES + b;
                    if (isJoined[a] != isJoined[b] && (best == NONE || linkCost[at] < linkCost[best])) {
                        best = at;
                    }
                }
            }
            chosenLinks[round] = linkEdge[best];
            sum += linkCost[best];
            isJoined[best / MOST_PIECES] = true;
            isJoined[best % MOST_PIECES] = true;
        }
        return sum;
    }

    private void addLink(Tree tree, int edge) {
        tree.add(edge);
        addWayBack(tree, graph.from[edge]);
        addWayBack(tree, graph.to[edge]);
    }

    private void addWayBack(Tree tree, int from) {
        int at = from;
        while (parentEdge[at] != NONE) {
            tree.add(parentEdge[at]);
            at = graph.across(parentEdge[at], at);
        }
    }

    private void forget() {
        for (int i = 0; i < touchedCount; i++) {
            distance[touched[i]] = Double.POSITIVE_INFINITY;
            piece[touched[i]] = NONE;
            isSettled[touched[i]] = false;
        }
    }
}
