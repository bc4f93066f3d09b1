package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.id.ConduitId;

/**
 * A part of the way of a wire that lies all alike.
 *
 * @param points  two or more, in the direction of the wire
 * @param indoors whether it runs inside a building, in no conduit of this plan
 * @param conduit that is there or was stated, through which it runs; empty where it runs through the ground
 */
record WireLeg(List<Point> points, boolean indoors, Optional<ConduitId> conduit) {

    WireLeg {
        points = List.copyOf(points);
    }

    boolean isInGround() {
        return !indoors && conduit.isEmpty();
    }

    double lengthM() {
        double sumM = 0;
        for (int i = 1; i < points.size(); i++) {
            sumM += points.get(i - 1).distanceM(points.get(i));
        }
        return sumM;
    }

    /** Whether another one may follow in the same leg. */
    boolean goesOnIn(WireLeg next) {
        return indoors == next.indoors && conduit.isEmpty() && next.conduit.isEmpty();
    }

    WireLeg joined(WireLeg next) {
        List<Point> all = new ArrayList<>(points);
        all.addAll(next.points.subList(1, next.points.size()));
        return new WireLeg(all, indoors, conduit);
    }
}
