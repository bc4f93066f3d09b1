package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leat.calc.internal.cells.Segments;

/** Spots for heads: at corners and along the sides first, then in rows across the surface. */
final class Spots {

    /** Where the border turns by more than this, a head stands at the corner. */
    static final double CORNER_DEG = 30;

    private final Plot plot;
    private final List<Border> borders = new ArrayList<>();

    Spots(Plot plot) {
        this.plot = plot;
        double station = 0;
        for (double[] ring : plot.ringsM()) {
            var border = new Border(ring, station);
            borders.add(border);
            station += border.lengthM() + 1;
        }
    }

    /** Heads a throw apart: at corners, evenly along the sides between them, and in rows aligned with the longest side. */
    List<Spot> headToHead(double throwM) {
        List<Spot> spots = new ArrayList<>();
        for (Border border : borders) {
            for (Spot spot : border.spots(CORNER_DEG, throwM)) {
                if (isApart(spot, spots, 0.35 * throwM)) {
                    spots.add(spot);
                }
            }
        }
        addRows(spots, throwM, throwM, 0.5 * throwM);
        return spots;
    }

    /** Many spots to choose among, this far apart. */
    List<Spot> dense(double stepM) {
        List<Spot> spots = new ArrayList<>();
        for (Border border : borders) {
            spots.addAll(border.spots(CORNER_DEG, stepM));
        }
        addRows(spots, stepM, stepM, 0.6 * stepM);
        return spots;
    }

    /** The border that a spot stands on. */
    Optional<Border> borderOf(Spot spot) {
        return spot.sideDeg().length == 0
                ? Optional.empty()
                : borders.stream().filter(border -> border.has(spot.station())).findFirst();
    }

    /** Corners near a spot on the border that is none; the place on the border near a spot off it. The nearest first. */
    List<Spot> attracting(Spot from, double nearM) {
        List<Spot> near = new ArrayList<>();
        Optional<Border> border = borderOf(from);
        if (border.isPresent()) {
            for (double corner : border.get().cornerStations(CORNER_DEG)) {
                near.add(border.get().at(corner));
            }
        } else {
            borders.stream()
                    .filter(one -> one.has(from.station()))
                    .map(one -> one.at(from.station()))
                    .forEach(near::add);
        }
        near.removeIf(to -> from.awayM(to) > nearM || to.station() == from.station() && border.isPresent());
        near.sort(Comparator.comparingDouble(from::awayM));
        return near;
    }

    /** A spot off the border; empty if it lies outside the surface. */
    Optional<Spot> inner(double xM, double yM) {
        return plot.isTarget(xM, yM)
                ? Optional.of(new Spot(xM, yM, new double[0], nearestStation(xM, yM)))
                : Optional.empty();
    }

    private static boolean isApart(Spot spot, List<Spot> others, double leastM) {
        for (Spot other : others) {
            if (Math.hypot(spot.xM() - other.xM(), spot.yM() - other.yM()) < leastM) {
                return false;
            }
        }
        return true;
    }

    /** Rows and columns that divide the surface evenly, in the frame of its longest side; only spots off the border. */
    private void addRows(List<Spot> spots, double alongM, double acrossM, double offBorderM) {
        double turn = Math.toRadians(borders.get(0).longestSideDeg());
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double[] box = boxInFrame(cos, sin);
        int columns = (int) Math.ceil((box[2] - box[0]) / alongM - 1e-6);
        int rows = (int) Math.ceil((box[3] - box[1]) / acrossM - 1e-6);
        for (int row = 1; row < rows; row++) {
            for (int column = 1; column < columns; column++) {
                double u = box[0] + (box[2] - box[0]) * column / columns;
                double v = box[1] + (box[3] - box[1]) * row / rows;
                double xM = u * cos - v * sin;
                double yM = u * sin + v * cos;
                if (plot.isTarget(xM, yM) && Segments.distanceToBorderM(xM, yM, plot.ringsM()) >= offBorderM - 1e-6) {
                    spots.add(new Spot(xM, yM, new double[0], nearestStation(xM, yM)));
                }
            }
        }
    }

    private double[] boxInFrame(double cos, double sin) {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        double[] outer = plot.ringsM()[0];
        for (int i = 0; i < outer.length; i += 2) {
            double u = outer[i] * cos + outer[i + 1] * sin;
            double v = -outer[i] * sin + outer[i + 1] * cos;
            box[0] = Math.min(box[0], u);
            box[1] = Math.min(box[1], v);
            box[2] = Math.max(box[2], u);
            box[3] = Math.max(box[3], v);
        }
        return box;
    }

    private double nearestStation(double xM, double yM) {
        double best = Double.POSITIVE_INFINITY;
        double station = 0;
        for (Border border : borders) {
            double away = border.distanceM(xM, yM);
            if (away < best) {
                best = away;
                station = border.stationOf(xM, yM);
            }
        }
        return station;
    }
}
