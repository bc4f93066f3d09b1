package leat.calc.internal.routes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import leat.model.geometry.Point;

/** A tree of places, seen from its root; the branches at each place clockwise from north. */
public final class PlaceTree {

    /**
     * A stretch from one place where pipes meet or end to the next one.
     *
     * @param upstream index of the stretch that feeds it, or -1 if it starts where the water comes from
     * @param places   two or more, in the direction of the flow
     */
    public record Leg(int upstream, List<Integer> places) {

        public int start() {
            return places.get(0);
        }

        public int end() {
            return places.get(places.size() - 1);
        }
    }

    private final SortedMap<Integer, Integer> parent = new TreeMap<>();
    private final SortedMap<Integer, List<Integer>> children = new TreeMap<>();
    private final int root;

    private PlaceTree(int root) {
        this.root = root;
    }

    /** The tree over pairs of places that are joined. */
    public static PlaceTree of(int root, List<int[]> joined, IntFunction<Point> at) {
        SortedMap<Integer, List<Integer>> neighbours = new TreeMap<>();
        for (int[] pair : joined) {
            neighbours.computeIfAbsent(pair[0], key -> new ArrayList<>()).add(pair[1]);
            neighbours.computeIfAbsent(pair[1], key -> new ArrayList<>()).add(pair[0]);
        }
        var tree = new PlaceTree(root);
        List<Integer> queue = new ArrayList<>(List.of(root));
        for (int i = 0; i < queue.size(); i++) {
            int here = queue.get(i);
            List<Integer> below = new ArrayList<>(neighbours.getOrDefault(here, List.of()));
            below.removeIf(next -> next.equals(tree.parent.get(here)));
            below.sort(Comparator.comparingDouble((Integer next) ->
                            at.apply(here).bearingTo(at.apply(next)).degrees())
                    .thenComparing(Comparator.naturalOrder()));
            below.forEach(next -> tree.parent.put(next, here));
            tree.children.put(here, below);
            queue.addAll(below);
        }
        return tree;
    }

    /**
     * The stretches that lead from the springs to the wanted places, each behind what feeds it. They end at wanted places
     * and where they part.
     *
     * @param springs places where water is at hand; nothing is drawn towards the root from there
     */
    public List<Leg> legs(SortedSet<Integer> springs, SortedSet<Integer> wanted) {
        SortedSet<Integer> wet = new TreeSet<>();
        for (int place : wanted) {
            int at = place;
            while (!springs.contains(at) && wet.add(at)) {
                at = parent.getOrDefault(at, root);
            }
        }
        List<Leg> legs = new ArrayList<>();
        for (int spring : springs) {
            follow(spring, -1, wet, wanted, legs);
        }
        return legs;
    }

    /** The places from one to another, both included; empty if the tree does not join them. */
    public List<Integer> path(int from, int to) {
        List<Integer> up = upwards(from);
        List<Integer> down = upwards(to);
        if (!up.get(up.size() - 1).equals(down.get(down.size() - 1))) {
            return List.of();
        }
        while (up.size() > 1 && down.size() > 1 && up.get(up.size() - 2).equals(down.get(down.size() - 2))) {
            up.remove(up.size() - 1);
            down.remove(down.size() - 1);
        }
        List<Integer> path = new ArrayList<>(up);
        for (int i = down.size() - 2; i >= 0; i--) {
            path.add(down.get(i));
        }
        return path;
    }

    private List<Integer> upwards(int place) {
        List<Integer> way = new ArrayList<>(List.of(place));
        Integer next = parent.get(place);
        while (next != null) {
            way.add(next);
            next = parent.get(next);
        }
        return way;
    }

    private void follow(int from, int upstream, SortedSet<Integer> wet, SortedSet<Integer> wanted, List<Leg> legs) {
        for (int first : wetBelow(from, wet)) {
            List<Integer> places = new ArrayList<>(List.of(from));
            int at = first;
            places.add(at);
            while (!wanted.contains(at) && wetBelow(at, wet).size() == 1) {
                at = wetBelow(at, wet).get(0);
                places.add(at);
            }
            legs.add(new Leg(upstream, List.copyOf(places)));
            follow(at, legs.size() - 1, wet, wanted, legs);
        }
    }

    private List<Integer> wetBelow(int place, SortedSet<Integer> wet) {
        return children.getOrDefault(place, List.of()).stream()
                .filter(wet::contains)
                .toList();
    }
}
