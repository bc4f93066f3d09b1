package leat.model.plan;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.fault.Require;
import leat.model.id.Id;

/** Which aspects of which things are planned; all others are given. */
public record Planned(SortedMap<Id, SortedSet<Aspect>> aspects) {

    public static final Planned NOTHING = new Planned(Collections.emptySortedMap());

    public Planned {
        Require.present("planned", "aspects", aspects);
        SortedMap<Id, SortedSet<Aspect>> kept = new TreeMap<>();
        aspects.forEach((id, some) -> {
            if (!some.isEmpty()) {
                kept.put(id, Collections.unmodifiableSortedSet(new TreeSet<>(some)));
            }
        });
        aspects = Collections.unmodifiableSortedMap(kept);
    }

    public boolean has(Id id, Aspect aspect) {
        return aspects.getOrDefault(id, Collections.emptySortedSet()).contains(aspect);
    }

    public Planned with(Id id, Aspect... some) {
        return changed(List.of(id), List.of(some), true);
    }

    public Planned without(Id id, Aspect... some) {
        return changed(List.of(id), List.of(some), false);
    }

    public Planned with(Collection<? extends Id> ids, Aspect aspect) {
        return changed(ids, List.of(aspect), true);
    }

    /** Only what is planned on these things: for when a stage removed others. */
    public Planned only(Set<Id> ids) {
        SortedMap<Id, SortedSet<Aspect>> kept = new TreeMap<>(aspects);
        kept.keySet().retainAll(ids);
        return new Planned(kept);
    }

    private Planned changed(Collection<? extends Id> ids, List<Aspect> some, boolean planned) {
        SortedMap<Id, SortedSet<Aspect>> changed = new TreeMap<>(aspects);
        for (Id id : ids) {
            SortedSet<Aspect> of = new TreeSet<>(changed.getOrDefault(id, Collections.emptySortedSet()));
            if (planned) {
                of.addAll(some);
            } else {
                some.forEach(of::remove);
            }
            changed.put(id, of);
        }
        return new Planned(changed);
    }
}
