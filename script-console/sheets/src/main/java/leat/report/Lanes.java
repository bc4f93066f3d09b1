package leat.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Draws lines that lie on each other side by side, as a draughtsman does with pipes in one trench. Each line has one
 * lane along its whole way: that of the line it goes on from or else its true place if that is free, else the nearest
 * free lane. A line that shares its way with no other stays in its true place.
 */
final class Lanes {

    /** From the middle of one line to the next, in millimetres on the sheet. */
    static final double SPACING_MM = 1.1;

    /** Points nearer than this to a line lie on it. */
    private static final double ON_LINE_MM = 0.05;

    /** Corners sharper than this would throw the joint of the lanes far out. */
    private static final double SHARPEST = 0.3;

    /**
     * A line to draw.
     *
     * @param name unique
     * @param after the name of the line that it goes on from, whose lane it would rather have; empty for none
     * @param xy x, y, x, y … in millimetres, true places
     */
    record Line(String name, String after, double[] xy) {}

    private record Spot(double x, double y) implements Comparable<Spot> {

        private static final Comparator<Spot> ORDER =
                Comparator.comparingDouble(Spot::x).thenComparingDouble(Spot::y);

        @Override
        public int compareTo(Spot other) {
            return ORDER.compare(this, other);
        }
    }

    /** A straight piece that no line's corner divides, whichever way it is walked. */
    private record Piece(Spot a, Spot b) implements Comparable<Piece> {

        private static final Comparator<Piece> ORDER =
                Comparator.comparing(Piece::a).thenComparing(Piece::b);

        static Piece between(Spot from, Spot to) {
            return from.compareTo(to) <= 0 ? new Piece(from, to) : new Piece(to, from);
        }

        @Override
        public int compareTo(Piece other) {
            return ORDER.compare(this, other);
        }
    }

    private final TreeSet<Spot> corners = new TreeSet<>();
    private final Map<String, List<Spot>> walks = new TreeMap<>();
    private final SortedMap<Piece, List<String>> users = new TreeMap<>();

    /** Where the first user of a piece comes from; lanes count to the right of its walk. */
    private final SortedMap<Piece, Spot> starts = new TreeMap<>();

    private final SortedMap<String, Integer> lanes = new TreeMap<>();

    private final double spacingMm;

    private Lanes(double spacingMm) {
        this.spacingMm = spacingMm;
    }

    /** The lines as drawn, by name; earlier lines of the list choose their lanes first. */
    static SortedMap<String, double[]> of(List<Line> lines) {
        return of(lines, SPACING_MM);
    }

    /** The same for lines that need more room, from the middle of one to the next. */
    static SortedMap<String, double[]> of(List<Line> lines, double spacingMm) {
        Lanes lanes = new Lanes(spacingMm);
        lines.forEach(lanes::addCorners);
        lines.forEach(lanes::walk);
        SortedMap<String, double[]> drawn = new TreeMap<>();
        for (Line line : lines) {
            lanes.choose(line);
            drawn.put(line.name(), lanes.shifted(line));
        }
        return drawn;
    }

    private void addCorners(Line line) {
        for (int i = 0; i < line.xy().length; i += 2) {
            corners.add(snapped(line.xy()[i], line.xy()[i + 1]));
        }
    }

    /** To the micrometre: places that were computed twice should be one. */
    private static Spot snapped(double x, double y) {
        return new Spot(Math.rint(x * 1000) / 1000 + 0.0, Math.rint(y * 1000) / 1000 + 0.0);
    }

    private void walk(Line line) {
        List<Spot> walk = new ArrayList<>();
        double[] xy = line.xy();
        walk.add(snapped(xy[0], xy[1]));
        for (int i = 2; i < xy.length; i += 2) {
            Spot from = walk.get(walk.size() - 1);
            Spot to = snapped(xy[i], xy[i + 1]);
            between(from, to).stream()
                    .filter(spot -> !spot.equals(walk.get(walk.size() - 1)))
                    .forEach(walk::add);
        }
        walks.put(line.name(), walk);
        for (int i = 1; i < walk.size(); i++) {
            Piece piece = Piece.between(walk.get(i - 1), walk.get(i));
            users.computeIfAbsent(piece, one -> new ArrayList<>()).add(line.name());
            starts.putIfAbsent(piece, walk.get(i - 1));
        }
    }

