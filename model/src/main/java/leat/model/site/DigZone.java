package leat.model.site;

import leat.model.fault.Require;
import leat.model.geometry.Region;
import leat.model.id.DigZoneId;
import leat.model.quantity.Length;

/**
 * Ground with a rule of its own for digging.
 *
 * @param doubt how far outside the region the reason for it may still lie
 */
public record DigZone(DigZoneId id, Kind kind, Region region, Length doubt) {

    /** What may be done there. */
    public enum Kind {
        /** No trench at all. */
        NO_DIG,
        /** Trenches by hand only. */
        HAND_DIG
    }

    public DigZone {
        Require.present("digging rule", "id", id);
        Require.present("digging rule " + id, "kind", kind);
        Require.present("digging rule " + id, "region", region);
        Require.atLeast("digging rule " + id, "doubt", doubt, Length.ZERO);
    }
}
