package leat.model.geometry;

import java.util.ArrayList;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Length;

/**
 * A route of straight pieces.
 *
 * @param points two or more; no two in a row are the same
 */
public record Polyline(List<Point> points) {

    public Polyline {
        points = Require.entries("route", "points", points);
        if (points.size() < 2) {
            throw new InvalidValueException("route", "points", "a list of " + points.size(), "a list of at least 2");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).equals(points.get(i - 1))) {
                throw new InvalidValueException(
                        "route", "points[" + i + "]", "the same as the one before", "another place");
            }
        }
    }

    public static Polyline of(Point... points) {
        return new Polyline(List.of(points));
    }

    public Point start() {
        return points.get(0);
    }

    public Point end() {
        return points.get(points.size() - 1);
    }

    /** Length on the plan, without rise or fall. */
    public Length length() {
        return new Length(lengthM());
    }

    public double lengthM() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i - 1).distanceM(points.get(i));
        }
        return sum;
    }

    /** The same route walked from its other end. */
    public Polyline reversed() {
        List<Point> turned = new ArrayList<>();
        for (int i = points.size() - 1; i >= 0; i--) {
            turned.add(points.get(i));
        }
        return new Polyline(turned);
    }

    /** How far along the route the place nearest to the point lies; the first one if several are as near. */
    public Length stationOf(Point point) {
        double bestM = Double.POSITIVE_INFINITY;
        double stationM = 0;
        double walkedM = 0;
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double pieceM = a.distanceM(b);
            double share = ((point.xM() - a.xM()) * (b.xM() - a.xM()) + (point.yM() - a.yM()) * (b.yM() - a.yM()))
                    / (pieceM * pieceM);
            double alongM = Math.max(0, Math.min(1, share)) * pieceM;
            double awayM = between(a, b, alongM / pieceM).distanceM(point);
            if (awayM < bestM) {
                bestM = awayM;
                stationM = walkedM + alongM;
            }
            walkedM += pieceM;
        }
        return new Length(stationM);
    }

    /** The place that far along; the ends for stations outside the route. */
    public Point at(Length station) {
        double leftM = station.metres();
        if (leftM <= 0) {
            return start();
        }
        for (int i = 1; i < points.size(); i++) {
            double pieceM = points.get(i - 1).distanceM(points.get(i));
            if (leftM <= pieceM) {
                return between(points.get(i - 1), points.get(i), leftM / pieceM);
            }
            leftM -= pieceM;
        }
        return end();
    }

    public Point nearest(Point point) {
        return at(stationOf(point));
    }

    private static Point between(Point a, Point b, double share) {
        return share >= 1 ? b : new Point(a.xM() + share * (b.xM() - a.xM()), a.yM() + share * (b.yM() - a.yM()));
    }
}
