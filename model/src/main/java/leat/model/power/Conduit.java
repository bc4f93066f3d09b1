package leat.model.power;

import java.util.List;
import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Polyline;
import leat.model.id.ConduitId;
import leat.model.site.Phase;

/**
 * A conduit for conductors, with power or with control but never with both. Which cables pass through it they say
 * themselves; one that none passes is spare.
 *
 * @param series   of the catalogue of conduits
 * @param size     trade size; empty while it is still to be chosen
 * @param existing lies there already
 * @param occupied wires that lie in it already and stay
 */
public record Conduit(
        ConduitId id,
        Polyline route,
        String series,
        Optional<String> size,
        boolean existing,
        List<WireGroup> occupied,
        Phase phase) {

    /** The series that a new conduit has in a yard planned by NFPA 70 unless it is stated: rigid plastic. */
    public static final String USUAL_US = "PVC-40";

    /** The series that a new conduit has in a yard planned by IEC 60364 unless it is stated: corrugated duct. */
    public static final String USUAL_METRIC = "duct";

    public Conduit {
        Require.present("conduit", "id", id);
        String thing = "conduit " + id;
        Require.present(thing, "route", route);
        Require.name(thing, "series", series);
        Require.present(thing, "size", size);
        size.ifPresent(one -> Require.name(thing, "size", one));
        occupied = Require.unique("wires in " + thing, occupied, WireGroup::size);
        Require.present(thing, "phase", phase);
    }

    public Conduit withSize(Optional<String> newSize) {
        return new Conduit(id, route, series, newSize, existing, occupied, phase);
    }
}
