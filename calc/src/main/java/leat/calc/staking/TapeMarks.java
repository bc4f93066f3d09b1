package leat.calc.staking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.geometry.Bounds;
import leat.model.geometry.Point;
import leat.model.id.NaturalOrder;
import leat.model.site.Phase;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Terrain;

/** The corners that stand already and can be found again: of structures, and of the lot. */
final class TapeMarks {

    /** A corner turns by more than this; the sides of what is drawn round turn by less. */
    private static final double LEAST_TURN_RAD = Math.toRadians(20);

    private static final String[] EIGHTHS = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};

    private TapeMarks() {}

    static List<TapeMark> of(Terrain terrain) {
        SortedMap<String, TapeMark> marks = new TreeMap<>(NaturalOrder::compare);
        terrain.survey().ifPresent(survey -> {
            List<Point> corners = survey.corners();
            for (int i = 0; i < corners.size(); i++) {
                add(marks, "lot corner " + (i + 1), corners.get(i));
            }
        });
        terrain.surfaces().stream()
                .filter(surface -> surface.kind() == SurfaceKind.STRUCTURE && surface.phase() == Phase.NOW)
                .forEach(structure -> addCorners(marks, structure));
        return List.copyOf(marks.values());
    }

    private static void addCorners(SortedMap<String, TapeMark> marks, Surface structure) {
        List<Point> ring = structure.region().outer();
        Bounds bounds = structure.region().bounds();
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point before = ring.get((i + ring.size() - 1) % ring.size());
            Point after = ring.get((i + 1) % ring.size());
            if (turnRad(before, ring.get(i), after) > LEAST_TURN_RAD) {
                corners.add(ring.get(i));
            }
        }
        corners.sort(Comparator.comparingDouble(Point::xM).thenComparingDouble(Point::yM));
        corners.forEach(
                corner -> add(marks, structure.id().name() + ", " + eighth(bounds, corner) + " corner", corner));
    }

    /** As seen from the middle of a square: the north-eastern corner of a long house is called that as well. */
    private static String eighth(Bounds bounds, Point corner) {
        double east = (2 * corner.xM() - bounds.leastXM() - bounds.mostXM()) / (bounds.mostXM() - bounds.leastXM());
        double north = (2 * corner.yM() - bounds.leastYM() - bounds.mostYM()) / (bounds.mostYM() - bounds.leastYM());
        long eighth = Math.round(Math.atan2(east, north) / (Math.PI / 4));
        return EIGHTHS[(int) Math.floorMod(eighth, 8L)];
    }

    /** Two corners towards the same eighth of the compass are told apart by a number, from west to east. */
    private static void add(SortedMap<String, TapeMark> marks, String name, Point at) {
        String free = name;
        for (int number = 2; marks.containsKey(free); number++) {
            free = name + " " + number;
        }
        marks.put(free, new TapeMark(free, at));
    }

    private static double turnRad(Point before, Point at, Point after) {
        double inX = at.xM() - before.xM();
        double inY = at.yM() - before.yM();
        double outX = after.xM() - at.xM();
        double outY = after.yM() - at.yM();
        return Math.abs(Math.atan2(inX * outY - inY * outX, inX * outX + inY * outY));
    }
}
