package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.power.CodeFamily;
import leat.model.quantity.Area;

/**
 * A sheathed cable for laying in the ground.
 *
 * @param conductor size of its strands
 * @param strands   insulated conductors, without the grounding conductor
 * @param fill      area that counts in a conduit: of a circle around it
 */
public record CableSpec(
        String key,
        String title,
        CodeFamily family,
        CableUse use,
        String conductor,
        int strands,
        Area fill,
        Citation citation) {

    public CableSpec {
        Require.name("cable", "key", key);
        Require.present("cable " + key, "title", title);
        Require.present("cable " + key, "family", family);
        Require.present("cable " + key, "use", use);
        Require.name("cable " + key, "conductor", conductor);
        Require.atLeast("cable " + key, "strands", strands, 1);
        Require.moreThan("cable " + key, "fill", fill, Area.ZERO);
        Require.present("cable " + key, "citation", citation);
    }
}
