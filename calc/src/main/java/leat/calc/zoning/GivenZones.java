package leat.calc.zoning;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.GivenPipes;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.plan.Aspect;
import leat.model.plan.Yard;
import leat.model.water.Head;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.Zone;
import leat.model.water.ZoneValve;

/**
 * What stays when the zones of a yard are planned anew.
 *
 * @param zones given zones, and zones in which a given head is; with their given heads only
 * @param free  heads in no zone and heads whose zone is planned
 */
record GivenZones(List<Zone> zones, List<Head> free) {

    static GivenZones of(Yard yard) {
        SortedSet<PipeId> givenPipes = GivenPipes.of(yard);
        SortedSet<HeadId> bound = headsOnGivenPipes(yard, givenPipes);
        SortedSet<ZoneId> piped = zonesWithGivenPipes(yard, givenPipes);
        SortedSet<HeadId> kept = new TreeSet<>();
        List<Zone> zones = new ArrayList<>();
        for (Zone zone : yard.water().zones()) {
            List<HeadId> heads = zone.heads().stream()
                    .filter(head -> !yard.isPlanned(head, Aspect.ZONE) || bound.contains(head))
                    .toList();
            boolean stays = !yard.isPlanned(zone.id(), Aspect.ZONE) || !heads.isEmpty() || piped.contains(zone.id());
            if (stays) {
                zones.add(zone.withHeads(heads));
                kept.addAll(heads);
            }
        }
        List<Head> free = yard.water().heads().stream()
                .filter(head -> !kept.contains(head.id()))
                .toList();
        return new GivenZones(List.copyOf(zones), free);
    }

    private static SortedSet<HeadId> headsOnGivenPipes(Yard yard, SortedSet<PipeId> given) {
        SortedSet<HeadId> heads = new TreeSet<>();
        for (Lateral lateral : yard.water().laterals()) {
            lateral.heads().forEach((head, pipe) -> {
                if (given.contains(pipe)) {
                    heads.add(head);
                }
            });
        }
        return heads;
    }

    private static SortedSet<ZoneId> zonesWithGivenPipes(Yard yard, SortedSet<PipeId> given) {
        SortedSet<ZoneId> zones = new TreeSet<>();
        for (Lateral lateral : yard.water().laterals()) {
            if (lateral.runs().stream().anyMatch(run -> given.contains(run.id()))) {
                zones.add(lateral.zone());
            }
        }
        return zones;
    }

    /** Given zones that wait for heads: planned heads may fill them. */
    List<Zone> empty() {
        return zones.stream().filter(zone -> zone.heads().isEmpty()).toList();
    }

    List<Zone> filled() {
        return zones.stream().filter(zone -> !zone.heads().isEmpty()).toList();
    }

    /** The manifold without the valves that an earlier run planned and that nothing given uses. */
    Manifold without(Manifold manifold, Yard yard) {
        SortedSet<ValveId> used = new TreeSet<>();
        zones.forEach(zone -> used.add(zone.valve()));
        return manifold.withValves(manifold.valves().stream()
                .filter(valve -> used.contains(valve.id()) || !yard.isPlanned(valve.id(), Aspect.ZONE))
                .toList());
    }

    /** Given valves that no given zone uses and that are no spares, by id. */
    List<ZoneValve> freeValves(Manifold manifold) {
        SortedSet<ValveId> used = new TreeSet<>();
        zones.forEach(zone -> used.add(zone.valve()));
        return manifold.valves().stream()
                .filter(valve -> !valve.spare() && !used.contains(valve.id()))
                .toList();
    }
}
