package leat.calc.hydraulics;

import leat.model.catalog.Catalog;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;

/**
 * Loss factors K of the fittings that a route asks for: tees where pipes part, elbows where a route bends, a swing joint
 * under each head. A catalogue without such a fitting costs nothing for it.
 */
final class FittingLosses {

    /** A bend of less than this needs no fitting; half way between none and a 45 degree elbow. */
    private static final double STRAIGHT_RAD = Math.toRadians(22.5);

    private static final double SHARP_RAD = Math.toRadians(67.5);

    private final Catalog catalog;
    private final boolean counted;

    FittingLosses(Catalog catalog, boolean counted) {
        this.catalog = catalog;
        this.counted = counted;
    }

    double teeBranch() {
        return k("tee-branch");
    }

    double teeRun() {
        return k("tee-run");
    }

    double swingJoint() {
        return k("swing-joint");
    }

    /** K of all bends of a route that lie after one station and not after another. */
    double bends(Polyline route, double fromM, double toM) {
        double sum = 0;
        double stationM = 0;
        for (int i = 1; i + 1 < route.points().size(); i++) {
            Point before = route.points().get(i - 1);
            Point at = route.points().get(i);
            stationM += before.distanceM(at);
            if (stationM > fromM && stationM <= toM) {
                sum += bend(before, at, route.points().get(i + 1));
            }
        }
        return sum;
    }

    /** K where one route goes on at the end of another. */
    double joint(Polyline upstream, Polyline downstream) {
        Point before = upstream.points().get(upstream.points().size() - 2);
        return bend(before, downstream.start(), downstream.points().get(1));
    }

    private double bend(Point before, Point at, Point after) {
        double turn =
                Math.abs(before.bearingTo(at).inRadians() - at.bearingTo(after).inRadians());
        double turnRad = Math.min(turn, 2 * Math.PI - turn);
        if (turnRad < STRAIGHT_RAD) {
            return 0;
        }
        return turnRad < SHARP_RAD ? k("elbow45") : k("elbow90");
    }

    private double k(String key) {
        return counted && catalog.fittings().containsKey(key)
                ? catalog.fitting(key).k().value()
                : 0;
    }
}
