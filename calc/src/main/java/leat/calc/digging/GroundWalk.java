package leat.calc.digging;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.site.Ground;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Terrain;

/** Walks along a trench in short steps and notes what is under foot. */
final class GroundWalk {

    /** A step is about so long: an edge between lawn and paving is found to half of that. */
    private static final double STEP_M = 0.25;

    /** What lies over what: the first of these counts. */
    private static final List<SurfaceKind> TOP_FIRST =
            List.of(SurfaceKind.STRUCTURE, SurfaceKind.PAVING, SurfaceKind.WATER, SurfaceKind.BED, SurfaceKind.LAWN);

    private final SortedMap<SurfaceKind, Double> lengthM = new TreeMap<>();
    private final SortedMap<Earth, Double> earthM = new TreeMap<>();
    private double slopingM;

    private GroundWalk() {}

    static GroundWalk along(Polyline route, Terrain terrain) {
        var walk = new GroundWalk();
        List<Point> points = route.points();
        for (int i = 1; i < points.size(); i++) {
            walk.piece(points.get(i - 1), points.get(i), terrain);
        }
        return walk;
    }

    private void piece(Point a, Point b, Terrain terrain) {
        Ground ground = terrain.ground();
        double pieceM = a.distanceM(b);
        int steps = Math.max(1, (int) Math.ceil(pieceM / STEP_M));
        double stepM = pieceM / steps;
        double beforeM = ground.levelFinished(a).metres();
        for (int i = 1; i <= steps; i++) {
            double levelM =
                    ground.levelFinished(between(a, b, (double) i / steps)).metres();
            slopingM += Math.hypot(stepM, levelM - beforeM);
            beforeM = levelM;
            Point middle = between(a, b, (i - 0.5) / steps);
            Optional<Surface> top = terrain.surfaces().stream()
                    .filter(one -> one.region().contains(middle))
                    .min(Comparator.comparingInt(one -> TOP_FIRST.indexOf(one.kind()))); // of equals the first by id
            top.ifPresent(one -> lengthM.merge(one.kind(), stepM, Double::sum));
            Earth earth = Earth.of(top.flatMap(Surface::soil).orElse(""));
            earthM.merge(earth, stepM, Double::sum);
        }
    }

    private static Point between(Point a, Point b, double share) {
        return new Point(a.xM() + share * (b.xM() - a.xM()), a.yM() + share * (b.yM() - a.yM()));
    }

    /** Length along the finished grade. */
    double slopingM() {
        return slopingM;
    }

    /** Level lengths by what is on top; ground that no surface covers is left out. */
    SortedMap<SurfaceKind, Double> lengthM() {
        return lengthM;
    }

    /** What most of the way is dug in. */
    Earth earth() {
        return earthM.entrySet().stream()
                .max(Map.Entry.<Earth, Double>comparingByValue().thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey)
                .orElse(Earth.COMMON);
    }
}
