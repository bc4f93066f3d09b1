package leat.calc.zoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.GivenPipes;
import leat.model.catalog.Device;
import leat.model.catalog.DeviceKind;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.LaidId;
import leat.model.id.ManifoldId;
import leat.model.id.PipeId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.plan.Aspect;
import leat.model.plan.Planned;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Flow;
import leat.model.trench.TrenchSegment;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;
import leat.model.water.ZoneValve;

/** Names zones and valves one after another, and at the end puts the yard together again. Used once. */
final class ZoneDraft {

    private final Site site;
    private final ZoningParameters parameters;
    private final SortedMap<ManifoldId, List<ZoneValve>> valves = new TreeMap<>();
    private final SortedMap<ManifoldId, List<Zone>> waiting = new TreeMap<>();
    private final SortedMap<ManifoldId, List<ZoneValve>> unused = new TreeMap<>();
    private final SortedMap<ZoneId, Zone> zones = new TreeMap<>();
    private final SortedSet<HeadId> assigned = new TreeSet<>();
    private final SortedSet<Id> made = new TreeSet<>();
    private final List<Reason> reasons = new ArrayList<>();
    private boolean leftOut;

    ZoneDraft(Site site, ZoningParameters parameters, GivenZones given, List<Manifold> manifolds) {
        this.site = site;
        this.parameters = parameters;
        given.zones().forEach(zone -> zones.put(zone.id(), zone));
        for (Manifold manifold : manifolds) {
            valves.put(manifold.id(), new ArrayList<>(manifold.valves()));
            unused.put(manifold.id(), new ArrayList<>(given.freeValves(manifold)));
            List<ValveId> here = manifold.valves().stream().map(ZoneValve::id).toList();
            waiting.put(
                    manifold.id(),
                    new ArrayList<>(given.empty().stream()
                            .filter(zone -> here.contains(zone.valve()))
                            .toList()));
        }
    }

    List<Reason> reasons() {
        return reasons;
    }

    /** Whether heads stayed without a zone. */
    boolean leftOut() {
        return leftOut;
    }

    /** Gives the group the next given zone of its phase, or a new zone on the next given or a planned valve. */
    void add(Manifold manifold, HeadGroup group) {
        List<Zone> given = waiting.getOrDefault(manifold.id(), List.of());
        Optional<Zone> fitting =
                given.stream().filter(zone -> zone.phase() == group.phase()).findFirst();
        if (fitting.isPresent()) {
            Zone zone = fitting.get();
            given.remove(zone);
            zones.put(zone.id(), zone.withHeads(group.heads()));
            assigned.addAll(group.heads());
            return;
        }
        List<ZoneValve> free = unused.getOrDefault(manifold.id(), List.of());
        if (free.isEmpty() && !parameters.mayAddValves()) {
            leftOut = true;
            group.heads()
                    .forEach(head -> reasons.add(
                            new Reason(Subject.of(head), "no valve is left at " + manifold.id() + " for its zone")));
            return;
        }
        ZoneValve valve = free.isEmpty() ? plannedValve(manifold, group.flow()) : free.remove(0);
        ZoneId id = new ZoneId(
                unused("zone-", zones.keySet().stream().map(ZoneId::name).toList()));
        zones.put(id, new Zone(id, valve.id(), group.heads(), group.phase()));
        made.add(id);
        assigned.addAll(group.heads());
    }

    /** Plans spare valves until the manifold has as many as are wanted. */
    void addSpares(Manifold manifold) {
        List<ZoneValve> here = valves.getOrDefault(manifold.id(), List.of());
        long spares = here.stream().filter(ZoneValve::spare).count();
        for (long i = spares; i < (long) parameters.spareValves().value(); i++) {
            addValve(manifold, "spare-", true, usualDevice(manifold, Flow.ZERO));
        }
    }

    private ZoneValve plannedValve(Manifold manifold, Flow flow) {
        return addValve(manifold, "valve-", false, usualDevice(manifold, flow));
    }

