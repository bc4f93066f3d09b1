package leat.calc.takeoff;

import java.util.List;
import leat.model.catalog.ConduitSpec;
import leat.model.catalog.ElectricalTables;
import leat.model.catalog.MaterialKind;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.plan.Site;
import leat.model.power.Conduit;
import leat.model.power.PowerSystem;
import leat.model.quantity.Length;
import leat.model.site.Phase;

/**
 * New conduits: tube with its rise at both ends, bends and couplings, pull boxes where it bends too often, ends. A conduit
 * that nothing passes in its own phase waits for later: it is capped, has a string to pull with, and a tag at each end.
 */
final class ConduitGoods {

    /** Bends between two pull points together; NEC 352.26, published. */
    private static final double MOST_BENDS_DEG = 360;

    private static final double QUARTER_DEG = 90;

    private final PowerSystem power;
    private final ElectricalTables tables;
    private final TakeoffParameters parameters;
    private final Depths depths;
    private final ConduitEnds ends;
    private final Materials materials;
    private final Cuts cuts;

    ConduitGoods(Site site, TakeoffParameters parameters, Depths depths, Materials materials, Cuts cuts) {
        power = site.yard().power();
        tables = site.catalog().electrical();
        this.parameters = parameters;
        this.depths = depths;
        ends = new ConduitEnds(power);
        this.materials = materials;
        this.cuts = cuts;
    }

    void count() {
        power.conduits().stream().filter(conduit -> !conduit.existing()).forEach(this::conduit);
    }

    private void conduit(Conduit conduit) {
        String words = conduit.size().orElse("of open size") + " " + conduit.series();
        List<Point> points = conduit.route().points();
        double lengthM = depths.slopeLengthM(conduit.route())
                + riseM(conduit, points.get(0))
                + riseM(conduit, points.get(points.size() - 1));
        tube(conduit, "conduit " + words, lengthM, words);
        double turnedDeg = 0;
        for (int i = 1; i + 1 < points.size(); i++) {
            double turnDeg = turnDeg(points.get(i - 1), points.get(i), points.get(i + 1));
            turnedDeg += turnDeg;
            bend(conduit, words, turnDeg);
        }
        turnedDeg += end(conduit, points.get(0), points.get(1), words);
        turnedDeg += end(conduit, points.get(points.size() - 1), points.get(points.size() - 2), words);
        int boxes = Math.max(0, (int) Math.ceil(turnedDeg / MOST_BENDS_DEG - 1e-9) - 1);
        count(conduit, "pull box", boxes, "its bends are more than four quarters");
        if (isWaiting(conduit)) {
            string(conduit, lengthM);
        }
    }

    private double riseM(Conduit conduit, Point end) {
        return ends.at(conduit, end) == ConduitEnds.Kind.RISES ? depths.depthM(conduit.id(), end) : 0;
    }

    /** Counts what is at an end, and returns by how many degrees the conduit turns there. */
    private double end(Conduit conduit, Point end, Point before, String words) {
        return switch (ends.at(conduit, end)) {
            case JOINED -> joined(conduit, end, before, words);
            case BOXED -> boxed(conduit, end, words);
            case RISES -> risen(conduit, end, words);
        };
    }

    private double joined(Conduit conduit, Point end, Point before, String words) {
        double turnDeg = ends.joinedTo(conduit, end)
                .map(other -> turnDeg(before, end, next(other, end)))
                .orElse(0.0);
        if (ends.counts(conduit, end)) {
            count(conduit, "conduit coupling " + words, 1, "to the conduit that it goes on as");
            bend(conduit, words, turnDeg);
        }
        return turnDeg;
    }

    private double boxed(Conduit conduit, Point end, String words) {
        count(conduit, "conduit terminal adapter " + words, 1, "into a box in the ground");
        if (ends.counts(conduit, end)) {
            count(conduit, "pull box", 1, "conduits meet");
        }
        return 0;
    }

    private double risen(Conduit conduit, Point end, String words) {
        openEnd(conduit, words);
        if (riseM(conduit, end) <= 0) {
            return 0;
        }
        count(conduit, isCoil(conduit) ? "" : "sweep 90 " + words, 1, "rise at its end");
        count(conduit, isCoil(conduit) ? "" : "conduit coupling " + words, 1, "to the sweep at its end");
        return QUARTER_DEG;
    }