    /** Corners of any line on the way, and the end itself, in order of distance. */
    private List<Spot> between(Spot from, Spot to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double lengthMm = Math.hypot(dx, dy);
        List<Spot> on = new ArrayList<>();
        for (Spot spot : corners) {
            double along = ((spot.x() - from.x()) * dx + (spot.y() - from.y()) * dy) / lengthMm;
            double across = Math.abs((spot.x() - from.x()) * dy - (spot.y() - from.y()) * dx) / lengthMm;
            if (across < ON_LINE_MM && along > ON_LINE_MM && along < lengthMm - ON_LINE_MM) {
                on.add(spot);
            }
        }
        on.sort(Comparator.comparingDouble((Spot spot) -> Math.hypot(spot.x() - from.x(), spot.y() - from.y()))
                .thenComparing(spot -> spot));
        on.add(to);
        return on;
    }

    private void choose(Line line) {
        TreeSet<Integer> taken = new TreeSet<>();
        boolean alone = true;
        List<Spot> walk = walk(line.name());
        for (int i = 1; i < walk.size(); i++) {
            for (String other : users.getOrDefault(Piece.between(walk.get(i - 1), walk.get(i)), List.of())) {
                Integer lane = lanes.get(other);
                if (lane != null) {
                    taken.add(lane);
                }
                alone &= other.equals(line.name());
            }
        }
        int lane = alone ? 0 : lanes.getOrDefault(line.after(), 0);
        for (int i = 0; taken.contains(lane); i++) {
            int side = (i + 1) / 2;
            lane = i % 2 == 0 ? -side : side;
        }
        lanes.put(line.name(), lane);
    }

    private List<Spot> walk(String name) {
        return walks.getOrDefault(name, List.of());
    }

    private double[] shifted(Line line) {
        double offMm = lanes.getOrDefault(line.name(), 0) * spacingMm;
        List<Spot> walk = walk(line.name());
        if (offMm == 0 || walk.size() < 2) {
            return line.xy();
        }
        List<Spot> drawn = new ArrayList<>();
        Spot lastRight = null;
        for (int i = 1; i < walk.size(); i++) {
            Spot right = right(walk.get(i - 1), walk.get(i), offMm);
            join(drawn, walk.get(i - 1), lastRight, right);
            lastRight = right;
        }
        Spot end = walk.get(walk.size() - 1);
        if (lastRight != null) {
            drawn.add(new Spot(end.x() + lastRight.x(), end.y() + lastRight.y()));
        }
        double[] xy = new double[2 * drawn.size()];
        for (int i = 0; i < drawn.size(); i++) {
            xy[2 * i] = drawn.get(i).x();
            xy[2 * i + 1] = drawn.get(i).y();
        }
        return xy;
    }

    /** The shift of a piece, to the right of the walk of its first user. */
    private Spot right(Spot from, Spot to, double offMm) {
        Spot start = starts.getOrDefault(Piece.between(from, to), from);
        double sign = start.equals(from) ? 1 : -1;
        double lengthMm = Math.hypot(to.x() - from.x(), to.y() - from.y());
        double share = sign * offMm / lengthMm;
        return new Spot(-(to.y() - from.y()) * share, (to.x() - from.x()) * share);
    }

    /** A corner of the shifted line: where both shifted pieces meet, or both their ends if they meet far out. */
    private static void join(List<Spot> drawn, Spot corner, @Nullable Spot before, Spot after) {
        if (before == null) {
            drawn.add(new Spot(corner.x() + after.x(), corner.y() + after.y()));
            return;
        }
        double squared = before.x() * before.x() + before.y() * before.y();
        double cosine = (before.x() * after.x() + before.y() * after.y()) / squared;
        if (1 + cosine < SHARPEST) {
            drawn.add(new Spot(corner.x() + before.x(), corner.y() + before.y()));
            drawn.add(new Spot(corner.x() + after.x(), corner.y() + after.y()));
        } else {
            double share = 1 / (1 + cosine);
            drawn.add(new Spot(
                    corner.x() + (before.x() + after.x()) * share, corner.y() + (before.y() + after.y()) * share));
        }
    }
}
