package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Current;

/**
 * The least grounding conductor behind a breaker.
 *
 * @param upTo      greatest breaker that it serves
 * @param copper    size in AWG
 * @param aluminium size in AWG
 */
public record GroundingStep(Current upTo, String copper, String aluminium, Citation citation) {

    public GroundingStep {
        Require.moreThan("grounding conductor", "upTo", upTo, Current.ZERO);
        Require.name("grounding conductor", "copper", copper);
        Require.name("grounding conductor", "aluminium", aluminium);
        Require.present("grounding conductor", "citation", citation);
    }
}
