package leat.model.water;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;

/**
 * The pipes of one zone, as a tree from its valve to its heads.
 *
 * @param runs  each fed by the zone's valve or another run of the lateral; kept with upstream runs first
 * @param heads for each head the run at whose downstream end it stands
 */
public record Lateral(ZoneId zone, List<PipeRun> runs, SortedMap<HeadId, PipeId> heads) {

    public Lateral {
        Require.present("lateral", "zone", zone);
        String thing = "lateral of zone " + zone;
        runs = PipeTree.downstream(thing, Require.unique("pipe", runs, PipeRun::id));
        Require.present(thing, "heads", heads);
        heads = Collections.unmodifiableSortedMap(new TreeMap<>(heads));
        for (PipeRun run : runs) {
            if (!(run.from() instanceof PipeId) && !(run.from() instanceof ValveId)) {
                throw new InvalidValueException(
                        thing + ", pipe " + run.id(), "from", "a source", "the zone's valve or a pipe of the lateral");
            }
        }
        Set<PipeId> ids = new HashSet<>();
        runs.forEach(run -> ids.add(run.id()));
        heads.forEach((head, pipe) -> {
            if (!ids.contains(pipe)) {
                throw new InvalidValueException(
                        thing + ", head " + head, "pipe", "'" + pipe + "'", "a pipe of the lateral");
            }
        });
    }
}