    /** Where the other conduit leads from the place that both share. */
    private static Point next(Conduit other, Point shared) {
        List<Point> points = other.route().points();
        boolean fromStart =
                other.route().start().distanceM(shared) <= other.route().end().distanceM(shared);
        return points.get(fromStart ? 1 : points.size() - 2);
    }

    private void bend(Conduit conduit, String words, double turnDeg) {
        if (isCoil(conduit) || turnDeg < parameters.straight().degrees()) {
            return;
        }
        String sweep = turnDeg < parameters.sharp().degrees() ? "sweep 45 " : "sweep 90 ";
        count(conduit, sweep + words, 1, "bend");
        count(conduit, "conduit coupling " + words, 1, "at a bend");
    }

    private void tube(Conduit conduit, String key, double lengthM, String words) {
        materials.add(
                conduit.phase(),
                MaterialKind.CONDUIT,
                key,
                key,
                new MaterialUse(Subject.of(conduit.id()), "with its rise at both ends", new Length(lengthM)));
        double stockM = stock(conduit).metres();
        List<CutPiece> pieces = Cuts.split(conduit.id(), lengthM, stockM);
        cuts.add(conduit.phase(), MaterialKind.CONDUIT, key, stockM, pieces);
        count(conduit, "conduit coupling " + words, pieces.size() - 1, "lengths of stock joined");
    }

    private boolean isWaiting(Conduit conduit) {
        return power.cablesIn(conduit.id()).stream()
                .noneMatch(cable -> cable.phase().compareTo(conduit.phase()) <= 0);
    }

    /** An adapter into a box, or for now a cap and a tag. */
    private void openEnd(Conduit conduit, String words) {
        String adapter = "conduit terminal adapter " + words;
        if (!isWaiting(conduit)) {
            count(conduit, adapter, 1, "into the box at its end");
            return;
        }
        count(conduit, "conduit cap " + words, 1, "nothing passes it yet");
        count(conduit, "tag", 1, "says what it waits for");
        if (conduit.phase() == Phase.NOW && !power.cablesIn(conduit.id()).isEmpty()) {
            materials.count(
                    Phase.LATER,
                    MaterialKind.CONDUIT_FITTING,
                    adapter,
                    adapter,
                    1,
                    Subject.of(conduit.id()),
                    "in place of its cap");
        }
    }

    /** With slack at both ends, also where it is knotted to the string of the next. */
    private void string(Conduit conduit, double lengthM) {
        double stringM = lengthM + 2 * parameters.slackAtBox().metres();
        materials.add(
                conduit.phase(),
                MaterialKind.MARKING,
                "pull string",
                "pull string",
                new MaterialUse(Subject.of(conduit.id()), "left in the empty conduit", new Length(stringM)));
    }

    private void count(Conduit conduit, String key, int count, String why) {
        MaterialKind kind = key.equals("tag") ? MaterialKind.MARKING : MaterialKind.CONDUIT_FITTING;
        if (!key.isEmpty()) {
            materials.count(conduit.phase(), kind, key, key, count, Subject.of(conduit.id()), why);
        }
    }

    /** Of the catalogue where it states one. */
    private Length stock(Conduit conduit) {
        Length usual =
                conduit.series().equals(Conduit.USUAL_METRIC) ? parameters.conduitCoil() : parameters.conduitStick();
        return tables.conduits(conduit.series()).stream()
                .filter(one -> conduit.size().filter(one.size()::equals).isPresent())
                .findFirst()
                .flatMap(ConduitSpec::stock)
                .orElse(usual);
    }

    /** What comes wound up bends by itself. */
    private boolean isCoil(Conduit conduit) {
        return stock(conduit).compareTo(parameters.coil()) >= 0;
    }

    private static double turnDeg(Point before, Point at, Point after) {
        double turnRad = Joint.betweenRad(
                before.bearingTo(at).inRadians(), at.bearingTo(after).inRadians());
        return Math.toDegrees(turnRad);
    }
}
