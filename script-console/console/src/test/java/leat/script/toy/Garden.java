package leat.script.toy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import leat.model.fault.LeatException;

/** A whole that holds parts in lists and maps. */
public final class Garden {

    private final List<Head> heads;

    Garden(List<Head> heads) {
        this.heads = List.copyOf(heads);
    }

    public Garden with(Head... more) {
        List<Head> all = new ArrayList<>(heads);
        all.addAll(List.of(more));
        return new Garden(all);
    }

    public List<Head> heads() {
        return heads;
    }

    public SortedMap<HeadId, Length> radii() {
        return Collections.unmodifiableSortedMap(
                new TreeMap<>(heads.stream().collect(Collectors.toMap(Head::id, Head::radius))));
    }

    public Head head(HeadId id) {
        return heads.stream()
                .filter(head -> head.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new LeatException("garden: there is no head " + id.name()));
    }

    public List<Head> only(Predicate<Head> wanted) {
        return heads.stream().filter(wanted).toList();
    }

    public Length total(Function<Head, Length> figure) {
        return heads.stream().map(figure).reduce(new Length(0), Length::plus);
    }

    public Head largest(Comparator<Head> order) {
        return heads.stream().max(order).orElseThrow();
    }

    public String among(List<Urgency> urgencies) {
        return urgencies.toString();
    }

    public String repeat(int times) {
        return "x".repeat(times);
    }

    public void defect() {
        throw new NullPointerException("planted");
    }

    /** A method that must never be seen from a script. */
    static void hidden() {}

    @Override
    public String toString() {
        return "garden of " + heads.size() + " heads";
    }
}
