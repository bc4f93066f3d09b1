package leat.calc.takeoff;

import leat.model.fault.Require;
import leat.model.quantity.Count;
import leat.model.quantity.Length;

/**
 * Sticks, coils or rolls of one length.
 *
 * @param each  length of one, more than 0
 * @param count how many the cut list takes
 */
public record StockPieces(Length each, Count count) {

    public StockPieces {
        Require.moreThan("stock", "each", each, Length.ZERO);
        Require.atLeast("stock", "count", count, Count.ZERO);
    }
}
