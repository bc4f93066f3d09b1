package leat.report;

import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/**
 * One field of a table.
 *
 * @param text as printed
 * @param number whether it is a figure, which stands at the right and is never taken for text
 */
record Cell(String text, boolean number) {

    /** What stands where nothing is known. */
    static final Cell UNKNOWN = new Cell("", false);

    static Cell text(String text) {
        return new Cell(text, false);
    }

    static Cell count(int count) {
        return new Cell(Integer.toString(count), true);
    }

    /** The figure alone; the column's head has the unit. */
    static Cell figure(Quantity quantity, UnitSystem units) {
        return new Cell(Units.number(quantity, units), true);
    }
}
