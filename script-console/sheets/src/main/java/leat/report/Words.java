package leat.report;

import java.util.List;
import java.util.Locale;
import leat.model.finding.Subject;
import leat.model.id.Id;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import leat.model.site.Phase;

/** ReportFigures and subjects as a person reads them on paper. */
final class Words {

    private Words() {}

    /** Rounded, in the yard's units, with a raised two where the unit is an area. */
    static String show(Quantity quantity, UnitSystem units) {
        return Units.show(quantity, units).replace("ft2", "ft²").replace("m2", "m²");
    }

    /** A short length, such as a depth or a height: whole inches or millimetres. */
    static String small(Length length, UnitSystem units) {
        return smallNumber(length, units) + " " + smallUnit(units);
    }

    static String smallNumber(Length length, UnitSystem units) {
        return Long.toString(Math.round(units == UnitSystem.US ? length.inInches() : length.inMillimetres()));
    }

    static String smallUnit(UnitSystem units) {
        return units == UnitSystem.US ? "in" : "mm";
    }

    static String subject(Subject subject, UnitSystem units) {
        if (subject instanceof Subject.Place place) {
            return "at " + show(place.point().east(), units) + " east, "
                    + show(place.point().north(), units) + " north";
        }
        if (subject instanceof Subject.Thing thing) {
            return named(thing.id()) + (thing.field().isEmpty() ? "" : ", " + thing.field());
        }
        return subject.toString();
    }

    static Cell when(Phase phase) {
        return Cell.text(phase == Phase.NOW ? "now" : "later");
    }

    /** All of them, the kind said once for neighbours of the same kind: "trench T1, T2; pipe main". */
    static String list(List<? extends Id> ids) {
        StringBuilder text = new StringBuilder();
        String kind = "";
        for (Id id : ids) {
            boolean same = id.kind().equals(kind);
            text.append(text.isEmpty() ? "" : same ? ", " : "; ").append(same ? id.name() : named(id));
            kind = id.kind();
        }
        return text.toString();
    }

    /** Names the kind unless the name does so itself: "zone front", but "zone-3". */
    static String named(Id id) {
        String kind = id.kind();
        return id.name().toLowerCase(Locale.ROOT).startsWith(kind) ? id.name() : kind + " " + id.name();
    }
}
