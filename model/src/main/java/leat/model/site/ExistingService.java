package leat.model.site;

import leat.model.fault.Require;
import leat.model.geometry.Polyline;
import leat.model.id.ServiceId;
import leat.model.quantity.Length;

/**
 * A line that lies in the ground already.
 *
 * @param doubt how far to either side of the route it may really lie; 0 only when it was dug free
 */
public record ExistingService(ServiceId id, Kind kind, Polyline route, Length doubt) {

    /** What the line carries. */
    public enum Kind {
        GAS,
        POWER,
        DRINKING_WATER,
        SEWER,
        DRAIN,
        TELECOM,
        UNKNOWN
    }

    public ExistingService {
        Require.present("existing service", "id", id);
        Require.present("existing service " + id, "kind", kind);
        Require.present("existing service " + id, "route", route);
        Require.atLeast("existing service " + id, "doubt", doubt, Length.ZERO);
    }
}
