package leat.calc.internal.routes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.internal.routes.Trenchwork.Piece;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.LaidId;
import leat.model.id.SegmentId;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;

/** Turns pieces of trench into segments: as long as can be with the same contents, dug by the same means. */
public final class TrenchCuts {

    /** A stretch between hand-dug ones that is shorter than this is dug by hand as well: no machine is set down for it. */
    private static final double LEAST_BY_MACHINE_M = 0.5;

    private final Tolls byHand;
    private final TrenchLaying laying;

    public TrenchCuts(Tolls byHand, TrenchLaying laying) {
        this.byHand = byHand;
        this.laying = laying;
    }

    private record Stretch(List<Point> points, boolean byHand) {}

    /**
     * Given trenches with what more lies in them, then segments for all other pieces, named in the order of what lies in
     * them. Things that want more depth than a given trench has, or are there before it, get a trench of their own unless
     * they were stated to lie in it.
     *
     * @param given with what was stated to lie in them
     */
    public List<TrenchSegment> cut(Trenchwork work, List<TrenchSegment> given) {
        SortedMap<SortedSet<LaidId>, List<Piece>> byContents = new TreeMap<>(TrenchCuts::compare);
        SortedMap<SegmentId, SortedSet<LaidId>> shared = new TreeMap<>();
        SortedMap<Piece, TrenchSegment> ready = work.ready();
        work.pieces().forEach((piece, contents) -> {
            SortedSet<LaidId> own = new TreeSet<>(contents);
            TrenchSegment trench = ready.get(piece);
            if (trench != null) {
                own.removeIf(laid -> fits(laid, piece, trench));
                shared.computeIfAbsent(trench.id(), key -> new TreeSet<>()).addAll(contents);
                shared.get(trench.id()).removeAll(own);
            }
            if (!own.isEmpty()) {
                byContents.computeIfAbsent(own, key -> new ArrayList<>()).add(piece);
            }
        });
        List<TrenchSegment> segments = new ArrayList<>();
        SortedSet<SegmentId> used = new TreeSet<>();
        for (TrenchSegment trench : given) {
            SortedSet<LaidId> contents = new TreeSet<>(trench.contents());
            contents.addAll(shared.getOrDefault(trench.id(), new TreeSet<>()));
            segments.add(trench.withContents(List.copyOf(contents)));
            used.add(trench.id());
        }
        byContents.forEach((contents, pieces) -> {
            for (List<Point> chain : chains(pieces)) {
                for (Stretch stretch : stretches(chain)) {
                    SegmentId id = next(used);
                    segments.add(new TrenchSegment(
                            id,
                            new Polyline(stretch.points()),
                            laying.depth(contents, stretch.points()),
                            List.copyOf(contents),
                            stretch.byHand(),
                            laying.phase(contents)));
                }
            }
        });
        return segments;
    }

    private boolean fits(LaidId laid, Piece piece, TrenchSegment trench) {
        SortedSet<LaidId> alone = new TreeSet<>(List.of(laid));
        if (trench.contents().contains(laid)) {
            return true;
        }
        boolean isThere = trench.phase() == Phase.NOW || laying.phase(alone) == Phase.LATER;
        return isThere && laying.depth(alone, List.of(piece.a(), piece.b())).compareTo(trench.depth()) <= 0;
    }

    private static int compare(SortedSet<LaidId> one, SortedSet<LaidId> other) {
        List<LaidId> a = List.copyOf(one);
        List<LaidId> b = List.copyOf(other);
        for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
            int order = a.get(i).compareTo(b.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(a.size(), b.size());
    }

    /** Pieces put end to end; each chain goes on as long as exactly one piece leads on. */
    private static List<List<Point>> chains(List<Piece> pieces) {
        List<Piece> left = new ArrayList<>(pieces);
        List<List<Point>> chains = new ArrayList<>();
        while (!left.isEmpty()) {
            Piece first = left.remove(0);
            List<Point> chain = new ArrayList<>(List.of(first.a(), first.b()));
            while (extend(chain, left)) {
                // each turn takes one more piece in at the far end
            }
            Collections.reverse(chain);
            while (extend(chain, left)) {
                // and at the other end
            }
            chains.add(chain);
        }
        return chains;
    }

    private static boolean extend(List<Point> chain, List<Piece> left) {
        Point end = chain.get(chain.size() - 1);
        List<Piece> next = left.stream()
                .filter(piece -> piece.a().equals(end) || piece.b().equals(end))
                .toList();
        if (next.size() != 1) {
            return false;
        }
        Piece piece = next.get(0);
        left.remove(piece);
        chain.add(piece.a().equals(end) ? piece.b() : piece.a());
        return true;
    }

    private List<Stretch> stretches(List<Point> chain) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 1; i < chain.size(); i++) {
            Point a = chain.get(i - 1);
            Point b = chain.get(i);
            double from = 0;
            double[] crossings = byHand.crossings(a.xM(), a.yM(), b.xM(), b.yM());
            for (int c = 0; c <= crossings.length; c++) {
                double to = c < crossings.length ? crossings[c] : 1;
                append(stretches, between(a, b, from), between(a, b, to));
                from = to;
            }
        }
        return joined(stretches);
    }

    private void append(List<Stretch> stretches, Point from, Point to) {
        if (from.equals(to)) {
            return;
        }
        Point mid = between(from, to, 0.5);
        boolean hand = byHand.factorAtPoint(mid.xM(), mid.yM()) > 1;
        stretches.add(new Stretch(List.of(from, to), hand));
    }

    /** Short stretches by machine between others are dug by hand; neighbours dug alike become one. */
    private static List<Stretch> joined(List<Stretch> stretches) {
        boolean anyByHand = stretches.stream().anyMatch(Stretch::byHand);
        List<Stretch> joined = new ArrayList<>();
        for (Stretch next : merged(stretches)) {
            double lengthM = new Polyline(next.points()).lengthM();
            boolean hand = next.byHand() || (anyByHand && lengthM < LEAST_BY_MACHINE_M);
            joined.add(new Stretch(next.points(), hand));
        }
        return merged(joined);
    }

    private static List<Stretch> merged(List<Stretch> stretches) {
        List<Stretch> merged = new ArrayList<>();
        for (Stretch next : stretches) {
            Stretch last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && last.byHand() == next.byHand()) {
                List<Point> points = new ArrayList<>(last.points());
                points.addAll(next.points().subList(1, next.points().size()));
                merged.set(merged.size() - 1, new Stretch(points, next.byHand()));
            } else {
                merged.add(next);
            }
        }
        return merged;
    }

    private static Point between(Point a, Point b, double share) {
        if (share == 0 || share == 1) {
            return share == 0 ? a : b;
        }
        return new Point(a.xM() + share * (b.xM() - a.xM()), a.yM() + share * (b.yM() - a.yM()));
    }

    private static SegmentId next(SortedSet<SegmentId> used) {
        int number = 1;
        while (used.contains(new SegmentId("trench-" + number))) {
            number++;
        }
        var id = new SegmentId("trench-" + number);
        used.add(id);
        return id;
    }
}
