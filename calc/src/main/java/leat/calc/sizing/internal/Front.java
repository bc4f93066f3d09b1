package leat.calc.sizing.internal;

import java.util.Arrays;

/**
 * Ways to size what hangs below a place, none of which is beaten by another in both head and price: sorted by the head
 * that they need, the price falling.
 */
final class Front {

    private int count;
    private double[] neededM;
    private double[] price;
    /** Size of the pipe at the top, and the head that is needed at its lower end. */
    private int[] size;

    private double[] belowM;

    Front(int capacity) {
        neededM = new double[capacity];
        price = new double[capacity];
        size = new int[capacity];
        belowM = new double[capacity];
    }

    int count() {
        return count;
    }

    double neededM(int i) {
        return neededM[i];
    }

    double price(int i) {
        return price[i];
    }

    int size(int i) {
        return size[i];
    }

    double belowM(int i) {
        return belowM[i];
    }

    /** Adds a way that needs no less head than those before; one that is no cheaper than the last is left out. */
    void add(double newNeededM, double newPrice, int newSize, double newBelowM) {
        if (count > 0 && newPrice >= price[count - 1]) {
            return;
        }
        if (count > 0 && newNeededM <= neededM[count - 1]) {
            count--; // the same head for less
        }
        if (count == price.length) {
            int capacity = Math.max(8, 2 * count);
            neededM = Arrays.copyOf(neededM, capacity);
            price = Arrays.copyOf(price, capacity);
            size = Arrays.copyOf(size, capacity);
            belowM = Arrays.copyOf(belowM, capacity);
        }
        neededM[count] = newNeededM;
        price[count] = newPrice;
        size[count] = newSize;
        belowM[count] = newBelowM;
        count++;
    }

    /** The cheapest way within a head, or -1 if none is. */
    int cheapestWithin(double headM) {
        int low = 0;
        int high = count;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (neededM[middle] <= headM) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }

    /** The ways of both, without those that are beaten. */
    static Front best(Front one, Front other) {
        var merged = new Front(one.count + other.count);
        int i = 0;
        int j = 0;
        while (i < one.count || j < other.count) {
            boolean takeOne = j == other.count
                    || i < one.count
                            && (one.neededM[i] < other.neededM[j]
                                    || one.neededM[i] == other.neededM[j] && one.price[i] <= other.price[j]);
            if (takeOne) {
                merged.add(one.neededM[i], one.price[i], one.size[i], one.belowM[i]);
                i++;
            } else {
                merged.add(other.neededM[j], other.price[j], other.size[j], other.belowM[j]);
                j++;
            }
        }
        return merged;
    }

    /** Both side by side at one place: the greater head, the sum of the prices. */
    static Front together(Front one, Front other) {
        var joined = new Front(one.count + other.count);
        int i = 0;
        int j = 0;
        if (one.count == 0 || other.count == 0) {
            return joined;
        }
        while (true) {
            joined.add(Math.max(one.neededM[i], other.neededM[j]), one.price[i] + other.price[j], 0, 0);
            boolean oneIsNext =
                    i + 1 < one.count && (j + 1 == other.count || one.neededM[i + 1] <= other.neededM[j + 1]);
            if (oneIsNext) {
                i++;
            } else if (j + 1 < other.count) {
                j++;
            } else {
                return joined;
            }
        }
    }

    /** One pipe on top of the ways below it. */
    Front behindPipe(double lossM, double pipePrice, int pipeSize) {
        var behind = new Front(count);
        for (int i = 0; i < count; i++) {
            behind.add(neededM[i] + lossM, price[i] + pipePrice, pipeSize, neededM[i]);
        }
        return behind;
    }
}
