package leat.calc.internal.routes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import leat.model.geometry.Point;
import leat.model.id.LaidId;
import leat.model.trench.TrenchSegment;

/**
 * What lies along which straight pieces of trench. A piece is known by its two ends; all that lies along a piece are cut
 * at the same points.
 */
public final class Trenchwork {

    private static final Comparator<Point> BY_PLACE =
            Comparator.comparingDouble(Point::xM).thenComparingDouble(Point::yM);

    /** A point nearer to an end of a piece than this is that end. */
    private static final double LEAST_PIECE_M = 0.05;

    /** Corners closer than this are one corner. */
    private static final double SAME_PLACE_M = 0.0142;

    private static final double LEAST_CUT_M = 1e-3;

    /** Absorbs rounding: a corner this near to a piece lies on it. */
    private static final double ON_LINE_M = 1e-6;

    /** A straight piece of trench; the ends in order of place, so that equal pieces are equal. */
    public record Piece(Point a, Point b) implements Comparable<Piece> {

        public static Piece between(Point one, Point other) {
            return BY_PLACE.compare(one, other) <= 0 ? new Piece(one, other) : new Piece(other, one);
        }

        public double lengthM() {
            return a.distanceM(b);
        }

        @Override
        public int compareTo(Piece other) {
            int first = BY_PLACE.compare(a, other.a);
            return first != 0 ? first : BY_PLACE.compare(b, other.b);
        }
    }

    /** One thing may run through trenches several times, with a conduit or a building between. */
    private record Route(LaidId laid, List<Point> points) {}

    /** A trench that is given: whatever happens to run along it may lie in it. */
    private record Ready(TrenchSegment trench, List<Point> points) {}

    private final List<Route> routes = new ArrayList<>();
    private final List<Ready> readies = new ArrayList<>();

    /** Puts in a given trench, which is dug anyhow. */
    public void addReady(TrenchSegment trench) {
        readies.add(new Ready(trench, new ArrayList<>(trench.route().points())));
    }

    /**
     * Cuts all at corners, and takes out what was stated to lie in a given trench but runs nowhere along it: its word counts
     * for more than its line. Of what does run along it the rest may want a trench of its own.
     */
    public void settle() {
        cutAtCorners();
        SortedMap<Piece, SortedSet<LaidId>> pieces = pieces();
        SortedSet<LaidId> along = new TreeSet<>();
        ready().forEach((piece, trench) -> along.addAll(pieces.getOrDefault(piece, new TreeSet<>())));
        for (Ready one : readies) {
            one.trench().contents().stream()
                    .filter(laid -> !along.contains(laid))
                    .forEach(this::remove);
        }
    }

    private List<List<Point>> lines() {
        return Stream.concat(
                        readies.stream().map(Ready::points), routes.stream().map(Route::points))
                .toList();
    }

    public void add(LaidId laid, List<Point> route) {
        routes.add(new Route(laid, new ArrayList<>(route)));
    }

    /** Takes all its routes out again. */
    public void remove(LaidId laid) {
        routes.removeIf(route -> route.laid().equals(laid));
    }

    /** The points of its first route, with those at which it was cut for others; none if it is not here. */
    public List<Point> route(LaidId laid) {
        return routes.stream()
                .filter(route -> route.laid().equals(laid))
                .findFirst()
                .map(route -> List.copyOf(route.points()))
                .orElse(List.of());
    }

    /** Moves its corners onto corners that are there, so that what should share a trench does. */
    public void addSnapped(LaidId laid, List<Point> route) {
        List<Point> snapped = new ArrayList<>();
        for (Point point : route) {
            Point on = corner(point);
            if (snapped.isEmpty() || !snapped.get(snapped.size() - 1).equals(on)) {
                snapped.add(on);
            }
        }
        if (snapped.size() > 1) {
            routes.add(new Route(laid, snapped));
        }
    }

    private Point corner(Point point) {
        return lines().stream()
                .flatMap(List::stream)
                .filter(one -> one.distanceM(point) < SAME_PLACE_M)
                .min(Comparator.comparingDouble((Point one) -> one.distanceM(point))
                        .thenComparing(BY_PLACE))
                .orElse(point);
    }

    /** Cuts all pieces at corners of others that lie on them: from there they are one trench. */
    public void cutAtCorners() {
        SortedSet<Point> corners = new TreeSet<>(BY_PLACE);
        lines().forEach(corners::addAll);
        for (List<Point> route : lines()) {
            for (int i = route.size() - 1; i > 0; i--) {
                Point a = route.get(i - 1);
                Point b = route.get(i);
                Piece piece = Piece.between(a, b);
                List<Point> on = corners.stream()
                        .filter(corner -> corner.distanceM(a) > LEAST_CUT_M
                                && corner.distanceM(b) > LEAST_CUT_M
                                && foot(piece, corner).distanceM(corner) < ON_LINE_M)
                        .sorted(Comparator.comparingDouble(a::distanceM))
                        .toList();
                route.addAll(i, on);
            }
        }
    }

    /** The pieces of given trenches; of two that run along the same piece the first by id. */
    public SortedMap<Piece, TrenchSegment> ready() {
        SortedMap<Piece, TrenchSegment> ready = new TreeMap<>();
        for (Ready one : readies) {
            List<Point> points = one.points();
            for (int i = 1; i < points.size(); i++) {
                ready.putIfAbsent(Piece.between(points.get(i - 1), points.get(i)), one.trench());
            }
        }
        return ready;
    }

    /** All pieces with what lies along them, apart from what was stated to lie in a given trench. */
    public SortedMap<Piece, SortedSet<LaidId>> pieces() {
        SortedMap<Piece, SortedSet<LaidId>> pieces = new TreeMap<>();
        ready().keySet().forEach(piece -> pieces.put(piece, new TreeSet<>()));
        routes.forEach(one -> {
            List<Point> route = one.points();
            for (int i = 1; i < route.size(); i++) {
                pieces.computeIfAbsent(Piece.between(route.get(i - 1), route.get(i)), key -> new TreeSet<>())
                        .add(one.laid());
            }
        });
        return pieces;
    }

    /** Cuts the piece nearest to the point where it is nearest, and each given trench, so that a branch may leave there. */
    public void cutNear(Point point) {
        cutNearest(point, pieces().keySet());
        cutReadyNear(point);
    }

    /** Cuts each given trench where it is nearest to the point. */
    public void cutReadyNear(Point point) {
        for (Ready one : readies) {
            SortedSet<Piece> pieces = new TreeSet<>();
            for (int i = 1; i < one.points().size(); i++) {
                pieces.add(Piece.between(one.points().get(i - 1), one.points().get(i)));
            }
            cutNearest(point, pieces);
        }
    }

    private void cutNearest(Point point, Collection<Piece> pieces) {
        double nearestM = Double.POSITIVE_INFINITY;
        Piece nearest = null;
        for (Piece piece : pieces) {
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
        for (List<Point> route : lines()) {
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
