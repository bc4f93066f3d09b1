package leat.model.catalog;

import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Angle;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.water.DripLine;
import leat.model.water.Head;

/**
 * A head as it can be bought: one nozzle on one body. Users add their maker's figures as families of their own.
 *
 * @param leastArc least sweep it can be set to; more than 0
 * @param mostArc  at most 360 degrees
 * @param popUp    how far it rises, 0 for none
 */
public record HeadFamily(
        String key,
        HeadShape shape,
        Jet jet,
        PressureRange pressure,
        Angle leastArc,
        Angle mostArc,
        Length popUp,
        Citation citation) {

    public HeadFamily {
        Require.name("head family", "key", key);
        String thing = "head family " + key;
        Require.present(thing, "shape", shape);
        Require.present(thing, "jet", jet);
        Require.present(thing, "pressure", pressure);
        Require.moreThan(thing, "leastArc", leastArc, Angle.ZERO);
        Require.atLeast(thing, "mostArc", mostArc, leastArc);
        Require.atLeast(thing, "popUp", popUp, Length.ZERO);
        Require.present(thing, "citation", citation);
        if (mostArc.degrees() > 360) {
            throw new InvalidValueException(thing, "mostArc", mostArc.toString(), "at most 360 deg");
        }
    }

    /** Flow of a head of this family as set, at the family's reference pressure. */
    public Flow referenceFlow(Head head) {
        double share =
                head.sector().map(one -> one.arc().sweep().degrees() / 360).orElse(1.0);
        double radiusShare = head.sector()
                .map(one -> one.radius().metres() / jet.radius().metres())
                .orElse(1.0);
        return switch (jet.rule()) {
            case FIXED -> jet.flow();
            case BY_ARC -> jet.flow().times(share);
            case BY_AREA -> jet.flow().times(share * radiusShare * radiusShare);
            case PER_LENGTH ->
                jet.flow().times(head instanceof DripLine line ? line.path().lengthM() : 1);
        };
    }

    /** Flow at another pressure: with the pressure to the power of the jet; none without pressure. */
    public Flow flow(Head head, Pressure working) {
        if (working.pascals() <= 0) {
            return Flow.ZERO;
        }
        double share = working.pascals() / pressure.reference().pascals();
        return referenceFlow(head).times(Math.pow(share, jet.flowExponent()));
    }

    /**
     * Radius that a head set to {@code set} reaches: less below the reference pressure, the set one above it, since
     * the builder sets it in place.
     */
    public Length radius(Length set, Pressure working) {
        double share = Math.min(
                1, Math.max(0, working.pascals()) / pressure.reference().pascals());
        return set.times(Math.pow(share, jet.radiusExponent()));
    }
}
