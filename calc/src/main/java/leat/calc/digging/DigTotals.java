package leat.calc.digging;

import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Volume;

/**
 * All trenches of a phase, or of all phases, together.
 *
 * @param byHand   length on the ground of those dug by hand
 * @param leftOver loose earth that does not go back
 * @param loads    of the left-over earth
 */
public record DigTotals(
        Length onPlan,
        Length onGround,
        Length byHand,
        Volume bank,
        Volume loose,
        Volume bedding,
        Volume backfill,
        Volume leftOver,
        Count loads) {}
