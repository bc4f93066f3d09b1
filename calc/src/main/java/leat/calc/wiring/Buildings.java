package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.Tolls;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Terrain;

/** The structures of a yard, through whose inside wires run straight; and its paving, which they leave the short way. */
final class Buildings {

    /** So near to a wall a thing hangs on it: its wires may come from inside. */
    private static final double ON_WALL_M = 0.05;

    /** A line inside a building is looked at in so many places. */
    private static final int LOOKS = 16;

    /** A trench beside paving keeps this much off it. */
    private static final double BESIDE_M = 0.1;

    private final List<Region> regions;
    private final List<Region> paving;
    private final Tolls inside = new Tolls();

    Buildings(Terrain terrain) {
        regions = regions(terrain, SurfaceKind.STRUCTURE);
        paving = regions(terrain, SurfaceKind.PAVING);
        regions.forEach(region -> inside.add(DigSite.patch(region), 2));
    }

    private static List<Region> regions(Terrain terrain, SurfaceKind kind) {
        return terrain.surfaces().stream()
                .filter(surface -> surface.kind() == kind)
                .map(Surface::region)
                .toList();
    }

    /** For a thing in paving: the places just outside each of its edges, to which the way through the paving is shortest. */
    List<Point> besidePaving(Point at) {
        List<Point> beside = new ArrayList<>();
        for (Region region : paving) {
            List<Point> ring = region.outer();
            for (int i = 0; region.contains(at) && i < ring.size(); i++) {
                Point edge = foot(ring, i, at);
                double awayM = at.distanceM(edge);
                if (awayM > ON_WALL_M) {
                    beside.add(between(at, edge, (awayM + BESIDE_M) / awayM));
                }
            }
        }
        return beside;
    }

    /** A straight piece of a wire that is all indoors or all outdoors. */
    record Stretch(Point from, Point to, boolean indoors) {}

    /** The building that a place is in, or on whose wall it is, or from which it is no further away than that. */
    Optional<Region> at(Point point, double awayM) {
        Optional<Region> holds =
                regions.stream().filter(region -> region.contains(point)).findFirst();
        return holds.or(() -> regions.stream()
                .filter(region -> wallAwayM(region, point) <= Math.max(awayM, ON_WALL_M))
                .findFirst());
    }

    private static double wallAwayM(Region region, Point point) {
        double leastM = Double.POSITIVE_INFINITY;
        List<Point> ring = region.outer();
        for (int i = 0; i < ring.size(); i++) {
            leastM = Math.min(leastM, foot(ring, i, point).distanceM(point));
        }
        return leastM;
    }

    /** The place on each wall next to a place inside that a straight wire reaches without leaving the building. */
    List<Point> walls(Region building, Point from) {
        return wallsFacing(building, from, from);
    }

    /** The place on each wall next to a thing elsewhere that a straight wire from inside reaches without leaving the building. */
    List<Point> wallsFacing(Region building, Point from, Point thing) {
        List<Point> walls = new ArrayList<>();
        List<Point> ring = building.outer();
        for (int i = 0; i < ring.size(); i++) {
            Point wall = foot(ring, i, thing);
            if (isInside(building, from, wall)) {
                walls.add(wall);
            }
        }
        return walls;
    }

    /** Whether a straight line stays in the building or on its walls. */
    boolean isInside(Region building, Point from, Point to) {
        for (int i = 1; i < LOOKS; i++) {
            Point point = between(from, to, (double) i / LOOKS);
            if (!building.contains(point) && wallAwayM(building, point) > ON_WALL_M) {
                return false;
            }
        }
        return true;
    }

    /** A straight piece cut where it passes through walls. */
    List<Stretch> split(Point from, Point to) {
        List<Stretch> stretches = new ArrayList<>();
        double[] crossings = inside.crossings(from.xM(), from.yM(), to.xM(), to.yM());
        Point here = from;
        for (int i = 0; i <= crossings.length; i++) {
            Point next = i < crossings.length ? between(from, to, crossings[i]) : to;
            if (!next.equals(here)) {
                Point middle = between(here, next, 0.5);
                boolean indoors = inside.factorAtPoint(middle.xM(), middle.yM()) > 1;
                append(stretches, new Stretch(here, next, indoors));
            }
            here = next;
        }
        return stretches;
    }

    private static void append(List<Stretch> stretches, Stretch next) {
        Stretch last = stretches.isEmpty() ? next : stretches.get(stretches.size() - 1);
        if (!stretches.isEmpty() && last.indoors() == next.indoors()) {
            stretches.set(stretches.size() - 1, new Stretch(last.from(), next.to(), next.indoors()));
        } else {
            stretches.add(next);
        }
    }

    private static Point foot(List<Point> ring, int edge, Point point) {
        Point a = ring.get(edge);
        Point b = ring.get((edge + 1) % ring.size());
        double dx = b.xM() - a.xM();
        double dy = b.yM() - a.yM();
        double along = ((point.xM() - a.xM()) * dx + (point.yM() - a.yM()) * dy) / (dx * dx + dy * dy);
        return between(a, b, Math.max(0, Math.min(1, along)));
    }

    private static Point between(Point a, Point b, double share) {
        return new Point(a.xM() + share * (b.xM() - a.xM()), a.yM() + share * (b.yM() - a.yM()));
    }
}
