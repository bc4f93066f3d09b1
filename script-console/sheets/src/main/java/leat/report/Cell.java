package leat.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import leat.model.id.Id;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import leat.model.site.Phase;

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

    static Cell name(Id id) {
        return text(id.name());
    }

    static Cell names(Stream<? extends Id> ids) {
        return text(ids.map(Id::name).collect(Collectors.joining(", ")));
    }

    static Cell when(Phase phase) {
        return text(Words.when(phase));
    }

    static Cell state(boolean existing) {
        return text(existing ? "existing" : "new");
    }

    static Cell count(int count) {
        return new Cell(Integer.toString(count), true);
    }

    /** The figure alone; the column's head has the unit. */
    static Cell figure(Quantity quantity, UnitSystem units) {
        return new Cell(Units.number(quantity, units), true);
    }

    /** The figure alone, in the small unit of length; the column's head has the unit. */
    static Cell small(Length length, UnitSystem units) {
        return new Cell(Words.smallNumber(length, units), true);
    }
}
