package leat.calc.hydraulics.internal;

import java.util.Arrays;

/**
 * Numbers the nodes of a tree level by level, children in the order of their parents.
 * <p>
 * In this order neighbours do not depend on each other, so that the processor works on many nodes at once, and memory is
 * read almost in sequence.
 */
final class BreadthFirst {

    private static final int NONE = -1;

    private BreadthFirst() {}

    /**
     * Place of each node in the new order; the root (node 0) keeps place 0.
     *
     * @param parent of each node, smaller than the node itself; parent[0] is not used
     * @throws IllegalArgumentException if a parent is not smaller than its child
     */
    static int[] placeOf(int[] parent) {
        int count = parent.length;
        int[] firstChild = new int[count];
        int[] nextSibling = new int[count];
        Arrays.fill(firstChild, NONE);
        for (int node = count - 1; node > 0; node--) {
            if (parent[node] < 0 || parent[node] >= node) {
                throw new IllegalArgumentException(
                        "node " + node + ": parent is " + parent[node] + "; it must be from 0 to " + (node - 1));
            }
            nextSibling[node] = firstChild[parent[node]];
            firstChild[parent[node]] = node;
        }
        int[] place = new int[count];
        int[] queue = new int[count];
        int tail = 1;
        for (int head = 0; head < tail; head++) {
            for (int child = firstChild[queue[head]]; child != NONE; child = nextSibling[child]) {
                place[child] = tail;
                queue[tail++] = child;
            }
        }
        return place;
    }
}
