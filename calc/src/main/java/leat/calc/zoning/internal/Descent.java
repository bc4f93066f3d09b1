package leat.calc.zoning.internal;

/** Moves single heads and swaps pairs between zones as long as that makes the partition cheaper. */
final class Descent {

    /** Gains below this share are rounding. */
    private static final double LEAST_GAIN_SHARE = 1e-10;

    private Descent() {}

    /** Returns the cost reached; {@code zones} holds the partition. */
    static double improve(Zones zones, int[] heads) {
        double cost = zones.costM();
        boolean improved = true;
        while (improved) {
            double before = cost;
            for (int i = 0; i < heads.length; i++) {
                cost = moveOne(zones, heads[i], cost);
                for (int j = i + 1; j < heads.length; j++) {
                    cost = swapOne(zones, heads[i], heads[j], cost);
                }
            }
            improved = cost < before;
        }
        return cost;
    }

    private static double moveOne(Zones zones, int head, double cost) {
        double best = cost;
        for (int zone = 0; zone < zones.count; zone++) {
            int from = zones.zoneOf[head];
            if (zone == from || !zones.canMove(head, zone)) {
                continue;
            }
            zones.move(head, zone);
            double now = zones.costM();
            if (now < best - LEAST_GAIN_SHARE * best) {
                best = now;
            } else {
                zones.undoMove(head);
            }
        }
        return best;
    }

    private static double swapOne(Zones zones, int a, int b, double cost) {
        if (zones.zoneOf[a] == zones.zoneOf[b] || !zones.canSwap(a, b)) {
            return cost;
        }
        zones.swap(a, b);
        double now = zones.costM();
        if (now < cost - LEAST_GAIN_SHARE * cost) {
            return now;
        }
        zones.undoSwap(a, b);
        return cost;
    }
}
