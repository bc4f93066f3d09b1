package leat.calc.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.calc.TrenchChoices;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.RouteSearch;
import leat.calc.internal.routes.Trenchwork;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.id.ConduitId;
import leat.model.id.WireEndId;
import leat.model.power.Conduit;

/** Looks for one tree of ways for wires: along trenches, through conduits that are there, straight through buildings. */
final class WireSearch {

    /** What a metre of wire indoors costs, against a metre dug in lawn; common practice, no source. */
    private static final double INDOORS = 0.5;

    /** What a metre of wire in a conduit that is there costs: next to nothing, but the shorter of two is taken. */
    private static final double IN_CONDUIT = 0.001;

    /** A conduit that ends so near to a building or a thing is taken to lead to it. */
    private static final double NEAR_M = 1;

    private final RouteSearch search;
    private final Buildings buildings;
    private final double wallToTrenchM;
    private final SortedMap<WireEndId, Integer> places = new TreeMap<>();
    private final SortedMap<Integer, SortedMap<Integer, Conduit>> conduits = new TreeMap<>();

    /** Places in or at buildings, whose wires to each other run indoors. */
    private final List<Indoors> indoors = new ArrayList<>();

    private record Indoors(int place, Point at, Region building) {}

    /** @param deepM that a given trench must be to take the wires */
    WireSearch(
            DigSite site,
            TrenchChoices choices,
            Buildings buildings,
            Trenchwork work,
            double deepM,
            Progress progress) {
        this.buildings = buildings;
        search = new RouteSearch(site, choices, progress);
        search.addDug(work, deepM);
        wallToTrenchM = choices.clearance().metres() + ROOM_M;
    }

    /** Room for the rounding of corners where a trench starts at a wall. */
    private static final double ROOM_M = 0.05;

    void addEnds(Collection<WireEnd> ends) {
        for (WireEnd end : ends) {
            int place = search.place(end.at());
            places.put(end.id(), place);
            lead(place, end.at(), 0);
            buildings.besidePaving(end.at()).forEach(search::addCorner);
        }
        indoors.forEach(from -> ends.forEach(end -> leadTowards(from, end.at())));
    }

    /** Conduits with room in them. */
    void addConduits(Collection<Conduit> usable, Collection<WireEnd> ends) {
        for (Conduit conduit : usable) {
            int a = search.place(conduit.route().start());
            int b = search.place(conduit.route().end());
            if (a == b || conduits.getOrDefault(Math.min(a, b), new TreeMap<>()).containsKey(Math.max(a, b))) {
                continue;
            }
            conduits.computeIfAbsent(Math.min(a, b), key -> new TreeMap<>()).put(Math.max(a, b), conduit);
            search.link(a, b, IN_CONDUIT * conduit.route().lengthM());
            lead(a, conduit.route().start(), NEAR_M);
            lead(b, conduit.route().end(), NEAR_M);
            for (WireEnd end : ends) {
                linkNear(place(end.id()), end.at(), a, conduit.route().start());
                linkNear(place(end.id()), end.at(), b, conduit.route().end());
            }
        }
    }

    private void linkNear(int place, Point at, int conduitEnd, Point end) {
        double awayM = at.distanceM(end);
        if (place != conduitEnd && awayM <= NEAR_M) {
            search.link(place, conduitEnd, awayM);
        }
    }

    /** Ways out of a building, and straight to all else in it. */
    private void lead(int place, Point at, double nearM) {
        Optional<Region> building = buildings.at(at, nearM);
        if (building.isEmpty() || indoors.stream().anyMatch(one -> one.place() == place)) {
            return;
        }
        Region around = building.get();
        buildings.walls(around, at).forEach(wall -> search.addWayOut(place, wall, INDOORS, wallToTrenchM));
        for (Indoors other : indoors) {
            if (other.building().equals(around) && buildings.isInside(around, other.at(), at)) {
                search.link(other.place(), place, INDOORS * other.at().distanceM(at));
            }
        }
        indoors.add(new Indoors(place, at, around));
    }

    /** Ways out of the building there, where its walls are nearest to a thing elsewhere. */
    private void leadTowards(Indoors from, Point to) {
        buildings
                .wallsFacing(from.building(), from.at(), to)
                .forEach(wall -> search.addWayOut(from.place(), wall, INDOORS, wallToTrenchM));
    }

    int place(WireEndId end) {
        Integer place = places.get(end);
        if (place == null) {
            throw new AssertionError(end + " was not added");
        }
        return place;
    }

    /** One tree from a root; the other springs are reached already. */
    RouteSearch.Found join(WireEndId root, SortedSet<WireEndId> springs, SortedSet<WireEndId> wanted) {
        int rootPlace = place(root);
        SortedSet<Integer> reached = new TreeSet<>(List.of(rootPlace));
        springs.forEach(one -> reached.add(place(one)));
        List<Integer> others = new ArrayList<>(reached);
        others.remove(Integer.valueOf(rootPlace));
        others.add(0, rootPlace);
        search.addSprings(others);
        SortedSet<Integer> wantedPlaces = new TreeSet<>();
        wanted.forEach(one -> wantedPlaces.add(place(one)));
        wantedPlaces.removeAll(reached);
        return search.join(rootPlace, wantedPlaces);
    }

    /** The way along places of the tree, each leg of one kind. */
    List<WireLeg> legs(List<Integer> path) {
        List<WireLeg> legs = new ArrayList<>();
        for (int i = 1; i < path.size(); i++) {
            int a = path.get(i - 1);
            int b = path.get(i);
            Optional<Conduit> conduit = conduit(a, b);
            if (conduit.isPresent()) {
                legs.add(through(conduit.get(), search.at(a)));
                continue;
            }
            for (Buildings.Stretch one : buildings.split(search.at(a), search.at(b))) {
                append(legs, new WireLeg(List.of(one.from(), one.to()), one.indoors(), Optional.empty()));
            }
        }
        return legs;
    }

    private Optional<Conduit> conduit(int a, int b) {
        return Optional.ofNullable(
                conduits.getOrDefault(Math.min(a, b), new TreeMap<>()).get(Math.max(a, b)));
    }

    private static WireLeg through(Conduit conduit, Point from) {
        boolean forwards = from.distanceM(conduit.route().start())
                <= from.distanceM(conduit.route().end());
        List<Point> points =
                forwards ? conduit.route().points() : conduit.route().reversed().points();
        ConduitId id = conduit.id();
        return new WireLeg(points, false, Optional.of(id));
    }

    private static void append(List<WireLeg> legs, WireLeg next) {
        WireLeg last = legs.isEmpty() ? next : legs.get(legs.size() - 1);
        if (!legs.isEmpty() && last.goesOnIn(next)) {
            legs.set(legs.size() - 1, last.joined(next));
        } else {
            legs.add(next);
        }
    }

    /** Whether the way jumps between two places that are joined only because wires reach both already. */
    static boolean jumps(List<Integer> path, SortedSet<Integer> springs) {
        for (int i = 1; i < path.size(); i++) {
            if (springs.contains(path.get(i - 1)) && springs.contains(path.get(i))) {
                return true;
            }
        }
        return false;
    }

    SortedSet<Integer> placesOf(Collection<WireEndId> ends) {
        SortedSet<Integer> found = new TreeSet<>();
        ends.forEach(one -> found.add(place(one)));
        return found;
    }
}
