package leat.calc.internal.routes;

import java.util.Arrays;

/** A binary heap of node indices, least key first, ties by the lower index; keys may be lowered while queued. */
final class NodeHeap {

    private static final int ABSENT = -1;

    private final int[] heap;
    private final int[] slot;
    private final double[] key;
    private int size;

    NodeHeap(int nodes) {
        heap = new int[nodes];
        slot = new int[nodes];
        key = new double[nodes];
        Arrays.fill(slot, ABSENT);
    }

    boolean isEmpty() {
        return size == 0;
    }

    double leastKey() {
        return key[heap[0]];
    }

    void clear() {
        for (int i = 0; i < size; i++) {
            slot[heap[i]] = ABSENT;
        }
        size = 0;
    }

    /** Queues the node, or lowers its key if it is queued with a higher one. */
    void offer(int node, double newKey) {
        int at = slot[node];
        if (at == ABSENT) {
            at = size++;
        } else if (newKey >= key[node]) {
            return;
        }
        key[node] = newKey;
        rise(node, at);
    }

    int poll() {
        int least = heap[0];
        slot[least] = ABSENT;
        int last = heap[--size];
        if (size > 0) {
            sink(last);
        }
        return least;
    }

    private void rise(int node, int from) {
        int at = from;
        while (at > 0) {
            int above = (at - 1) >> 1;
            if (!before(node, heap[above])) {
                break;
            }
            set(at, heap[above]);
            at = above;
        }
        set(at, node);
    }

    private void sink(int node) {
        int at = 0;
        while (true) {
            int below = 2 * at + 1;
            if (below >= size) {
                break;
            }
            if (below + 1 < size && before(heap[below + 1], heap[below])) {
                below++;
            }
            if (!before(heap[below], node)) {
                break;
            }
            set(at, heap[below]);
            at = below;
        }
        set(at, node);
    }

    private void set(int at, int node) {
        heap[at] = node;
        slot[node] = at;
    }

    private boolean before(int a, int b) {
        return key[a] < key[b] || (key[a] == key[b] && a < b);
    }
}
