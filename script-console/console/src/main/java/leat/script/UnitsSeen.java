package leat.script;

import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;

/** In which units a script's figures are written: those of the yard seen last; US units before there is one. */
final class UnitsSeen {

    private volatile UnitSystem last = UnitSystem.US;

    UnitSystem last() {
        return last;
    }

    void see(Object value) {
        if (value instanceof Yard yard) {
            last = yard.units();
        }
    }
}
