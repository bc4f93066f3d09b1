package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import leat.model.geometry.Point;
import leat.model.id.WireEndId;

/** The way of a wire from one thing to the next. */
record Wire(WireEndId from, WireEndId to, List<WireLeg> legs) {

    Wire {
        legs = List.copyOf(legs);
    }

    /** All points of its way, each once. */
    List<Point> points() {
        List<Point> points = new ArrayList<>();
        for (WireLeg leg : legs) {
            for (Point point : leg.points()) {
                if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                    points.add(point);
                }
            }
        }
        return points;
    }
}