    private ZoneValve addValve(Manifold manifold, String stem, boolean spare, String device) {
        List<String> taken = valves.values().stream()
                .flatMap(List::stream)
                .map(valve -> valve.id().name())
                .toList();
        var valve = new ZoneValve(new ValveId(unused(stem, taken)), device, spare);
        valves.computeIfAbsent(manifold.id(), key -> new ArrayList<>()).add(valve);
        made.add(valve.id());
        return valve;
    }

    /** What the manifold has already if that bears the flow, else the smallest zone valve that does. */
    private String usualDevice(Manifold manifold, Flow flow) {
        List<String> here = manifold.valves().stream()
                .map(ZoneValve::device)
                .filter(key -> bears(site.catalog().device(key), flow))
                .sorted()
                .toList();
        if (!here.isEmpty()) {
            return here.get(0);
        }
        List<Device> all = site.catalog().devices().values().stream()
                .filter(device -> device.kind() == DeviceKind.ZONE_VALVE)
                .sorted(Comparator.comparing(Device::most).thenComparing(Device::key))
                .toList();
        return all.stream()
                .filter(device -> bears(device, flow))
                .findFirst()
                .orElse(all.get(all.size() - 1))
                .key();
    }

    private static boolean bears(Device device, Flow flow) {
        return SafeFlow.bears(device).compareTo(flow) >= 0;
    }

    private static String unused(String stem, List<String> taken) {
        int number = 1;
        while (taken.contains(stem + number)) {
            number++;
        }
        return stem + number;
    }

    /** The yard with these zones, without what only the old ones needed. */
    Yard yard() {
        Yard before = site.yard();
        WaterSystem water = before.water();
        SortedSet<PipeId> given = GivenPipes.of(before);
        List<Lateral> laterals = new ArrayList<>();
        for (Lateral lateral : water.laterals()) {
            if (isUnchanged(lateral)) {
                laterals.add(lateral);
            } else if (zones.containsKey(lateral.zone())) {
                laterals.add(onlyGiven(lateral, given));
            }
        }
        List<Manifold> manifolds = water.manifolds().stream()
                .map(one -> one.withValves(valves.getOrDefault(one.id(), List.of())))
                .toList();
        WaterSystem bare = water.withLaterals(List.of()).withZones(manifolds, List.copyOf(zones.values()));
        WaterSystem changed = bare.withLaterals(
                laterals.stream().filter(lateral -> !lateral.runs().isEmpty()).toList());
        List<TrenchSegment> trenches = trenchesWith(changed, before);
        return before.changed(changed, trenches, planned(before, changed, trenches));
    }

    private boolean isUnchanged(Lateral lateral) {
        Zone now = zones.get(lateral.zone());
        return now != null && site.yard().water().zone(lateral.zone()).equals(Optional.of(now));
    }

    private static Lateral onlyGiven(Lateral lateral, SortedSet<PipeId> given) {
        SortedMap<HeadId, PipeId> heads = new TreeMap<>(lateral.heads());
        heads.values().retainAll(given);
        return new Lateral(
                lateral.zone(),
                lateral.runs().stream().filter(run -> given.contains(run.id())).toList(),
                heads);
    }

    /** Trenches without pipes that are gone; a planned trench that then holds nothing is gone as well. */
    private static List<TrenchSegment> trenchesWith(WaterSystem water, Yard before) {
        List<PipeId> there = water.pipes().map(run -> run.id()).toList();
        List<TrenchSegment> kept = new ArrayList<>();
        for (TrenchSegment trench : before.trenches()) {
            List<LaidId> contents = trench.contents().stream()
                    .filter(laid -> !(laid instanceof PipeId) || there.contains(laid))
                    .toList();
            boolean isGiven = !before.isPlanned(trench.id(), Aspect.ROUTE);
            if (isGiven || !contents.isEmpty() || trench.contents().isEmpty()) {
                kept.add(trench.withContents(contents));
            }
        }
        return kept;
    }

    private Planned planned(Yard yard, WaterSystem water, List<TrenchSegment> trenches) {
        return yard.planned()
                .only(Yard.plannable(water, yard.power(), trenches))
                .with(made, Aspect.ZONE)
                .with(assigned, Aspect.ZONE);
    }
}
