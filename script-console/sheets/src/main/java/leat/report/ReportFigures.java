package leat.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Finding;
import leat.model.id.Id;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;

/**
 * What calculations gave for the things of a plan, by the thing and the name of the figure. What is not there was not
 * computed, and is left open in the tables.
 *
 * @param byId figures of a thing by their names, such as {@link #PRESSURE}
 * @param findings of all calculations
 */
public record ReportFigures(SortedMap<Id, SortedMap<String, Quantity>> byId, List<Finding> findings) {

    /** Of a head or a bib while it runs. */
    public static final String PRESSURE = "pressure";

    /** Of a head, a pipe or a zone while it runs. */
    public static final String FLOW = "flow";

    /** Of a pipe at its greatest flow. */
    public static final String VELOCITY = "velocity";

    /** Of pressure along a pipe at its greatest flow. */
    public static final String LOSS = "loss";

    /** Precipitation rate of a zone. */
    public static final String RATE = "rate";

    /** Of a circuit or a cable with all that it feeds turned on. */
    public static final String CURRENT = "current";

    /** Of a circuit: the current that its breaker is held for, where what lasts for hours counts by more. */
    public static final String RECKONED = "reckoned current";

    /** Of the conductors of a circuit or a cable as they lie. */
    public static final String AMPACITY = "ampacity";

    /** Of voltage on the way to a load, or to the farthest load of a circuit, as a share of its voltage. */
    public static final String DROP = "voltage drop";

    /** Of voltage along a cable. */
    public static final String LOST = "lost voltage";

    /** Of a lamp behind a transformer: what it gets. */
    public static final String VOLTAGE = "voltage";

    /** Of a transformer: lamps and losses over its rating. */
    public static final String LOADED = "loaded";

    /** The greatest share of a conduit's inside that its conductors may take. */
    public static final String MOST_FILL = "fill at most";

    /** Share of a conduit's inside that conductors take. */
    public static final String FILL = "fill";

    public ReportFigures {
        SortedMap<Id, SortedMap<String, Quantity>> copy = new TreeMap<>();
        byId.forEach((id, figures) -> copy.put(id, Collections.unmodifiableSortedMap(new TreeMap<>(figures))));
        byId = Collections.unmodifiableSortedMap(copy);
        findings = List.copyOf(findings);
    }

    /** Nothing was computed, nothing found. */
    public static ReportFigures none() {
        return new ReportFigures(new TreeMap<>(), List.of());
    }

    SortedMap<String, Quantity> of(Id id) {
        return byId.getOrDefault(id, Collections.emptySortedMap());
    }

    /** As a field of a table; empty if nothing was computed. */
    Cell cell(Id id, String name, UnitSystem units) {
        Quantity value = of(id).get(name);
        return value == null ? Cell.UNKNOWN : Cell.figure(value, units);
    }

    /** Worst first, then by rule, then in the order in which they were found: so they are numbered everywhere. */
    List<Finding> sorted() {
        List<Finding> sorted = new ArrayList<>(findings);
        sorted.sort(Comparator.comparing(Finding::severity)
                .thenComparing(one -> one.rule().id()));
        return sorted;
    }
}
