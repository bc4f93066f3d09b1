package leat.model.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
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
            List<String> fitted,
            boolean existing,
            Phase phase,
            Optional<String> to) {}

    private final YardDraft yard;
    private final List<Draft> drafts = new ArrayList<>();
    private final SortedMap<String, UpstreamId> upstream = new TreeMap<>();
    private final SortedMap<PipeId, UpstreamId> fedBy = new TreeMap<>();
    private final SortedMap<PipeId, ValveId> valveOf = new TreeMap<>();

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
                yard.refer("pipe " + draft.id(), "from", draft.from(), "source, pipe or valve", upstream.keySet());
            } else {
                fedBy.put(draft.id(), from);
            }
        }
        fedBy.keySet().forEach(this::findValve);
    }

    /** Notes the valve that a chain of pipes starts at; pipes of the main have none. */
    private void findValve(PipeId pipe) {
        @Nullable UpstreamId here = pipe;
        for (int steps = 0; here instanceof PipeId && steps <= fedBy.size(); steps++) {
            here = fedBy.get(here);
        }
        if (here instanceof ValveId valve) {
            valveOf.put(pipe, valve);
        }
    }

    /** All pipes, those that were there and those of the draft. */
    Stream<PipeId> all() {
        return Stream.concat(fedBy.keySet().stream(), drafts.stream().map(Draft::id))
                .distinct();
    }

    Stream<PipeId> ofMain() {
        return all().filter(pipe -> !valveOf.containsKey(pipe));
    }

    /** Complains of pipes that end at a head that is not there, not in their zone, or reached already. */
    void checkEnds(List<Zone> zones, Collection<String> heads) {
        SortedMap<ValveId, Zone> zoneOf = new TreeMap<>();
        zones.forEach(zone -> zoneOf.put(zone.valve(), zone));
        SortedMap<String, PipeId> reached = new TreeMap<>();
        for (Draft draft : drafts) {
            draft.to().ifPresent(head -> {
                String thing = "pipe " + draft.id();
                yard.refer(thing, "to", head, "head", heads);
                PipeId other = reached.put(head, draft.id());
                if (other != null) {
                    yard.complain(thing + ": to is '" + head + "', which pipe " + other + " ends at already");
                }
                ValveId valve = valveOf.get(draft.id());
                Zone zone = valve == null ? null : zoneOf.get(valve);
                if (valve == null && fedBy.containsKey(draft.id())) {
                    yard.complain(
                            thing + ": to is '" + head + "', but no valve stands between the source and that head");
                } else if (zone != null && heads.contains(head) && !zone.heads().contains(new HeadId(head))) {
                    yard.complain(thing + ": to is '" + head + "', which is no head of its zone " + zone.id());
                }
            });
        }
    }

    Main mainWith(Main main) {
        List<PipeRun> runs = new ArrayList<>(main.runs());
        drafts.stream()
                .filter(draft -> !valveOf.containsKey(draft.id()))
                .map(this::run)
                .forEach(runs::add);
        return new Main(runs);
    }

    List<Lateral> lateralsWith(List<Lateral> laterals, List<Zone> zones) {
        SortedMap<ZoneId, Lateral> byZone = new TreeMap<>();
        laterals.forEach(lateral -> byZone.put(lateral.zone(), lateral));
        SortedMap<ValveId, List<Draft>> byValve = new TreeMap<>();
        for (Draft draft : drafts) {
            ValveId valve = valveOf.get(draft.id());
            if (valve != null) {
                byValve.computeIfAbsent(valve, one -> new ArrayList<>()).add(draft);
            }
        }
        for (Zone zone : zones) {
            List<Draft> own = byValve.remove(zone.valve());
            if (own != null) {
                Lateral before =
                        byZone.getOrDefault(zone.id(), new Lateral(zone.id(), List.of(), Collections.emptySortedMap()));
                byZone.put(zone.id(), joined(before, own));
            }
        }
        byValve.forEach((valve, own) -> own.forEach(draft ->
                yard.complain("pipe " + draft.id() + ": it is fed by valve " + valve + ", which no zone has")));
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

    private PipeRun run(Draft draft) {
        UpstreamId from = fedBy.getOrDefault(draft.id(), new SourceId(draft.from()));
        return new PipeRun(
                draft.id(),
                from,
                draft.route(),
                draft.series(),
                draft.size(),
                draft.fitted(),
                draft.existing(),
                draft.phase());
    }
}
