package leat.calc.workplan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    /** A deed with what it is done to and the deeds that it waits for. */
    private static final class Node {
        final Deed deed;
        final List<Id> things = new ArrayList<>();
        final Set<Node> waits = new LinkedHashSet<>();

        /** Of the deed in natural order, from 0. */
        int rank;

        /** Of the step that it becomes part of, from 1. */
        int step;

        Node(Deed deed) {
            this.deed = deed;
        }
    }

    /** To be looked into, not walked through: what is walked through is sorted first. */
    private final Map<Deed, Node> nodes = new HashMap<>();

    private final SortedMap<WorkKind, SortedSet<Deed>> ofKind = new TreeMap<>();

    Deed add(WorkKind kind, String part, Id... things) {
        return add(kind, part, List.of(things));
    }

    Deed add(WorkKind kind, String part, List<? extends Id> things) {
        String key = things.isEmpty()
                ? ""
                : things.get(0).kind() + " " + things.get(0).name();
        var deed = new Deed(kind, part, key);
        nodes.computeIfAbsent(deed, Node::new).things.addAll(things);
        ofKind.computeIfAbsent(kind, one -> new TreeSet<>()).add(deed);
        return deed;
    }

    /** The first must be done before the second. */
    void order(Deed first, Deed second) {
        Node earlier = nodes.get(first);
        Node later = nodes.get(second);
        if (earlier != null && later != null && earlier != later) {
            later.waits.add(earlier);
        }
    }

    List<Deed> of(WorkKind kind) {
        return List.copyOf(ofKind.getOrDefault(kind, Collections.emptySortedSet()));
    }

    /**
     * All deeds, each behind those it waits for, otherwise in their natural order. Should they wait for each other in a
     * ring, the first in natural order is done as if it could be: a plan with such trenches is still dug.
     */
    private List<Node> ordered() {
        List<Node> natural = new ArrayList<>(nodes.values());
        natural.sort(Comparator.comparing(node -> node.deed));
        List<List<Node>> after = new ArrayList<>();
        for (Node node : natural) {
            node.rank = after.size();
            after.add(new ArrayList<>());
        }
        int[] waiting = new int[natural.size()];
        var ready = new BitSet();
        var open = new BitSet();
        for (Node node : natural) {
            waiting[node.rank] = node.waits.size();
            node.waits.forEach(one -> after.get(one.rank).add(node));
            ready.set(node.rank, node.waits.isEmpty());
            open.set(node.rank);
        }
        List<Node> ordered = new ArrayList<>();
        while (!open.isEmpty()) {
            int next = ready.isEmpty() ? open.nextSetBit(0) : ready.nextSetBit(0);
            ready.clear(next);
            open.clear(next);
            ordered.add(natural.get(next));
            for (Node one : after.get(next)) {
                waiting[one.rank]--;
                ready.set(one.rank, waiting[one.rank] == 0 && open.get(one.rank));
            }
        }
        return ordered;
    }

    /** @param figures of a step from its kind and subjects */
    List<WorkStep> steps(StepFigures figures) {
        List<List<Node>> parts = new ArrayList<>();
        for (Node node : ordered()) {
            if (parts.isEmpty() || !goesOn(parts.get(parts.size() - 1).get(0), node)) {
                parts.add(new ArrayList<>());
            }
            node.step = parts.size();
            parts.get(parts.size() - 1).add(node);
        }
        List<WorkStep> steps = new ArrayList<>();
        for (List<Node> some : parts) {
            steps.add(step(some, steps, figures));
        }
        return List.copyOf(steps);
    }

    /** Whether a deed is of the step that a first one began, and waits for nothing in it. */
    private static boolean goesOn(Node first, Node node) {
        return first.deed.kind() == node.deed.kind()
                && first.deed.part().equals(node.deed.part())
                && node.waits.stream().noneMatch(one -> one.step == first.step);
    }

    private static WorkStep step(List<Node> some, List<WorkStep> earlier, StepFigures figures) {
        Deed first = some.get(0).deed;
        SortedSet<Id> things = new TreeSet<>();
        SortedSet<Integer> waits = new TreeSet<>();
        for (Node node : some) {
            things.addAll(node.things);
            node.waits.stream()
                    .map(one -> one.step)
                    .filter(number -> number <= earlier.size())
                    .forEach(waits::add);
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
