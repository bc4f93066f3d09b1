package leat.calc.trenching;

import java.util.ArrayList;
import java.util.List;
import leat.calc.internal.lines.Nearness;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.OpenGround;
import leat.calc.internal.routes.Patch;
import leat.calc.internal.routes.Tolls;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.site.DigZone;
import leat.model.site.LimitLine;
import leat.model.site.Obstacle;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Terrain;

/** What no trench may run through, thing by thing, each with its name and with what can be done about a crossing. */
final class Barriers {

    /** Less than this inside is rounding, or a pipe that ends at a wall. */
    private static final double TOUCH_M = 0.005;

    private final List<Barrier> barriers = new ArrayList<>();
    private final List<LimitLine> lines;

    /** @param rule that a trench through it breaks */
    record Barrier(String name, String rule, String cure, Patch ground) {}

    /**
     * A line that runs through a barrier.
     *
     * @param lengthM inside, all pieces together
     * @param at      in the middle of the longest piece
     */
    record Crossing(Barrier barrier, double lengthM, Point at) {}

    Barriers(Terrain terrain) {
        lines = terrain.limitLines();
        terrain.surfaces().stream()
                .filter(one -> DigSite.cannotBeDug(one.kind()))
                .forEach(this::add);
        terrain.obstacles().forEach(this::add);
        for (DigZone zone : terrain.digZones()) {
            if (zone.kind() == DigZone.Kind.NO_DIG) {
                Patch ground = OpenGround.grown(
                        DigSite.patch(zone.region()), zone.doubt().metres());
                add(
                        zone.id(),
                        "trench.no-dig",
                        "lead it around, or ask those who set the zone for leave to bore under it",
                        ground);
            }
        }
    }

    private void add(Surface surface) {
        String cure = surface.kind() == SurfaceKind.WATER
                ? "lead it around, have a sleeve bored under the water, or move what it leads to"
                : "lead it around, have a builder put a sleeve through or under the footing, or move what it leads to";
        add(surface.id(), "trench.obstacle", cure, DigSite.patch(surface.region()));
    }

    private void add(Obstacle obstacle) {
        if (obstacle instanceof Obstacle.Block block) {
            String cure = "lead it around, put a sleeve under it, or take it away";
            add(block.id(), "trench.obstacle", cure, DigSite.patch(block.region()));
        } else if (obstacle instanceof Obstacle.Tree tree) {
            String cure = "lead it around, or bore under the roots by leave of one who knows trees";
            add(
                    tree.id(),
                    "trench.obstacle",
                    cure,
                    DigSite.disc(tree.at(), tree.trunk().times(0.5)));
        }
    }

    private void add(Id id, String rule, String cure, Patch ground) {
        barriers.add(new Barrier(name(id), rule, cure, ground));
    }

    static String name(Id id) {
        return id.kind() + " " + id.name();
    }

    /** All that a line runs through, no-dig zones after surfaces and obstacles. */
    List<Crossing> crossings(List<Point> line) {
        List<Crossing> crossings = new ArrayList<>();
        for (Barrier barrier : barriers) {
            var tolls = new Tolls();
            tolls.add(barrier.ground(), 2);
            double sumM = 0;
            double longestM = 0;
            Point middle = line.get(0);
            for (int i = 1; i < line.size(); i++) {
                for (Point[] piece : pieces(tolls, line.get(i - 1), line.get(i))) {
                    double pieceM = piece[0].distanceM(piece[1]);
                    sumM += pieceM;
                    middle = pieceM > longestM ? between(piece[0], piece[1], 0.5) : middle;
                    longestM = Math.max(longestM, pieceM);
                }
            }
            if (sumM > TOUCH_M) {
                crossings.add(new Crossing(barrier, sumM, middle));
            }
        }
        return crossings;
    }

    /** The pieces of a straight line that lie inside. */
    private static List<Point[]> pieces(Tolls tolls, Point a, Point b) {
        List<Point[]> inside = new ArrayList<>();
        double[] cuts = tolls.crossings(a.xM(), a.yM(), b.xM(), b.yM());
        double from = 0;
        for (int i = 0; i <= cuts.length; i++) {
            double to = i < cuts.length ? cuts[i] : 1;
            Point middle = between(a, b, (from + to) / 2);
            if (to > from && tolls.factorAtPoint(middle.xM(), middle.yM()) > 1) {
                inside.add(new Point[] {between(a, b, from), between(a, b, to)});
            }
            from = to;
        }
        return inside;
    }

    private static Point between(Point a, Point b, double share) {
        return new Point(a.xM() + share * (b.xM() - a.xM()), a.yM() + share * (b.yM() - a.yM()));
    }

    private static boolean crosses(List<Point> line, Point a, Point b) {
        double[] x = {a.xM(), b.xM()};
        double[] y = {a.yM(), b.yM()};
        double[] lineX = line.stream().mapToDouble(Point::xM).toArray();
        double[] lineY = line.stream().mapToDouble(Point::yM).toArray();
        return Nearness.crossings(x, y, lineX, lineY) > 0;
    }

    /** What lies on the straight way between two places, as the end of a sentence; empty if nothing does. */
    String between(Point a, Point b) {
        List<String> names = new ArrayList<>();
        crossings(List.of(a, b)).forEach(one -> names.add(one.barrier().name()));
        lines.stream().filter(line -> crosses(line.line().points(), a, b)).forEach(line -> names.add(name(line.id())));
        return names.isEmpty()
                ? ""
                : "; straight on lies " + String.join(", ", names)
                        + ": draw a pipe through where a crossing is allowed, or move one of the two";
    }
}
