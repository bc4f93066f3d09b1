package leat.calc.internal.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.calc.TrenchChoices;
import leat.model.geometry.Point;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;

/** Looks for one tree of trenches: places are put in first, then joined. */
public final class RouteSearch {

    /** Nearer to allowed ground than this counts as on it: routes are not staked out more precisely. */
    private static final double ON_GROUND_M = 0.01;

    private final DigSite site;
    private final TrenchChoices choices;
    private final Progress progress;
    private final Ways ways;

    /** Places on ground where no trench may run; the ways know only the others by where they are. */
    private final SortedMap<Trenchwork.Piece, Integer> behind = new TreeMap<>();

    public RouteSearch(DigSite site, TrenchChoices choices, Progress progress) {
        this.site = site;
        this.choices = choices;
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
    public record Found(PlaceTree tree, SortedSet<Integer> missed, double costM, double boundM, boolean interrupted) {}

    /** The place here; one on ground where no trench may run gets a stub to the nearest allowed ground. */
    public int place(Point at) {
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

    public Point at(int place) {
        return new Point(ways.xM(place), ways.yM(place));
    }

    public List<Point> at(List<Integer> places) {
        return places.stream().map(this::at).toList();
    }

    /**
     * One more way out of the building for a place in it: straight through the wall at {@code wall}. Left out where no
     * trench may start close to that wall.
     *
     * @param indoorFactor what a metre indoors costs, against a metre dug in lawn
     * @param mostM        the trench starts no further from the wall than this
     */
    public void addWayOut(int place, Point wall, double indoorFactor, double mostM) {
        double[] exit = site.open().nearestAllowed(wall.xM(), wall.yM());
        double outsideM = Math.hypot(exit[0] - wall.xM(), exit[1] - wall.yM());
        if (outsideM <= mostM) {
            double indoorsM = at(place).distanceM(wall);
            ways.link(ways.add(exit[0], exit[1]), place, indoorFactor * indoorsM + outsideM);
        }
    }

    /** One more corner at which trenches may bend; left out where none may run. */
    public void addCorner(Point at) {
        if (site.open().allows(at.xM(), at.yM())) {
            ways.add(at.xM(), at.yM());
        }
    }

    /** One more way between two places, whatever lies between them: a conduit that is there, or a wire indoors. */
    public void link(int a, int b, double costM) {
        ways.link(a, b, costM);
    }

    /**
     * Puts in trenches that are dug anyhow: another pipe in them costs little.
     *
     * @param deepM given trenches count if they are dug now and at least so deep
     */
    public void addDug(Trenchwork work, double deepM) {
        SortedMap<Trenchwork.Piece, TrenchSegment> ready = work.ready();
        for (Trenchwork.Piece piece : work.pieces().keySet()) {
            TrenchSegment given = ready.get(piece);
            if (given != null && (given.phase() == Phase.LATER || given.depth().metres() < deepM)) {
                continue;
            }
            ways.link(
                    place(piece.a()),
                    place(piece.b()),
                    piece.lengthM() * choices.digging().sharedTrench().value());
        }
    }

    /** Joins places at no cost, one after another: water is at hand at each. */
    public void addSprings(List<Integer> places) {
        for (int i = 1; i < places.size(); i++) {
            ways.link(places.get(i - 1), places.get(i), 0);
        }
    }

    public Found join(int root, SortedSet<Integer> wanted) {
        boolean[] reached = ways.graph().reachableFrom(root);
        SortedSet<Integer> missed = new TreeSet<>(wanted);
        missed.removeIf(place -> reached[place]);
        SortedSet<Integer> terminals = new TreeSet<>(wanted);
        terminals.removeAll(missed);
        terminals.add(root);
        int[] all = terminals.stream().mapToInt(Integer::intValue).toArray();
        SharedTrench.Found found =
                SharedTrench.find(ways, all, choices.seed(), choices.effort(), new Permit(site, progress));
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
