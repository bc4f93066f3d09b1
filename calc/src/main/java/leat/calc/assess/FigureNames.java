package leat.calc.assess;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.id.Id;

/**
 * Which figures can be asked of each kind of thing, and of the yard by topic. A word in capitals stands for what follows:
 * {@code minutes MONTH} for {@code minutes July} or {@code minutes peak}; in brackets it may be left out.
 */
final class FigureNames {

    static final String STAKE = "stake";
    static final String MATERIALS = "materials";
    static final String BUDGET = "budget";
    static final String DIGGING = "digging";
    static final String WATERING = "watering";
    static final List<String> TOPICS = List.of(MATERIALS, BUDGET, DIGGING, WATERING);

    /** What stands for other words at the end of a name. */
    private static final Pattern CAPITALS = Pattern.compile("\\[?[A-Z]+\\]?$");

    private static final List<String> OF_LOADS = List.of("current", "drop", "voltage");

    private static final Map<String, List<String>> ALL = all();

    private FigureNames() {}

    private static Map<String, List<String>> all() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        all.put("head", List.of("pressure", "flow"));
        all.put("hose bib", List.of("pressure", "flow"));
        all.put(
                "zone",
                List.of(
                        "flow",
                        "use MONTH",
                        "held MONTH",
                        "rain MONTH",
                        "net MONTH",
                        "gross MONTH",
                        "interval MONTH",
                        "days MONTH",
                        "cycles MONTH",
                        "cycle MONTH",
                        "soak MONTH",
                        "minutes MONTH",
                        "volume MONTH"));
        all.put("pipe", List.of("flow", "velocity", "loss"));
        all.put("surface", List.of("reached", "rate", "low quarter", "christiansen"));
        all.put(
                "trench segment",
                List.of("length", "width", "depth", "cover THING", "volume", "loose", "bedding", "backfill"));
        all.put("outlet", OF_LOADS);
        all.put("luminaire", OF_LOADS);
        all.put("structure feed", OF_LOADS);
        all.put("controller", OF_LOADS);
        all.put("transformer", List.of("current", "drop", "voltage", "load"));
        all.put("circuit", List.of("load", "current", "reckoned", "drop", "ampacity"));
        all.put("cable", List.of("current", "drop", "ampacity", "conductor"));
        all.put("conduit", List.of("fill", "most fill", "bends"));
        all.put(STAKE, List.of("first tape", "second tape", "check tape", "crossing", "within"));
        all.put(MATERIALS, List.of("MATERIAL"));
        all.put(
                BUDGET,
                List.of(
                        "MATERIAL",
                        "goods [PHASE]",
                        "labour [PHASE]",
                        "tax [PHASE]",
                        "contingency [PHASE]",
                        "total [PHASE]"));
        all.put(
                DIGGING,
                List.of(
                        "length [PHASE]",
                        "by hand [PHASE]",
                        "volume [PHASE]",
                        "loose [PHASE]",
                        "bedding [PHASE]",
                        "backfill [PHASE]",
                        "left over [PHASE]",
                        "loads [PHASE]",
                        "saved length",
                        "saved volume"));
        all.put(WATERING, List.of("minutes MONTH", "volume MONTH", "volume year", "volume peak", "hours peak"));
        return Collections.unmodifiableMap(all);
    }

    /** Kinds of things, then topics, each with the names of its figures. */
    static Map<String, List<String>> everyKind() {
        return ALL;
    }

    /** Empty for a kind of thing that has no figures. */
    static List<String> of(String kind) {
        return ALL.getOrDefault(kind, List.of());
    }

    static boolean has(String kind, String figure) {
        return of(kind).stream().anyMatch(name -> isMeant(name, figure));
    }

    /** Whether a figure as it was asked for is the one of that name. */
    private static boolean isMeant(String name, String figure) {
        String word = CAPITALS.matcher(name).replaceAll("").strip();
        if (word.equals(name)) {
            return figure.equals(name);
        }
        boolean alone = name.endsWith("]") && figure.equals(word);
        return alone || word.isEmpty() || figure.startsWith(word + " ");
    }

    static InvalidValueException refused(Id id, String figure) {
        return refused(id.title(), figure, of(id.kind()));
    }

    static InvalidValueException refused(String thing, String figure, List<String> names) {
        String allowed = names.isEmpty()
                ? "asked of a "
                        + ALL.keySet().stream()
                                .filter(kind -> !TOPICS.contains(kind))
                                .collect(Collectors.joining(", a "))
                : "one of " + String.join(", ", names) + hint(figure, names);
        return new InvalidValueException(thing, "figure", "'" + figure + "'", allowed);
    }

    /** The nearest name, with what was asked for in place of its word in capitals. */
    private static String hint(String figure, List<String> names) {
        String last = figure.substring(figure.lastIndexOf(' ') + 1);
        return Nearest.hint(
                figure,
                names.stream()
                        .map(name -> CAPITALS.matcher(name).replaceAll(Matcher.quoteReplacement(last)))
                        .toList());
    }
}
