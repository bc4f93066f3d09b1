package leat.calc;

import java.util.List;
import leat.model.geometry.Point;
import leat.model.id.Id;

/**
 * A line that lies in the ground already.
 *
 * @param doubtM how far to either side of its route it may really lie
 */
public record GroundLine(Id id, List<Point> points, double doubtM) {

    public double[] eastM() {
        return points.stream().mapToDouble(Point::xM).toArray();
    }

    public double[] northM() {
        return points.stream().mapToDouble(Point::yM).toArray();
    }
}
