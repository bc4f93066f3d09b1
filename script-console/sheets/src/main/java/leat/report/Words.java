package leat.report;

import java.util.ArrayList;
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

    private static final int MOST_OF_A_KIND = 8;

    private Words() {}

    /** Rounded, in the yard's units, with a raised figure where the unit is an area or a volume. */
    static String show(Quantity quantity, UnitSystem units) {
        return raised(Units.show(quantity, units));
    }

    /** With raised figures where a unit is an area or a volume. */
    static String raised(String text) {
        return text.replaceAll("\\b(ft|m|yd|in)2\\b", "$1²").replaceAll("\\b(ft|m|yd|in)3\\b", "$1³");
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

    static String when(Phase phase) {
        return phase == Phase.NOW ? "now" : "later";
    }

    /** Numbers that follow each other as a run: "4, 7–12". Other names stay as they are. */
    static String runs(List<String> names) {
        List<String> runs = new ArrayList<>();
        int from = 0;
        while (from < names.size()) {
            int to = from + 1;
            while (to < names.size() && follows(names.get(to - 1), names.get(to))) {
                to++;
            }
            if (to - from > 2) {
                runs.add(names.get(from) + "–" + names.get(to - 1));
            } else {
                runs.addAll(names.subList(from, to));
            }
            from = to;
        }
        return String.join(", ", runs);
    }

    private static boolean follows(String before, String after) {
        String number = "[1-9][0-9]{0,8}";
        return before.matches(number)
                && after.matches(number)
                && Integer.parseInt(after) == Integer.parseInt(before) + 1;
    }

    /**
     * The kind said once for neighbours of the same kind: "trench T1, T2; pipe main". Of a crowd of one kind only the
     * first are named.
     */
    static String list(List<? extends Id> ids) {
        StringBuilder text = new StringBuilder();
        int from = 0;
        while (from < ids.size()) {
            int to = from;
            while (to < ids.size() && ids.get(to).kind().equals(ids.get(from).kind())) {
                to++;
            }
            text.append(text.isEmpty() ? "" : "; ").append(named(ids.get(from)));
            int shown = to - from > MOST_OF_A_KIND ? from + MOST_OF_A_KIND - 1 : to;
            ids.subList(from + 1, shown).forEach(id -> text.append(", ").append(id.name()));
            text.append(shown < to ? " and " + (to - shown) + " more" : "");
            from = to;
        }
        return text.toString();
    }

    /** Names the kind unless the name does so itself: "zone front", but "zone-3". */
    static String named(Id id) {
        String kind = id.kind();
        String word = kind.split(" ", 2)[0];
        return id.name().toLowerCase(Locale.ROOT).startsWith(word) ? id.name() : kind + " " + id.name();
    }
}
