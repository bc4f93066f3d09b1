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
    private final Materials materials;
    private final Cuts cuts;

    ConduitGoods(Site site, TakeoffParameters parameters, Depths depths, Materials materials, Cuts cuts) {
        power = site.yard().power();
        tables = site.catalog().electrical();
        this.parameters = parameters;
        this.depths = depths;
        this.materials = materials;
        this.cuts = cuts;
    }

    void count() {
        power.conduits().stream().filter(conduit -> !conduit.existing()).forEach(this::conduit);
    }

    private void conduit(Conduit conduit) {
        String words = conduit.size().orElse("of open size") + " " + conduit.series();
        List<Point> points = conduit.route().points();
        double startM = depths.depthM(conduit.id(), conduit.route().start());
        double endM = depths.depthM(conduit.id(), conduit.route().end());
        double lengthM = depths.slopeLengthM(conduit.route()) + startM + endM;
        tube(conduit, "conduit " + words, lengthM, words);
        boolean isCoil = isCoil(conduit);
        int rises = (startM > 0 ? 1 : 0) + (endM > 0 ? 1 : 0);
        double turnedDeg = rises * QUARTER_DEG;
        count(conduit, isCoil ? "" : "sweep 90 " + words, rises, "rises at its ends");
        count(conduit, isCoil ? "" : "conduit coupling " + words, rises, "to the sweeps at its ends");
        for (int i = 1; i + 1 < points.size(); i++) {
            double turnDeg = turnDeg(points.get(i - 1), points.get(i), points.get(i + 1));
            turnedDeg += turnDeg;
            bend(conduit, words, turnDeg, isCoil);
        }
        int boxes = Math.max(0, (int) Math.ceil(turnedDeg / MOST_BENDS_DEG - 1e-9) - 1);
        count(conduit, "pull box", boxes, "its bends are more than four quarters");
        ends(conduit, words, lengthM);
    }

    private void bend(Conduit conduit, String words, double turnDeg, boolean isCoil) {
        if (isCoil || turnDeg < parameters.straight().degrees()) {
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

    private void ends(Conduit conduit, String words, double lengthM) {
        boolean isUsed = power.cablesIn(conduit.id()).stream()
                .anyMatch(cable -> cable.phase().compareTo(conduit.phase()) <= 0);
        if (isUsed) {
            count(conduit, "conduit terminal adapter " + words, 2, "into the boxes at its ends");
            return;
        }
        count(conduit, "conduit cap " + words, 2, "nothing passes it yet");
        count(conduit, "tag", 2, "says what it waits for");
        double stringM = lengthM + 2 * parameters.slackAtBox().metres();
        materials.add(
                conduit.phase(),
                MaterialKind.MARKING,
                "pull string",
                "pull string",
                new MaterialUse(Subject.of(conduit.id()), "left in the empty conduit", new Length(stringM)));
        if (conduit.phase() == Phase.NOW && !power.cablesIn(conduit.id()).isEmpty()) {
            String key = "conduit terminal adapter " + words;
            materials.count(
                    Phase.LATER,
                    MaterialKind.CONDUIT_FITTING,
                    key,
                    key,
                    2,
                    Subject.of(conduit.id()),
                    "in place of its caps");
        }
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
