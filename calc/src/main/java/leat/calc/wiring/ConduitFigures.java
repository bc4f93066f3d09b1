package leat.calc.wiring;

import java.util.Optional;
import leat.model.id.ConduitId;
import leat.model.quantity.Angle;
import leat.model.quantity.Count;
import leat.model.quantity.Ratio;

/**
 * How full a conduit is.
 *
 * @param wires that lie in it, what was there before included; a sheathed cable counts once
 * @param fill  share of its area; empty while its size or that of a cable in it is not known
 * @param most  the greatest share that so many wires may fill
 * @param bends of one pull together, rises at both ends included
 */
public record ConduitFigures(ConduitId id, Count wires, Optional<Ratio> fill, Ratio most, Angle bends) {}
