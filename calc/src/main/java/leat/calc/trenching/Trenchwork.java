package leat.calc.trenching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.geometry.Point;
import leat.model.id.PipeId;

/**
 * Which pipes lie along which straight pieces of trench. A piece is known by its two ends; all pipes along a piece are cut
 * at the same points.
 */
final class Trenchwork {

    private static final Comparator<Point> BY_PLACE =
            Comparator.comparingDouble(Point::xM).thenComparingDouble(Point::yM);

    /** A point nearer to an end of a piece than this is that end. */
    private static final double LEAST_PIECE_M = 0.05;

    /** A straight piece of trench; the ends in order of place, so that equal pieces are equal. */
    record Piece(Point a, Point b) implements Comparable<Piece> {

        static Piece between(Point one, Point other) {
            return BY_PLACE.compare(one, other) <= 0 ? new Piece(one, other) : new Piece(other, one);
        }

        double lengthM() {
            return a.distanceM(b);
        }

        @Override
        public int compareTo(Piece other) {
            int first = BY_PLACE.compare(a, other.a);
            return first != 0 ? first : BY_PLACE.compare(b, other.b);
        }
    }

    private final SortedMap<PipeId, List<Point>> routes = new TreeMap<>();

    void add(PipeId pipe, List<Point> route) {
        routes.put(pipe, new ArrayList<>(route));
    }

    /** The points of its route, with those at which it was cut for others. */
    List<Point> route(PipeId pipe) {
        return List.copyOf(routes.getOrDefault(pipe, List.of()));
    }

    /** All pieces with the pipes along them. */
    SortedMap<Piece, SortedSet<PipeId>> pieces() {
        SortedMap<Piece, SortedSet<PipeId>> pieces = new TreeMap<>();
        routes.forEach((pipe, route) -> {
            for (int i = 1; i < route.size(); i++) {
                pieces.computeIfAbsent(Piece.between(route.get(i - 1), route.get(i)), key -> new TreeSet<>())
                        .add(pipe);
            }
        });
        return pieces;
    }

    /** Cuts the piece nearest to the point where it is nearest, so that a branch may leave there. */
    void cutNear(Point point) {
        double nearestM = Double.POSITIVE_INFINITY;
        Piece nearest = null;
        for (Piece piece : pieces().keySet()) {
            double awayM = foot(piece, point).distanceM(point);
            if (awayM < nearestM) {
                nearestM = awayM;
                nearest = piece;
            }
        }
        if (nearest == null) {
            return;
        }
        Point foot = foot(nearest, point);
        if (foot.distanceM(nearest.a()) >= LEAST_PIECE_M && foot.distanceM(nearest.b()) >= LEAST_PIECE_M) {
            cut(nearest, foot);
        }
    }

    private void cut(Piece piece, Point at) {
        for (List<Point> route : routes.values()) {
            for (int i = route.size() - 1; i > 0; i--) {
                if (Piece.between(route.get(i - 1), route.get(i)).equals(piece)) {
                    route.add(i, at);
                }
            }
        }
    }

    private static Point foot(Piece piece, Point point) {
        double dx = piece.b().xM() - piece.a().xM();
        double dy = piece.b().yM() - piece.a().yM();
        double along =
                ((point.xM() - piece.a().xM()) * dx + (point.yM() - piece.a().yM()) * dy) / (dx * dx + dy * dy);
        double share = Math.max(0, Math.min(1, along));
        return new Point(piece.a().xM() + share * dx, piece.a().yM() + share * dy);
    }
}
