package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.List;
import leat.calc.internal.cells.Segments;

/** One closed line of a surface's border. */
final class Border {

    private final double[] ringM;
    private final double firstStation;

    Border(double[] ringM, double firstStation) {
        this.ringM = ringM;
        this.firstStation = firstStation;
    }

    private int corners() {
        return ringM.length / 2;
    }

    private double xM(int corner) {
        return ringM[2 * Math.floorMod(corner, corners())];
    }

    private double yM(int corner) {
        return ringM[2 * Math.floorMod(corner, corners()) + 1];
    }

    private double sideM(int corner) {
        return Math.hypot(xM(corner + 1) - xM(corner), yM(corner + 1) - yM(corner));
    }

    /** Bearing of the side that leaves a corner. */
    private double sideBearing(int corner) {
        return Math.toDegrees(Math.atan2(xM(corner + 1) - xM(corner), yM(corner + 1) - yM(corner)));
    }

    double lengthM() {
        double length = 0;
        for (int corner = 0; corner < corners(); corner++) {
            length += sideM(corner);
        }
        return length;
    }

    /** Direction of the longest side, counter-clockwise from east, within a half turn; the first of equal ones. */
    double longestSideDeg() {
        double longest = 0;
        double deg = 0;
        for (int corner = 0; corner < corners(); corner++) {
            if (sideM(corner) > longest * (1 + 1e-9)) {
                longest = sideM(corner);
                deg = 90 - sideBearing(corner);
            }
        }
        double half = deg - 180 * Math.floor(deg / 180);
        // Sides along the axes give exact rows.
        return Math.abs(half - Math.rint(half / 90) * 90) < 1e-9 ? Math.rint(half / 90) * 90 % 180 : half;
    }

    double distanceM(double x, double y) {
        return Segments.distanceToBorderM(x, y, new double[][] {ringM});
    }

    /** How far along the border the spot nearest to a point lies. */
    double stationOf(double x, double y) {
        double best = Double.POSITIVE_INFINITY;
        double station = 0;
        double walked = firstStation;
        for (int corner = 0; corner < corners(); corner++) {
            double away = Segments.distanceM(x, y, xM(corner), yM(corner), xM(corner + 1), yM(corner + 1));
            if (away < best - 1e-9) {
                best = away;
                double dx = xM(corner + 1) - xM(corner);
                double dy = yM(corner + 1) - yM(corner);
                double share = ((x - xM(corner)) * dx + (y - yM(corner)) * dy) / (dx * dx + dy * dy);
                station = walked + Math.max(0, Math.min(1, share)) * sideM(corner);
            }
            walked += sideM(corner);
        }
        return station;
    }

    boolean has(double station) {
        return station >= firstStation && station < firstStation + lengthM();
    }

    double firstStation() {
        return firstStation;
    }

    double endStation() {
        return firstStation + lengthM();
    }

    /** Where the side on which a station lies begins. */
    double cornerBefore(double station) {
        double before = firstStation;
        for (int corner = 0; corner < corners() && before + sideM(corner) <= station; corner++) {
            before += sideM(corner);
        }
        return before;
    }

    /** How far along the border the corners that turn by more than {@code cornerDeg} lie, rising; at least one. */
    double[] cornerStations(double cornerDeg) {
        return marked(cornerDeg).stream()
                .mapToDouble(corner -> stationAt(corner, 0))
                .toArray();
    }

    /** The spot so far along the border; {@link #has} that station. */
    Spot at(double station) {
        double left = station - firstStation;
        int corner = 0;
        while (corner < corners() - 1 && left >= sideM(corner)) {
            left -= sideM(corner++);
        }
        return left < 1e-6 ? atCorner(corner) : onSide(corner, left);
    }

    /** Spots at the corners that turn by more than {@code cornerDeg}, and evenly between them, at most {@code mostM} apart. */
    List<Spot> spots(double cornerDeg, double mostM) {
        List<Integer> marked = marked(cornerDeg);
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < marked.size(); i++) {
            int from = marked.get(i);
            int to = i + 1 < marked.size() ? marked.get(i + 1) : marked.get(0) + corners();
            addChain(spots, from, to, mostM);
        }
        return spots;
    }

    private List<Integer> marked(double cornerDeg) {
        List<Integer> marked = new ArrayList<>();
        for (int corner = 0; corner < corners(); corner++) {
            double turn = sideBearing(corner) - sideBearing(corner - 1);
            if (Math.abs(turn - 360 * Math.rint(turn / 360)) > cornerDeg) {
                marked.add(corner);
            }
        }
        if (marked.isEmpty()) {
            marked.add(0);
        }
        return marked;
    }

    /** The first corner and evenly spaced spots up to before the last. */
    private void addChain(List<Spot> spots, int from, int to, double mostM) {
        double length = 0;
        for (int corner = from; corner < to; corner++) {
            length += sideM(corner);
        }
        int pieces = Math.max(1, (int) Math.ceil(length / mostM - 1e-6));
        spots.add(atCorner(from));
        int corner = from;
        double before = 0;
        for (int piece = 1; piece < pieces; piece++) {
            double along = length * piece / pieces;
            while (before + sideM(corner) < along - 1e-9) {
                before += sideM(corner++);
            }
            spots.add(onSide(corner, along - before));
        }
    }

    private Spot atCorner(int corner) {
        double[] sides = {sideBearing(corner), sideBearing(corner - 1) + 180};
        return new Spot(xM(corner), yM(corner), sides, stationAt(corner, 0));
    }

    private Spot onSide(int corner, double alongM) {
        double side = sideM(corner);
        if (side - alongM < 1e-6) {
            return atCorner(corner + 1);
        }
        double share = alongM / side;
        double x = xM(corner) + (xM(corner + 1) - xM(corner)) * share;
        double y = yM(corner) + (yM(corner + 1) - yM(corner)) * share;
        double bearing = sideBearing(corner);
        return new Spot(x, y, new double[] {bearing, bearing + 180}, stationAt(corner, alongM));
    }

    private double stationAt(int corner, double alongM) {
        double station = firstStation + alongM;
        for (int before = 0; before < Math.floorMod(corner, corners()); before++) {
            station += sideM(before);
        }
        return station;
    }
}
