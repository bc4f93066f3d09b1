package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import leat.model.geometry.Point;
import leat.model.power.Conduit;

/** Bends of a conduit between the places where wires are pulled in and out. */
final class Pulls {

    /** A rigid conduit rises out of its trench by a bend at both ends; common practice, no source. */
    private static final double RISES_DEGREES = 180;

    /** Duct is laid in curves so wide that its rises are no bends. */
    private static boolean isFlexible(String series) {
        return series.equals(Conduit.USUAL_METRIC);
    }

    private Pulls() {}

    /** All bends of one pull together, the rises at its ends included. */
    static double bendsDegrees(List<Point> route, String series) {
        double sum = isFlexible(series) ? 0 : RISES_DEGREES;
        for (int i = 1; i < route.size() - 1; i++) {
            sum += bendDegrees(route, i);
        }
        return sum;
    }

    private static double bendDegrees(List<Point> route, int corner) {
        double in = route.get(corner - 1).bearingTo(route.get(corner)).degrees();
        double out = route.get(corner).bearingTo(route.get(corner + 1)).degrees();
        double turn = Math.abs(out - in);
        return Math.min(turn, 360 - turn);
    }

    /** The route in as few pulls as keep the limit, each as long as can be; a box stands where one ends. */
    static List<List<Point>> split(List<Point> route, String series, double mostDegrees) {
        List<List<Point>> pulls = new ArrayList<>();
        int start = 0;
        for (int end = 2; end < route.size(); end++) {
            if (end - start > 1 && bendsDegrees(route.subList(start, end + 1), series) > mostDegrees) {
                pulls.add(List.copyOf(route.subList(start, end)));
                start = end - 1;
            }
        }
        pulls.add(List.copyOf(route.subList(start, route.size())));
        return pulls;
    }
}
