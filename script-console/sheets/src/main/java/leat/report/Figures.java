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

/**
 * What calculations gave for the things of a plan, by the thing and the name of the figure; what is not there was not
 * computed and is left open in the tables.
 *
 * @param byId figures of a thing by name, such as {@code pressure}
 * @param findings all of them
 */
record Figures(SortedMap<Id, SortedMap<String, Quantity>> byId, List<Finding> findings) {

    static final String PRESSURE = "pressure";
    static final String FLOW = "flow";
    static final String VELOCITY = "velocity";
    static final String LOSS = "loss";
    static final String RATE = "rate";

    Figures {
        findings = List.copyOf(findings);
    }

    static Figures none() {
        return new Figures(new TreeMap<>(), List.of());
    }

    SortedMap<String, Quantity> of(Id id) {
        return byId.getOrDefault(id, Collections.emptySortedMap());
    }

    /** Worst first, then by rule, then in the order in which they were found: so they are numbered everywhere. */
    List<Finding> sorted() {
        List<Finding> sorted = new ArrayList<>(findings);
        sorted.sort(Comparator.comparing(Finding::severity)
                .thenComparing(one -> one.rule().id()));
        return sorted;
    }

    Figures with(Id id, String name, Quantity value) {
        byId.computeIfAbsent(id, one -> new TreeMap<>()).put(name, value);
        return this;
    }
}
