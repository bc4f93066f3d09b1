package leat.calc.workplan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.id.Id;
import leat.model.id.NaturalOrder;
import leat.model.quantity.Count;
import leat.model.quantity.Quantity;

/**
 * Small deeds, each on few things, and which must be done before which. Put in order, deeds of one kind on one part of the
 * plan that follow each other become one step. Used once.
 */
final class StepGraph {

    /** A deed, by its kind and what tells it apart within the kind. */
    record Deed(WorkKind kind, String part, String key) implements Comparable<Deed> {

        private static final Comparator<Deed> ORDER = Comparator.comparing(Deed::kind)
                .thenComparing(Deed::part, NaturalOrder::compare)
                .thenComparing(Deed::key, NaturalOrder::compare);

        @Override
        public int compareTo(Deed other) {
            return ORDER.compare(this, other);
        }
    }

    private final SortedMap<Deed, List<Id>> subjects = new TreeMap<>();
    private final SortedMap<Deed, SortedSet<Deed>> before = new TreeMap<>();

    Deed add(WorkKind kind, String part, Id... things) {
        return add(kind, part, List.of(things));
    }

    Deed add(WorkKind kind, String part, List<? extends Id> things) {
        String key = things.isEmpty()
                ? ""
                : things.get(0).kind() + " " + things.get(0).name();
        var deed = new Deed(kind, part, key);
        subjects.computeIfAbsent(deed, one -> new ArrayList<>()).addAll(things);
        before.computeIfAbsent(deed, one -> new TreeSet<>());
        return deed;
    }

    /** The first must be done before the second. */
    void order(Deed first, Deed second) {
        SortedSet<Deed> waits = before.get(second);
        if (waits != null && subjects.containsKey(first) && !first.equals(second)) {
            waits.add(first);
        }
    }

    List<Deed> of(WorkKind kind) {
        return subjects.keySet().stream().filter(one -> one.kind() == kind).toList();
    }

    /**
     * All deeds, each behind those it waits for, otherwise in their natural order. Should they wait for each other in a
     * ring, the first in natural order is done as if it could be: a plan with such trenches is still dug.
     */
    private List<Deed> ordered() {
        SortedMap<Deed, List<Deed>> after = new TreeMap<>();
        SortedMap<Deed, Integer> waiting = new TreeMap<>();
        SortedSet<Deed> ready = new TreeSet<>();
        before.forEach((deed, waits) -> {
            waiting.put(deed, waits.size());
            waits.forEach(
                    one -> after.computeIfAbsent(one, key -> new ArrayList<>()).add(deed));
            if (waits.isEmpty()) {
                ready.add(deed);
            }
        });
        List<Deed> ordered = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Deed next = ready.isEmpty() ? waiting.firstKey() : ready.first();
            ready.remove(next);
            waiting.remove(next);
            ordered.add(next);
            for (Deed one : after.getOrDefault(next, List.of())) {
                Integer left = waiting.computeIfPresent(one, (key, count) -> count - 1);
                if (left != null && left == 0) {
                    ready.add(one);
                }
            }
        }
        return ordered;
    }

    /** @param figures of a step from its kind and subjects */
    List<WorkStep> steps(StepFigures figures) {
        List<List<Deed>> parts = new ArrayList<>();
        for (Deed deed : ordered()) {
            List<Deed> last = parts.isEmpty() ? List.of() : parts.get(parts.size() - 1);
            boolean goesOn = !last.isEmpty()
                    && last.get(0).kind() == deed.kind()
                    && last.get(0).part().equals(deed.part())
                    && Collections.disjoint(last, before.getOrDefault(deed, Collections.emptySortedSet()));
            if (goesOn) {
                last.add(deed);
            } else {
                parts.add(new ArrayList<>(List.of(deed)));
            }
        }
        SortedMap<Deed, Integer> numbers = new TreeMap<>();
        for (int i = 0; i < parts.size(); i++) {
            int number = i + 1;
            parts.get(i).forEach(deed -> numbers.put(deed, number));
        }
        List<WorkStep> steps = new ArrayList<>();
        for (List<Deed> deeds : parts) {
            steps.add(step(deeds, numbers, steps, figures));
        }
        return List.copyOf(steps);
    }

    private WorkStep step(
            List<Deed> deeds, SortedMap<Deed, Integer> numbers, List<WorkStep> earlier, StepFigures figures) {
        Deed first = deeds.get(0);
        SortedSet<Id> things = new TreeSet<>();
        SortedSet<Integer> waits = new TreeSet<>();
        for (Deed deed : deeds) {
            things.addAll(subjects.getOrDefault(deed, List.of()));
            before.getOrDefault(deed, Collections.emptySortedSet())
                    .forEach(one -> Optional.ofNullable(numbers.get(one))
                            .filter(number -> number <= earlier.size())
                            .ifPresent(waits::add));
        }
        Optional<Quantity> figure = figures.of(first.kind(), things);
        return new WorkStep(
                Count.of(earlier.size() + 1),
                first.kind(),
                first.part(),
                List.copyOf(things),
                nearest(waits, earlier),
                figure);
    }

    /** Without those that another of them waits for anyway. */
    private static List<Count> nearest(SortedSet<Integer> waits, List<WorkStep> earlier) {
        SortedSet<Integer> implied = new TreeSet<>();
        for (int number : waits) {
            addEarlier(number, earlier, implied);
        }
        return waits.stream()
                .filter(number -> !implied.contains(number))
                .map(number -> Count.of(number))
                .toList();
    }

    private static void addEarlier(int number, List<WorkStep> earlier, SortedSet<Integer> implied) {
        for (Count one : earlier.get(number - 1).after()) {
            if (implied.add((int) one.value())) {
                addEarlier((int) one.value(), earlier, implied);
            }
        }
    }
}
