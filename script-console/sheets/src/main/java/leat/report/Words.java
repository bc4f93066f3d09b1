package leat.report;

import leat.model.finding.Subject;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/** Figures and subjects as a person reads them on paper. */
final class Words {

    private Words() {}

    /** Rounded, in the yard's units, with a raised two where the unit is an area. */
    static String show(Quantity quantity, UnitSystem units) {
        return Units.show(quantity, units).replace("ft2", "ft²").replace("m2", "m²");
    }

    static String subject(Subject subject, UnitSystem units) {
        if (subject instanceof Subject.Place place) {
            return "at " + show(place.point().east(), units) + " east, "
                    + show(place.point().north(), units) + " north";
        }
        return subject.toString();
    }
}
