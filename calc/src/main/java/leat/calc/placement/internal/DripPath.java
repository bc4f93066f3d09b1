package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

/**
 * The way of a line through its rows. Where a slanting edge leaves a corner between a row and a longer one beside it, the end of the
 * shorter row is led into that corner.
 */
final class DripPath {

    /** A corner that reaches out less is within the row's own reach but for a hand's breadth. In distances between rows. */
    private static final double LEAST_CORNER_RATIO = 0.25;

    /** How far along the edge a corner is looked for, in distances between rows. */
    private static final double MOST_WAYS = 3;

    private final List<EdgeRing> edge;
    private final Serpentine.Chain chain;
    private final List<DripRow> rows;
    private final BiPredicate<RowEnd, RowEnd> inside;
    private final List<RowEnd> path = new ArrayList<>();

    private DripPath(
            List<EdgeRing> edge, List<DripRow> rows, Serpentine.Chain chain, BiPredicate<RowEnd, RowEnd> inside) {
        this.edge = edge;
        this.rows = rows;
        this.chain = chain;
        this.inside = inside;
    }

    /**
     * The places that the line of a chain leads through.
     *
     * @param rows   all pieces of rows of the bed
     * @param inside whether a straight piece between two places stays within the edge
     */
    static List<RowEnd> of(
            List<EdgeRing> edge, List<DripRow> rows, Serpentine.Chain chain, BiPredicate<RowEnd, RowEnd> inside) {
        DripPath made = new DripPath(edge, rows, chain, inside);
        made.walk();
        return made.path;
    }

    private void walk() {
        int count = chain.rows().size();
        double cornerM = lastWayM(0);
        addWay(chain.ends().get(0), cornerM, -cornerM);
        for (int row = 0; row < count - 1; row++) {
            double wayM = chain.waysM().get(row);
            double leavingM = cornerWayM(2 * row + 1, wayM);
            double enteringM = cornerWayM(2 * row + 2, -wayM);
            addPulled(2 * row + 1, leavingM);
            addWay(chain.ends().get(2 * row + 1), leavingM, wayM - leavingM + enteringM);
            addPulled(2 * row + 2, enteringM);
        }
        addWay(chain.ends().get(2 * count - 1), 0, lastWayM(2 * count - 1));
    }

    /** The place a start off an end, and all from there along the edge. */
    private void addWay(RowEnd end, double startM, double wayM) {
        EdgeRing ring = edge.get(end.ring());
        double fromM = end.stationM() + startM;
        RowEnd start = ring.at(fromM);
        path.add(start);
        if (wayM != 0) {
            path.addAll(ring.cornersOn(start.stationM(), wayM));
            path.add(ring.at(fromM + wayM));
        }
    }

    /** Where the row is left for its corner, if it has one. */
    private void addPulled(int end, double cornerM) {
        if (cornerM != 0) {
            path.add(pulled(end));
        }
    }

    private RowEnd pulled(int end) {
        DripRow row = chain.rows().get(end / 2);
        RowEnd at = chain.ends().get(end);
        double backM = Math.min(row.halfM(), row.lengthM() / 3);
        return new RowEnd(at.ring(), at.stationM(), at.uM() - outward(end) * backM, at.vM());
    }

    private int outward(int end) {
        return chain.ends().get(end).equals(chain.rows().get(end / 2).right()) ? 1 : -1;
    }

    /** Where a line begins or ends: the way to the tip of the bed, if it is too narrow there for a row, or else to a corner. */
    private double lastWayM(int end) {
        RowEnd at = chain.ends().get(end);
        RowEnd other = chain.ends().get(end ^ 1);
        EdgeRing ring = edge.get(at.ring());
        double halfM = chain.rows().get(end / 2).halfM();
        double tipM = 0;
        double farthestM = halfM;
        for (int direction : new int[] {1, -1}) {
            double roundM = direction > 0
                    ? ring.forwardM(at.stationM(), other.stationM())
                    : -ring.forwardM(other.stationM(), at.stationM());
            if (at.ring() == other.ring() && Serpentine.isFree(rows, ring, at, roundM)) {
                for (RowEnd place : ring.cornersOn(at.stationM(), roundM)) {
                    double riseM = Math.abs(place.vM() - at.vM());
                    if (riseM > farthestM) {
                        farthestM = riseM;
                        tipM = direction > 0
                                ? ring.forwardM(at.stationM(), place.stationM())
                                : -ring.forwardM(place.stationM(), at.stationM());
                    }
                }
            }
        }
        return tipM == 0 ? cornerWayM(end, 0) : tipM;
    }

    /** The way along the edge from an end to its corner, away from where it is joined; 0 if there is none to speak of. */
    private double cornerWayM(int end, double joinedM) {
        double wayM = 0;
        double leastM = LEAST_CORNER_RATIO * 2 * chain.rows().get(end / 2).halfM();
        for (int direction : new int[] {1, -1}) {
            if (direction * joinedM <= 0) {
                double cornerM = cornerWayM(end, direction, joinedM != 0);
                RowEnd corner = corner(end, cornerM);
                double outM =
                        outward(end) * (corner.uM() - chain.ends().get(end).uM());
                if (outM > leastM) {
                    leastM = outM;
                    wayM = cornerM;
                }
            }
        }
        return wayM;
    }

    private RowEnd corner(int end, double wayM) {
        RowEnd at = chain.ends().get(end);
        return edge.get(at.ring()).at(at.stationM() + wayM);
    }

    private double cornerWayM(int end, int direction, boolean mustBePulled) {
        DripRow row = chain.rows().get(end / 2);
        RowEnd at = chain.ends().get(end);
        EdgeRing ring = edge.get(at.ring());
        double mostM = Math.min(MOST_WAYS * 2 * row.halfM(), ring.lengthM() / 2);
        List<RowEnd> places = new ArrayList<>(ring.cornersOn(at.stationM(), direction * mostM));
        places.add(ring.at(at.stationM() + direction * mostM));
        double bestM = 0;
        double bestOutM = 0;
        RowEnd before = at;
        for (RowEnd place : places) {
            double riseM = Math.abs(place.vM() - at.vM());
            RowEnd reached =
                    riseM <= row.halfM() ? place : between(ring, before, place, at.vM(), row.halfM(), direction);
            double outM = outward(end) * (reached.uM() - at.uM());
            if (outM > bestOutM && (!mustBePulled || inside.test(pulled(end), reached))) {
                bestOutM = outM;
                bestM = direction > 0
                        ? ring.forwardM(at.stationM(), reached.stationM())
                        : -ring.forwardM(reached.stationM(), at.stationM());
            }
            if (riseM > row.halfM()) {
                break;
            }
            before = place;
        }
        return bestM;
    }

    /** Where the edge comes to be that far from the level of a row. */
    private static RowEnd between(EdgeRing ring, RowEnd near, RowEnd far, double levelM, double halfM, int direction) {
        double nearM = Math.abs(near.vM() - levelM);
        double farM = Math.abs(far.vM() - levelM);
        double share = (halfM - nearM) / (farM - nearM);
        double sideM = Math.hypot(far.uM() - near.uM(), far.vM() - near.vM());
        return ring.at(near.stationM() + direction * share * sideM);
    }
}
