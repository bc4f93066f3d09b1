package leat.model.geometry;

import java.util.ArrayList;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Area;

/**
 * A piece of ground with straight sides, perhaps with holes. Given either way round; kept counter-clockwise, holes
 * clockwise, the first point first and not repeated at the end.
 *
 * @param outer 3 or more points; the line neither crosses nor touches itself
 * @param holes each inside the outer line and apart from the others
 */
public record Region(List<Point> outer, List<List<Point>> holes) {

    public Region {
        Require.present("region", "holes", holes);
        outer = Ring.checked("outer", outer, true);
        List<List<Point>> checked = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            List<Point> hole = Ring.checked("holes[" + i + "]", holes.get(i), false);
            requireInside("holes[" + i + "]", hole, outer);
            for (List<Point> earlier : checked) {
                requireApart("holes[" + i + "]", hole, earlier);
                if (Ring.contains(earlier, hole.get(0)) || Ring.contains(hole, earlier.get(0))) {
                    throw new InvalidValueException(
                            "region", "holes[" + i + "]", "inside or around another hole", "beside the other holes");
                }
            }
            checked.add(hole);
        }
        holes = List.copyOf(checked);
    }

    public static Region of(List<Point> outer) {
        return new Region(outer, List.of());
    }

    public static Region of(Point... outer) {
        return of(List.of(outer));
    }

    /** The same ground with one more hole in it. */
    public Region without(Region hole) {
        List<List<Point>> more = new ArrayList<>(holes);
        more.add(hole.outer);
        return new Region(outer, more);
    }

    public Area area() {
        double areaM2 = Ring.signedAreaM2(outer);
        for (List<Point> hole : holes) {
            areaM2 += Ring.signedAreaM2(hole); // holes run clockwise: negative
        }
        return new Area(areaM2);
    }

    /** Even-odd rule; points exactly on a side may fall either way. */
    public boolean contains(Point point) {
        if (!Ring.contains(outer, point)) {
            return false;
        }
        return holes.stream().noneMatch(hole -> Ring.contains(hole, point));
    }

    public Bounds bounds() {
        return Bounds.around(outer);
    }

    /** Outer line and holes, each open: the first point is not repeated. */
    public List<List<Point>> rings() {
        List<List<Point>> rings = new ArrayList<>();
        rings.add(outer);
        rings.addAll(holes);
        return List.copyOf(rings);
    }

    private static void requireInside(String field, List<Point> hole, List<Point> outer) {
        requireApart(field, hole, outer);
        if (!Ring.contains(outer, hole.get(0))) {
            throw new InvalidValueException("region", field, "outside the region", "inside its outer line");
        }
    }

    private static void requireApart(String field, List<Point> ring, List<Point> other) {
        for (int i = 0; i < ring.size(); i++) {
            for (int j = 0; j < other.size(); j++) {
                if (Ring.crossOrTouch(
                        ring.get(i),
                        ring.get((i + 1) % ring.size()),
                        other.get(j),
                        other.get((j + 1) % other.size()))) {
                    throw new InvalidValueException(
                            "region", field, "touching another line", "apart from the other lines");
                }
            }
        }
    }
}
