package leat.model.water;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.UpstreamId;
import leat.model.id.ValveId;
import org.jspecify.annotations.Nullable;

/**
 * What feeds each pipe of a water system. Made once in time in proportion to the number of pipes; each answer then takes
 * time in proportion to the length of the path. Immutable, so safe to share.
 */
public final class PipeFeeds {

    private final Map<PipeId, PipeRun> runs = new HashMap<>(); // looked up only, never walked through
    private final Map<ValveId, PipeId> manifoldFeeds = new HashMap<>();
    private final Map<SourceId, Source> sources = new HashMap<>();
    private final Set<PipeId> guarded = new HashSet<>();

    PipeFeeds(WaterSystem water) {
        water.pipes().forEach(run -> runs.put(run.id(), run));
        water.sources().forEach(source -> sources.put(source.id(), source));
        water.backflows().forEach(backflow -> guarded.add(backflow.on()));
        for (Manifold manifold : water.manifolds()) {
            manifold.on().ifPresent(on -> manifold.valves().forEach(valve -> manifoldFeeds.put(valve.id(), on)));
        }
    }

    /** The run of the main or of a lateral. */
    public Optional<PipeRun> pipe(PipeId id) {
        return Optional.ofNullable(runs.get(id));
    }

    /** The run that feeds this one: its upstream run, or the one that the manifold of its valve stands on. */
    public Optional<PipeRun> upstreamOf(PipeRun run) {
        return Optional.ofNullable(upstream(run));
    }

    /** The runs from the source's own to this one, in the direction of the flow; shorter when the supply is unfinished. */
    public List<PipeRun> pathTo(PipeId pipe) {
        List<PipeRun> path = new ArrayList<>();
        for (PipeRun here = runs.get(pipe); here != null; here = upstream(here)) {
            path.add(here);
        }
        Collections.reverse(path);
        return Collections.unmodifiableList(path);
    }

    /** The source that feeds the run at last; empty when the supply is unfinished. */
    public Optional<Source> sourceOf(PipeId pipe) {
        List<PipeRun> path = pathTo(pipe);
        if (path.isEmpty() || !(path.get(0).from() instanceof SourceId source)) {
            return Optional.empty();
        }
        return Optional.ofNullable(sources.get(source));
    }

    /** What the run carries; drinking water while its supply is unfinished and nothing says otherwise. */
    public Water waterIn(PipeId pipe) {
        Water water = sourceOf(pipe).map(Source::water).orElse(Water.DRINKING);
        if (water != Water.DRINKING) {
            return water;
        }
        boolean behind = pathTo(pipe).stream().anyMatch(run -> guarded.contains(run.id()));
        return behind ? Water.IRRIGATION : Water.DRINKING;
    }

    private @Nullable PipeRun upstream(PipeRun run) {
        UpstreamId from = run.from();
        PipeId pipe =
                from instanceof PipeId above ? above : from instanceof ValveId valve ? manifoldFeeds.get(valve) : null;
        return pipe == null ? null : runs.get(pipe);
    }
}
