package leat.script;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leat.calc.assess.Assessment;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Severity;
import leat.model.plan.Part;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/**
 * Values as the console shows them: a thing by its fields, a list of things as a table, a yard by what stands in it.
 * {@link PlainText} is for lines within other text.
 */
final class Display {

    private final UnitSystem units;
    private final RecordText records;

    Display(UnitSystem units) {
        this.units = units;
        this.records = new RecordText(units);
    }

    /** In one line, to follow a name. */
    String brief(Object host) {
        if (host instanceof Collection<?> || host instanceof Map<?, ?>) {
            return records.inline(host);
        }
        if (host instanceof Assessment assessment) {
            return counts(assessment);
        }
        return RecordText.isPlainRecord(host) && !(host instanceof Yard)
                ? records.inline(host)
                : firstLine(PlainText.text(host, units));
    }

    private static String firstLine(String text) {
        return text.lines().findFirst().orElse("");
    }

    /** In as many lines as it takes. */
    String show(Object host) {
        if (host instanceof Yard yard) {
            return yard(yard);
        }
        if (host instanceof Assessment assessment) {
            return assessment(assessment);
        }
        if (host instanceof Ledger ledger) {
            return ledger(ledger);
        }
        if (host instanceof Collection<?> collection) {
            return list(collection);
        }
        if (host instanceof Map<?, ?> map) {
            return map(map);
        }
        if (host instanceof Part) {
            return PlainText.text(host, units) + "; give it to yard.with(…) and it becomes part of the yard";
        }
        return RecordText.isPlainRecord(host) && !(host instanceof Finding)
                ? records.block(host)
                : PlainText.text(host, units);
    }

    /** The kinds of things that the yard has, with their names; by its records, so that a new kind shows by itself. */
    private String yard(Yard yard) {
        List<List<String>> lines = new ArrayList<>();
        for (Object part : RecordText.components(yard).values()) {
            if (RecordText.isPlainRecord(part)) {
                RecordText.components(part).forEach((name, value) -> {
                    if (value instanceof Collection<?> things && !things.isEmpty()) {
                        lines.add(List.of(Wording.words(name), records.inline(value)));
                    }
                });
            }
        }
        String first = PlainText.text(yard, units);
        return lines.isEmpty() ? first : first + "\n" + RecordText.indented(TextTable.pairs(lines));
    }

    private String assessment(Assessment assessment) {
        String first = PlainText.text(assessment.yard(), units) + "\n" + counts(assessment);
        return assessment.findings().isEmpty() ? first : first + "\n" + findings(assessment.findings());
    }

    private static String counts(Assessment assessment) {
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            int count = (int) assessment.findings().stream()
                    .filter(finding -> finding.severity() == severity)
                    .count();
            if (count > 0) {
                counts.add(PlainText.counted(count, severity.label()));
            }
        }
        return counts.isEmpty() ? "nothing found against the plan" : String.join(", ", counts);
    }

    private String list(Collection<?> collection) {
        if (collection.isEmpty()) {
            return "none";
        }
        if (collection.stream().allMatch(Finding.class::isInstance)) {
            return findings(collection.stream().map(Finding.class::cast).toList());
        }
        return collection.stream().allMatch(RecordText::isPlainRecord)
                ? table(collection)
                : PlainText.text(collection, units);
    }

    private String map(Map<?, ?> map) {
        if (map.isEmpty()) {
            return "none";
        }
        return TextTable.pairs(map.entrySet().stream()
                .map(entry -> List.of(PlainText.key(entry.getKey()), records.inline(entry.getValue())))
                .toList());
    }

    /** One row a thing; things of several kinds have the columns of all, and the kind in front. */
    private String table(Collection<?> things) {
        Set<String> names = new LinkedHashSet<>();
        Set<Class<?>> kinds = new LinkedHashSet<>();
        for (Object thing : things) {
            kinds.add(thing.getClass());
            names.addAll(RecordText.components(thing).keySet());
        }
        List<String> head = new ArrayList<>(names.stream().map(Wording::words).toList());
        boolean mixed = kinds.size() > 1;
        if (mixed) {
            head.add(1, "kind");
        }
        TextTable table = new TextTable(head);
        for (Object thing : things) {
            Map<String, Object> components = RecordText.components(thing);
            List<String> row = new ArrayList<>();
            names.forEach(
                    name -> row.add(components.containsKey(name) ? records.within(name, components.get(name)) : ""));
            if (mixed) {
                row.add(1, Wording.words(thing.getClass().getSimpleName()));
            }
            table.add(row);
        }
        return table.text();
    }

    private String findings(List<Finding> findings) {
        TextTable table = new TextTable(List.of("", "where", "what", "measured", "limit"));
        for (Finding finding : findings) {
            table.add(List.of(
                    finding.severity().label(),
                    PlainText.subject(finding.subject(), units),
                    finding.rule().title(),
                    PlainText.measured(finding, units),
                    finding.rule().side().label() + " " + Units.show(finding.limit(), units)));
        }
        return table.text();
    }

    /** Step by step; where each figure is from would not fit, so a line says how to see it. */
    private String ledger(Ledger ledger) {
        TextTable table = new TextTable(List.of("step", "value", "how"));
        ledger.steps()
                .forEach(step -> table.add(List.of(step.text(), PlainText.value(ledger, step, units), step.formula())));
        return ledger.figure() + " of " + ledger.subject() + "\n" + RecordText.indented(table.text())
                + "\nprint(…) shows the figures that go into each step, and their sources.";
    }
}
