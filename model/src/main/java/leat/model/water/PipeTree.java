package leat.model.water;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.fault.InvalidValueException;
import leat.model.id.PipeId;
import leat.model.id.UpstreamId;
import org.jspecify.annotations.Nullable;

/** Checks that pipe runs hang together as a tree, and puts each behind what feeds it. */
final class PipeTree {

    private PipeTree() {}

    /**
     * The runs with each upstream run before those it feeds, otherwise by id.
     *
     * @throws InvalidValueException if a run is fed by a pipe that is not among them, or by itself through others
     */
    static List<PipeRun> downstream(String thing, List<PipeRun> runs) {
        SortedMap<PipeId, PipeRun> byId = new TreeMap<>();
        runs.forEach(run -> byId.put(run.id(), run));
        SortedMap<PipeId, PipeRun> placed = new TreeMap<>();
        List<PipeRun> ordered = new ArrayList<>();
        for (PipeRun run : runs) {
            place(thing, run, byId, placed, ordered);
        }
        return List.copyOf(ordered);
    }

    private static void place(
            String thing,
            PipeRun run,
            SortedMap<PipeId, PipeRun> byId,
            SortedMap<PipeId, PipeRun> placed,
            List<PipeRun> ordered) {
        List<PipeRun> chain = new ArrayList<>();
        SortedSet<PipeId> seen = new TreeSet<>();
        PipeRun here = run;
        while (here != null && !placed.containsKey(here.id())) {
            if (!seen.add(here.id())) {
                List<PipeRun> loop = chain.subList(chain.indexOf(here), chain.size());
                throw new InvalidValueException(
                        thing + ", pipe " + here.id(),
                        "from",
                        "in a loop through " + names(loop),
                        "a feed from outside it");
            }
            chain.add(here);
            here = upstream(thing, here, byId);
        }
        for (int i = chain.size() - 1; i >= 0; i--) {
            placed.put(chain.get(i).id(), chain.get(i));
            ordered.add(chain.get(i));
        }
    }

    private static @Nullable PipeRun upstream(String thing, PipeRun run, SortedMap<PipeId, PipeRun> byId) {
        UpstreamId from = run.from();
        if (!(from instanceof PipeId pipe)) {
            return null;
        }
        PipeRun upstream = byId.get(pipe);
        if (upstream == null) {
            throw new InvalidValueException(
                    thing + ", pipe " + run.id(),
                    "from",
                    "'" + pipe + "', no pipe of it",
                    "one of its own pipes or what feeds them");
        }
        return upstream;
    }

    private static String names(List<PipeRun> chain) {
        return String.join(", ", chain.stream().map(run -> run.id().name()).toList());
    }
}
