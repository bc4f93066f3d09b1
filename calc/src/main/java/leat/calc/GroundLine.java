package leat.calc;

import leat.model.geometry.Polyline;
import leat.model.id.Id;
import leat.model.quantity.Length;

/**
 * A line that lies in the ground already.
 *
 * @param doubt how far to either side of its route it may really lie
 */
public record GroundLine(Id id, Polyline route, Length doubt) {}
