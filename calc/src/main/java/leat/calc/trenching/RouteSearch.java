package leat.calc.trenching;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.calc.trenching.internal.Graph;
import leat.calc.trenching.internal.SharedTrench;
import leat.calc.trenching.internal.SteinerTree;
import leat.calc.trenching.internal.Ways;
import leat.model.geometry.Point;

/** Looks for one tree of trenches: places are put in first, then joined. */
final class RouteSearch {

    /** Nearer to allowed ground than this counts as on it: routes are not staked out more precisely. */
    private static final double ON_GROUND_M = 0.01;

    private final DigSite site;
    private final TrenchingParameters parameters;
    private final Progress progress;
    private final Ways ways;

    /** Places on ground where no trench may run; the ways know only the others by where they are. */
    private final SortedMap<Trenchwork.Piece, Integer> behind = new TreeMap<>();

    RouteSearch(DigSite site, TrenchingParameters parameters, Progress progress) {
        this.site = site;
        this.parameters = parameters;
        this.progress = progress;
        this.ways = site.corners().copy();
    }

    /**
     * What was found.
     *
     * @param tree        from the root to all wanted places that can be reached
     * @param missed      wanted places that no allowed trench reaches
     * @param costM       of the tree, in metres dug in lawn
     * @param boundM      no tree over the places looked at costs less
     * @param interrupted whether somebody asked to stop
     */
    record Found(PlaceTree tree, SortedSet<Integer> missed, double costM, double boundM, boolean interrupted) {}

    /** The place here; one on ground where no trench may run gets a stub to the nearest allowed ground. */
    int place(Point at) {
        double[] exit = site.open().nearestAllowed(at.xM(), at.yM());
        double stubM = Math.hypot(exit[0] - at.xM(), exit[1] - at.yM());
        if (stubM < ON_GROUND_M) {
            return ways.add(at.xM(), at.yM());
        }
        var key = new Trenchwork.Piece(at, at);
        Integer known = behind.get(key);
        if (known != null) {
            return known;
        }
        int place = ways.addBehind(at.xM(), at.yM(), ways.add(exit[0], exit[1]));
        behind.put(key, place);
        return place;
    }

    Point at(int place) {
        return new Point(ways.xM(place), ways.yM(place));
    }

    List<Point> at(List<Integer> places) {
        return places.stream().map(this::at).toList();
    }

    /** Puts in trenches that are dug anyhow: another pipe in them costs little. */
    void addDug(Trenchwork work) {
        for (Trenchwork.Piece piece : work.pieces().keySet()) {
            ways.link(
                    place(piece.a()),
                    place(piece.b()),
                    piece.lengthM() * parameters.digging().sharedTrench().value());
        }
    }

    /** Joins places at no cost, one after another: water is at hand at each. */
    void addSprings(List<Integer> places) {
        for (int i = 1; i < places.size(); i++) {
            ways.link(places.get(i - 1), places.get(i), 0);
        }
    }

    Found join(int root, SortedSet<Integer> wanted) {
        boolean[] reached = ways.graph().reachableFrom(root);
        SortedSet<Integer> missed = new TreeSet<>(wanted);
        missed.removeIf(place -> reached[place]);
        SortedSet<Integer> terminals = new TreeSet<>(wanted);
        terminals.removeAll(missed);
        terminals.add(root);
        int[] all = terminals.stream().mapToInt(Integer::intValue).toArray();
        SharedTrench.Found found =
                SharedTrench.find(ways, all, parameters.seed(), parameters.effort(), new Permit(site, progress));
        SteinerTree tree = found.tree();
        return new Found(
                PlaceTree.of(root, pairs(found.graph(), tree), this::at),
                missed,
                tree.cost(),
                tree.bound(),
                tree.interrupted());
    }

    private static List<int[]> pairs(Graph graph, SteinerTree tree) {
        List<int[]> pairs = new ArrayList<>();
        for (int edge : tree.edges()) {
            pairs.add(new int[] {graph.from(edge), graph.to(edge)});
        }
        return pairs;
    }

    private record Permit(DigSite site, Progress progress) implements SharedTrench.Permit {

        @Override
        public boolean allows(double xM, double yM) {
            return site.open().allows(xM, yM);
        }

        @Override
        public boolean stopped() {
            return progress.stopped();
        }
    }
}
