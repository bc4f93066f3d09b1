package leat.model.water;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.fault.InvalidValueException;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;

/** Checks that whatever a part of the water system names is there, and is used only once where that matters. */
final class WaterReferences {

    private final SortedSet<Id> sources = new TreeSet<>();
    private final SortedSet<Id> mainPipes = new TreeSet<>();
    private final SortedSet<Id> allPipes = new TreeSet<>();
    private final SortedSet<Id> heads = new TreeSet<>();
    private final SortedMap<ValveId, ZoneValve> valves = new TreeMap<>();
    private final SortedMap<ZoneId, Zone> zones = new TreeMap<>();
    private final List<Manifold> manifolds;
    private final List<Lateral> laterals;
    private final Main main;

    WaterReferences(
            List<Source> sources,
            Main main,
            List<Manifold> manifolds,
            List<Head> heads,
            List<Zone> zones,
            List<Lateral> laterals) {
        this.main = main;
        this.manifolds = manifolds;
        this.laterals = laterals;
        sources.forEach(source -> this.sources.add(source.id()));
        heads.forEach(head -> this.heads.add(head.id()));
        zones.forEach(zone -> this.zones.put(zone.id(), zone));
        main.runs().forEach(run -> mainPipes.add(run.id()));
        allPipes.addAll(mainPipes);
        laterals.forEach(lateral -> lateral.runs().forEach(run -> addOnce("pipe", run.id(), allPipes)));
    }

    void check(List<BackflowPreventer> backflows, List<HoseBib> bibs) {
        for (PipeRun run : main.runs()) {
            if (run.from() instanceof SourceId source) {
                require("pipe " + run.id(), "from", source, sources);
            }
        }
        backflows.forEach(one -> require("backflow preventer " + one.id(), "on", one.on(), mainPipes));
        bibs.forEach(bib -> bib.on().ifPresent(on -> require("hose bib " + bib.id(), "on", on, mainPipes)));
        checkManifolds();
        checkZones();
        laterals.forEach(this::checkLateral);
    }

    private void checkManifolds() {
        SortedSet<Id> seen = new TreeSet<>();
        for (Manifold manifold : manifolds) {
            manifold.on().ifPresent(on -> require("manifold " + manifold.id(), "on", on, mainPipes));
            for (ZoneValve valve : manifold.valves()) {
                addOnce("valve", valve.id(), seen);
                valves.put(valve.id(), valve);
            }
        }
    }

    private void checkZones() {
        SortedSet<Id> used = new TreeSet<>();
        SortedSet<Id> seen = new TreeSet<>();
        for (Zone zone : zones.values()) {
            String thing = "zone " + zone.id();
            ZoneValve valve = valves.get(zone.valve());
            if (valve == null) {
                throw new InvalidValueException(
                        thing,
                        "valve",
                        "'" + zone.valve() + "', which is not there",
                        "the name of a valve of a manifold");
            }
            if (valve.spare() || !used.add(valve.id())) {
                throw new InvalidValueException(
                        thing,
                        "valve",
                        "'" + zone.valve() + "', which " + (valve.spare() ? "is a spare" : "feeds another zone"),
                        "a valve that is free and no spare");
            }
            for (HeadId head : zone.heads()) {
                require(thing, "heads", head, heads);
                if (!seen.add(head)) {
                    throw new InvalidValueException(
                            thing, "heads", "'" + head + "', which is in another zone", "a head of no other zone");
                }
            }
        }
    }

    private void checkLateral(Lateral lateral) {
        String thing = "lateral of zone " + lateral.zone();
        Zone zone = zones.get(lateral.zone());
        if (zone == null) {
            throw new InvalidValueException(
                    thing, "zone", "'" + lateral.zone() + "', which is not there", "the name of a zone");
        }
        for (PipeRun run : lateral.runs()) {
            if (run.from() instanceof ValveId valve && !valve.equals(zone.valve())) {
                throw new InvalidValueException(
                        "pipe " + run.id(), "from", "valve " + valve, "the zone's own valve " + zone.valve());
            }
        }
        for (HeadId head : lateral.heads().keySet()) {
            if (Collections.binarySearch(zone.heads(), head) < 0) {
                throw new InvalidValueException(thing, "heads", "'" + head + "'", "a head of the zone");
            }
        }
    }

    private static void require(String thing, String field, Id id, SortedSet<Id> known) {
        if (!known.contains(id)) {
            throw new InvalidValueException(
                    thing,
                    field,
                    "'" + id.name() + "', which is not there",
                    "the name of a " + id.kind() + (id instanceof PipeId ? " of the main" : ""));
        }
    }

    private static void addOnce(String thing, Id id, SortedSet<Id> seen) {
        if (!seen.add(id)) {
            throw new InvalidValueException(thing + " " + id.name(), "id", "used twice", "unique among its kind");
        }
    }
}
