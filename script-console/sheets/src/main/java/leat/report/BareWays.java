package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The stretches of a cable that lie in none of its conduits: indoors, or bare in the ground. */
final class BareWays {

    /** Points nearer than this to a line lie on it. */
    private static final double ON_LINE_MM = 0.05;

    private final double[] cable;
    private final List<double[]> conduits;
    private final List<double[]> ways = new ArrayList<>();
    private final List<Double> open = new ArrayList<>();

    private BareWays(double[] cable, List<double[]> conduits) {
        this.cable = cable;
        this.conduits = conduits;
    }

    /** All as x, y, x, y … on the sheet. */
    static List<double[]> of(double[] cable, List<double[]> conduits) {
        BareWays bare = new BareWays(cable, conduits);
        for (int i = 0; i + 3 < cable.length; i += 2) {
            bare.walk(i);
        }
        bare.close();
        return bare.ways;
    }

    private void walk(int i) {
        double x1 = cable[i];
        double y1 = cable[i + 1];
        double x2 = cable[i + 2];
        double y2 = cable[i + 3];
        TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
        for (double[] conduit : conduits) {
            for (int k = 0; k + 1 < conduit.length; k += 2) {
                if (distance(conduit[k], conduit[k + 1], x1, y1, x2, y2) < ON_LINE_MM) {
                    cuts.add(share(conduit[k], conduit[k + 1], x1, y1, x2, y2));
                }
            }
        }
        double from = 0;
        for (double to : cuts.tailSet(0.0, false)) {
            double middle = (from + to) / 2;
            if (isInConduit(x1 + (x2 - x1) * middle, y1 + (y2 - y1) * middle)) {
                close();
            } else {
                add(x1 + (x2 - x1) * from, y1 + (y2 - y1) * from);
                add(x1 + (x2 - x1) * to, y1 + (y2 - y1) * to);
            }
            from = to;
        }
    }

    private boolean isInConduit(double x, double y) {
        for (double[] conduit : conduits) {
            for (int k = 0; k + 3 < conduit.length; k += 2) {
                if (distance(x, y, conduit[k], conduit[k + 1], conduit[k + 2], conduit[k + 3]) < ON_LINE_MM) {
                    return true;
                }
            }
        }
        return false;
    }

    private void add(double x, double y) {
        int last = open.size() - 2;
        if (last < 0 || Math.hypot(x - open.get(last), y - open.get(last + 1)) > ON_LINE_MM) {
            open.add(x);
            open.add(y);
        }
    }

    private void close() {
        if (open.size() >= 4) {
            ways.add(open.stream().mapToDouble(Double::doubleValue).toArray());
        }
        open.clear();
    }

    /** How far along the line from (x1, y1) to (x2, y2) a point lies, 0 to 1. */
    private static double share(double x, double y, double x1, double y1, double x2, double y2) {
        double dx = x2 - x1;
        double dy = y2 - y1;
        double squared = dx * dx + dy * dy;
        return squared == 0 ? 0 : Math.max(0, Math.min(1, ((x - x1) * dx + (y - y1) * dy) / squared));
    }

    private static double distance(double x, double y, double x1, double y1, double x2, double y2) {
        double share = share(x, y, x1, y1, x2, y2);
        return Math.hypot(x - x1 - (x2 - x1) * share, y - y1 - (y2 - y1) * share);
    }
}
