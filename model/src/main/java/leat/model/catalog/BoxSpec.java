package leat.model.catalog;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Volume;

/**
 * A box for splices and devices, or one in the ground for valves.
 *
 * @param volume room for conductors; empty where nobody counts it
 */
public record BoxSpec(String key, Kind kind, String title, Optional<Volume> volume, Citation citation) {

    public BoxSpec {
        Require.name("box", "key", key);
        Require.present("box " + key, "kind", kind);
        Require.present("box " + key, "title", title);
        Require.present("box " + key, "volume", volume);
        volume.ifPresent(one -> Require.moreThan("box " + key, "volume", one, Volume.ZERO));
        Require.present("box " + key, "citation", citation);
    }

    /** What it is for. */
    public enum Kind {
        WIRING,
        VALVE
    }
}
