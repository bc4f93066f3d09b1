package leat.calc.zoning;

import java.util.List;
import leat.model.id.HeadId;
import leat.model.quantity.Flow;
import leat.model.site.Phase;

/**
 * Heads that shall run together, not yet named.
 *
 * @param heads sorted by id
 * @param flow  at their reference pressures
 * @param phase of all of them
 */
record HeadGroup(List<HeadId> heads, Flow flow, Phase phase) {}
