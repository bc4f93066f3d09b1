package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.List;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.site.Phase;
import leat.model.water.PipeRun;

/** A place where pipes begin, bend, meet or end, with all that leads away from it. Filled while the pipes are walked. */
final class Joint {

    /** A pipe that leads away from the joint. */
    record Arm(PipeRun run, double bearingRad) {

        boolean isNew() {
            return !run.existing();
        }
    }

    enum OutletKind {
        SOURCE,
        VALVE,
        MANIFOLD,
        BIB,
        HEAD
    }

    /** What is no pipe and takes or gives water here. */
    record Outlet(OutletKind kind, Id of, Phase phase) {

        /** A source is there already, whatever joins it. */
        boolean isNew() {
            return kind != OutletKind.SOURCE;
        }
    }

    private final Point at;
    private final List<Arm> arms = new ArrayList<>();
    private final List<Outlet> outlets = new ArrayList<>();

    Joint(Point at) {
        this.at = at;
    }

    Point at() {
        return at;
    }

    /** Upstream pipes first, as far as they are known. */
    List<Arm> arms() {
        return arms;
    }

    List<Outlet> outlets() {
        return outlets;
    }

    void lead(PipeRun run, Point towards) {
        arms.add(new Arm(run, at.bearingTo(towards).inRadians()));
    }

    void let(OutletKind kind, Id of, Phase phase) {
        outlets.add(new Outlet(kind, of, phase));
    }

    /** How many ways lead away. */
    int ways() {
        return arms.size() + outlets.size();
    }

    /** Angle between two bearings, from 0 to a half turn. */
    static double betweenRad(double oneRad, double otherRad) {
        double turnRad = Math.abs(oneRad - otherRad) % (2 * Math.PI);
        return Math.min(turnRad, 2 * Math.PI - turnRad);
    }

    /** By how much the way from one arm into the other turns: nothing when they are opposite. */
    static double turnRad(Arm one, Arm other) {
        return Math.PI - betweenRad(one.bearingRad(), other.bearingRad());
    }
}
