package leat.calc.budget;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Require;
import leat.model.finding.Status;
import leat.model.site.Phase;

/**
 * What all costs.
 *
 * @param lines   in the order of the takeoff
 * @param byPhase sums of each phase that has lines; none while the yard has no price at all
 */
public record BudgetResult(Status status, List<BudgetLine> lines, SortedMap<Phase, BudgetSum> byPhase) {

    public BudgetResult {
        Require.present("budget", "status", status);
        lines = Require.entries("budget", "lines", lines);
        Require.present("budget", "byPhase", byPhase);
        byPhase = Collections.unmodifiableSortedMap(new TreeMap<>(byPhase));
    }

    /** The phases together; empty while the yard has no price at all. */
    public Optional<BudgetSum> total() {
        return byPhase.values().stream().reduce(BudgetSum::plus);
    }

    public List<BudgetLine> withoutPrice() {
        return lines.stream().filter(line -> line.purchase().isEmpty()).toList();
    }
}
