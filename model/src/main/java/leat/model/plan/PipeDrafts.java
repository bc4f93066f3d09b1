package leat.model.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Nearest;
import leat.model.geometry.Polyline;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.UpstreamId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.site.Phase;
import leat.model.water.Lateral;
import leat.model.water.Main;
import leat.model.water.PipeRun;
import leat.model.water.Zone;
import org.jspecify.annotations.Nullable;

/** Pipes as stated, until all names are known: then each belongs to the main or to the lateral of a zone. */
final class PipeDrafts {

    /** @param to name of the head at its end */
    record Draft(
            PipeId id,
            String from,
            Polyline route,
            String series,
            Optional<String> size,
            boolean existing,
            Phase phase,
            Optional<String> to) {}

    private final YardDraft yard;
    private final List<Draft> drafts = new ArrayList<>();
    private final SortedMap<String, UpstreamId> upstream = new TreeMap<>();
    private final SortedMap<PipeId, UpstreamId> fedBy = new TreeMap<>();

    PipeDrafts(YardDraft yard) {
        this.yard = yard;
    }

    void add(Draft draft) {
        drafts.add(draft);
    }

    /** Makes a name known as one that may feed a pipe. */
    private void know(UpstreamId id) {
        UpstreamId other = upstream.put(id.name(), id);
        if (other != null && !other.equals(id)) {
            yard.complain("name '" + id.name() + "': a " + other.kind() + " and a " + id.kind()
                    + " have it; pipes could not tell which feeds them");
        }
    }

    void resolve(List<SourceId> sources, List<ValveId> valves, Main main, List<Lateral> laterals) {
        sources.forEach(this::know);
        valves.forEach(this::know);
        List<PipeRun> known = new ArrayList<>(main.runs());
        laterals.forEach(lateral -> known.addAll(lateral.runs()));
        known.forEach(run -> know(run.id()));
        known.forEach(run -> fedBy.put(run.id(), run.from()));
        drafts.forEach(draft -> know(draft.id()));
        for (Draft draft : drafts) {
            UpstreamId from = upstream.get(draft.from());
            if (from == null) {
                String nearest = Nearest.to(draft.from(), upstream.keySet())
                        .map(near -> "; perhaps '" + near + "'")
                        .orElse("");
                yard.complain("pipe " + draft.id() + ": from is '" + draft.from()
                        + "'; no source, pipe or valve has that name" + nearest);
            } else {
                fedBy.put(draft.id(), from);
            }
        }
    }

    Main mainWith(Main main) {
        List<PipeRun> runs = new ArrayList<>(main.runs());
        drafts.stream()
                .filter(draft -> valveAbove(draft) == null)
                .map(this::run)
                .forEach(runs::add);
        return new Main(runs);
    }

    List<Lateral> lateralsWith(List<Lateral> laterals, List<Zone> zones) {
        SortedMap<ZoneId, Lateral> byZone = new TreeMap<>();
        laterals.forEach(lateral -> byZone.put(lateral.zone(), lateral));
        for (Zone zone : zones) {
            List<Draft> own = drafts.stream()
                    .filter(draft -> zone.valve().equals(valveAbove(draft)))
                    .toList();
            if (!own.isEmpty()) {
                Lateral before =
                        byZone.getOrDefault(zone.id(), new Lateral(zone.id(), List.of(), Collections.emptySortedMap()));
                byZone.put(zone.id(), joined(before, own));
            }
        }
        complainOfValvesWithoutZone(zones);
        return List.copyOf(byZone.values());
    }

    private Lateral joined(Lateral before, List<Draft> own) {
        List<PipeRun> runs = new ArrayList<>(before.runs());
        SortedMap<HeadId, PipeId> heads = new TreeMap<>(before.heads());
        for (Draft draft : own) {
            runs.add(run(draft));
            draft.to().ifPresent(head -> heads.put(new HeadId(head), draft.id()));
        }
        return new Lateral(before.zone(), runs, heads);
    }

    private void complainOfValvesWithoutZone(List<Zone> zones) {
        List<ValveId> zoned = zones.stream().map(Zone::valve).toList();
        for (Draft draft : drafts) {
            ValveId valve = valveAbove(draft);
            if (valve != null && !zoned.contains(valve)) {
                yard.complain("pipe " + draft.id() + ": it is fed by valve " + valve + ", which no zone has");
            }
        }
    }

    /** The valve that a chain of pipes starts at; null for pipes of the main. */
    private @Nullable ValveId valveAbove(Draft draft) {
        UpstreamId here = draft.id();
        for (int steps = 0; here instanceof PipeId && steps <= fedBy.size(); steps++) {
            here = fedBy.get(here);
        }
        return here instanceof ValveId valve ? valve : null;
    }

    private PipeRun run(Draft draft) {
        UpstreamId from = fedBy.getOrDefault(draft.id(), new SourceId(draft.from()));
        return new PipeRun(
                draft.id(), from, draft.route(), draft.series(), draft.size(), draft.existing(), draft.phase());
    }
}
