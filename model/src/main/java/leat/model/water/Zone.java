package leat.model.water;

import java.util.List;
import leat.model.fault.Require;
import leat.model.id.HeadId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.site.Phase;

/**
 * Heads that run together.
 *
 * @param heads sorted by id; may be empty while unfinished
 */
public record Zone(ZoneId id, ValveId valve, List<HeadId> heads, Phase phase) {

    public Zone {
        Require.present("zone", "id", id);
        Require.present("zone " + id, "valve", valve);
        Require.present("zone " + id, "phase", phase);
        heads = Require.unique("zone " + id + ", head", heads, head -> head);
    }

    public Zone withHeads(List<HeadId> newHeads) {
        return new Zone(id, valve, newHeads, phase);
    }
}
