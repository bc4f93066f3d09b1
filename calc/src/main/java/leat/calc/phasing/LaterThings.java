package leat.calc.phasing;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.plan.Yard;
import leat.model.site.Phase;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.water.PipeRun;

/** Which things come later. What lies or stands there already is never later, whatever was said of it. */
final class LaterThings {

    private final SortedSet<Id> later = new TreeSet<>();
    private final SortedSet<Id> there = new TreeSet<>();
    private final List<Surface> structures;

    LaterThings(Yard yard) {
        structures = yard.terrain().surfaces().stream()
                .filter(one -> one.kind() == SurfaceKind.STRUCTURE && one.phase() == Phase.LATER)
                .toList();
        yard.terrain().surfaces().forEach(one -> note(one.id(), one.phase(), false));
        yard.water().pipes().forEach(this::note);
        yard.water().bibs().forEach(one -> note(one.id(), one.phase(), false));
        yard.water().zones().forEach(one -> {
            note(one.id(), one.phase(), false);
            one.heads().forEach(head -> note(head, one.phase(), false));
        });
        yard.trenches().forEach(one -> note(one.id(), one.phase(), false));
        notePower(yard);
    }

    private void notePower(Yard yard) {
        yard.power().panels().forEach(one -> note(one.id(), one.phase(), one.existing()));
        yard.power().circuits().forEach(one -> note(one.id(), one.phase(), false));
        yard.power().loads().forEach(one -> note(one.id(), one.phase(), false));
        yard.power().switches().forEach(one -> note(one.id(), one.phase(), false));
        yard.power().conduits().forEach(one -> note(one.id(), one.phase(), one.existing()));
        yard.power().cables().forEach(one -> note(one.id(), one.phase(), one.existing()));
    }

    private void note(PipeRun run) {
        note(run.id(), run.phase(), run.existing());
    }

    private void note(Id id, Phase phase, boolean existing) {
        if (existing) {
            there.add(id);
        } else if (phase == Phase.LATER) {
            later.add(id);
        }
    }

    boolean has(Id id) {
        return later.contains(id);
    }

    /** Whether it lies or stands there already, and works as it is. */
    boolean isThere(Id id) {
        return there.contains(id);
    }

    /** The structure of later that the place is in; empty for most places. */
    Optional<Id> structureAt(Point at) {
        return structures.stream()
                .filter(one -> one.region().contains(at))
                .map(one -> (Id) one.id())
                .findFirst();
    }
}
