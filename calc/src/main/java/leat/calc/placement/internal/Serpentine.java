package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Rows joined end to end along the edge, there and back. From the end of a row the line goes on with the row whose end is the
 * shortest way off along the same edge, if no other row ends between them; it grows at both its ends until nothing is near.
 */
final class Serpentine {

    /** A row further along joins no more: a new line begins there. In distances between rows. */
    private static final double MOST_WAYS = 4;

    private final List<EdgeRing> edge;
    private final List<DripRow> rows;
    private final double mostWayM;
    private final List<DripRow> left;

    private Serpentine(List<EdgeRing> edge, List<DripRow> rows, double spacingM) {
        this.edge = edge;
        this.rows = rows;
        mostWayM = MOST_WAYS * spacingM;
        left = new ArrayList<>(rows);
    }

    /**
     * A line: rows in the order of walking.
     *
     * @param ends two for each row, where it is entered and where it is left
     * @param rows the rows
     * @param waysM from the end of each but the last row to the start of the next, along the edge; less than 0 backward
     */
    record Chain(List<RowEnd> ends, List<DripRow> rows, List<Double> waysM) {

        double wayM() {
            return waysM.stream().mapToDouble(Math::abs).sum();
        }

        private void turn() {
            Collections.reverse(ends);
            Collections.reverse(rows);
            Collections.reverse(waysM);
            waysM.replaceAll(way -> -way);
        }
    }

    private record Link(DripRow row, boolean atRight, double wayM) {}

    /** The fewest lines, and of as few those that need least along the edge, of walks begun at either end of the first and the last row. */
    static List<Chain> of(List<EdgeRing> edge, List<DripRow> rows, double spacingM) {
        List<DripRow> turned = new ArrayList<>(rows);
        Collections.reverse(turned);
        List<Chain> best = List.of();
        for (List<DripRow> order : List.of(rows, turned)) {
            for (boolean fromRight : new boolean[] {false, true}) {
                List<Chain> chains = new Serpentine(edge, order, spacingM).chains(fromRight);
                if (best.isEmpty() || isBetter(chains, best)) {
                    best = chains;
                }
            }
        }
        return best;
    }

    private static boolean isBetter(List<Chain> chains, List<Chain> best) {
        double savedM = ways(best) - ways(chains);
        return chains.size() < best.size() || chains.size() == best.size() && savedM > 1e-6;
    }

    private static double ways(List<Chain> chains) {
        return chains.stream().mapToDouble(Chain::wayM).sum();
    }

    private List<Chain> chains(boolean fromRight) {
        List<Chain> chains = new ArrayList<>();
        while (!left.isEmpty()) {
            DripRow first = left.remove(0);
            Chain chain = new Chain(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
            append(chain, first, fromRight);
            grow(chain);
            chain.turn();
            grow(chain);
            chains.add(chain);
        }
        return chains;
    }

    private void grow(Chain chain) {
        for (Optional<Link> link = next(chain); link.isPresent(); link = next(chain)) {
            chain.waysM.add(link.get().wayM);
            left.remove(link.get().row);
            append(chain, link.get().row, link.get().atRight);
        }
    }

    private static void append(Chain chain, DripRow row, boolean atRight) {
        chain.rows.add(row);
        chain.ends.add(row.end(atRight));
        chain.ends.add(row.end(!atRight));
    }

    private Optional<Link> next(Chain chain) {
        RowEnd from = chain.ends.get(chain.ends.size() - 1);
        int level = chain.rows.get(chain.rows.size() - 1).level();
        Optional<Link> best = Optional.empty();
        double leastM = mostWayM;
        for (DripRow row : left) {
            for (boolean atRight : new boolean[] {false, true}) {
                RowEnd to = row.end(atRight);
                if (to.ring() == from.ring() && Math.abs(row.level() - level) <= 1) {
                    double wayM = shorterWayM(from, to);
                    if (Math.abs(wayM) < leastM && isFree(rows, edge.get(from.ring()), from, wayM)) {
                        leastM = Math.abs(wayM);
                        best = Optional.of(new Link(row, atRight, wayM));
                    }
                }
            }
        }
        return best;
    }

    private double shorterWayM(RowEnd from, RowEnd to) {
        EdgeRing ring = edge.get(from.ring());
        double forwardM = ring.forwardM(from.stationM(), to.stationM());
        return 2 * forwardM <= ring.lengthM() ? forwardM : forwardM - ring.lengthM();
    }

    /** Whether no row ends on a way along the edge: a line there would run across it. The ends of the way do not count. */
    static boolean isFree(List<DripRow> rows, EdgeRing ring, RowEnd from, double wayM) {
        return rows.stream()
                .noneMatch(row -> isPassed(row.left(), from, wayM, ring) || isPassed(row.right(), from, wayM, ring));
    }

    private static boolean isPassed(RowEnd end, RowEnd from, double wayM, EdgeRing ring) {
        if (end.ring() != from.ring() || end.equals(from)) {
            return false;
        }
        double passedM = wayM > 0
                ? ring.forwardM(from.stationM(), end.stationM())
                : ring.forwardM(end.stationM(), from.stationM());
        return passedM < Math.abs(wayM) - 1e-9;
    }
}
