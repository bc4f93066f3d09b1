package leat.calc.staking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leat.calc.staking.internal.Sight;
import leat.calc.staking.internal.TwoTapes;
import leat.model.geometry.Point;
import leat.model.plan.Site;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.site.Ground;
import leat.model.site.Obstacle;
import leat.model.site.Phase;
import leat.model.site.SurfaceKind;

/** Chooses for each place the two marks that place it best, and a third as a check. */
final class Ties {

    /** A place at a mark needs no tape to it, and the angle to it means nothing. */
    private static final double AT_THE_MARK_M = 0.05;

    private final List<TapeMark> marks;
    private final StakingParameters parameters;
    private final Ground ground;
    private final List<Ring> walls = new ArrayList<>();
    private final double leastCrossingRad;

    /** The outline of something that no tape goes through. */
    private record Ring(double[] xs, double[] ys) {

        static Ring of(List<Point> points) {
            return new Ring(
                    points.stream().mapToDouble(Point::xM).toArray(),
                    points.stream().mapToDouble(Point::yM).toArray());
        }
    }

    /** A pair of marks with what it is worth at a place. */
    private record Pair(TapeMark one, TapeMark other, double crossingRad, double errorM, double tapesM) {}

    /**
     * @param tie    empty where no pair of marks crosses well enough
     * @param acuteRad the best crossing of any two marks in reach, as an angle of at most 90°; 0 with fewer than two
     */
    record Chosen(Optional<TwoTapeTie> tie, double acuteRad) {}

    Ties(Site site, List<TapeMark> marks, StakingParameters parameters) {
        this.marks = marks;
        this.parameters = parameters;
        this.ground = site.yard().terrain().ground();
        this.leastCrossingRad =
                Math.toRadians(site.rules().get("staking.crossing").limit().si());
        site.yard().terrain().surfaces().stream()
                .filter(one -> one.kind() == SurfaceKind.STRUCTURE && one.phase() == Phase.NOW)
                .forEach(one -> walls.add(Ring.of(one.region().outer())));
        for (Obstacle obstacle : site.yard().terrain().obstacles()) {
            if (obstacle instanceof Obstacle.Block block) {
                walls.add(Ring.of(block.region().outer()));
            }
        }
    }

    Chosen choose(Point at) {
        List<TapeMark> seen = seen(at);
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < seen.size(); i++) {
            for (int j = i + 1; j < seen.size(); j++) {
                pairs.add(pair(at, seen.get(i), seen.get(j)));
            }
        }
        double acuteRad = pairs.stream()
                .mapToDouble(pair -> Math.min(pair.crossingRad(), Math.PI - pair.crossingRad()))
                .max()
                .orElse(0);
        Optional<Pair> best = pairs.stream()
                .filter(pair -> Math.min(pair.crossingRad(), Math.PI - pair.crossingRad()) >= leastCrossingRad)
                .min(Comparator.comparingDouble(Pair::errorM).thenComparingDouble(Pair::tapesM)); // first of equals
        return new Chosen(best.map(pair -> tie(at, pair, seen)), acuteRad);
    }

    /** Marks in reach of a tape that meets no wall, nearest first. */
    private List<TapeMark> seen(Point at) {
        double longestM = parameters.longestTape().metres();
        return marks.stream()
                .filter(mark -> mark.at().distanceM(at) <= longestM && mark.at().distanceM(at) > AT_THE_MARK_M)
                .filter(mark -> walls.stream()
                        .allMatch(wall ->
                                Sight.isClear(mark.at().xM(), mark.at().yM(), at.xM(), at.yM(), wall.xs(), wall.ys())))
                .sorted(Comparator.comparingDouble((TapeMark mark) -> mark.at().distanceM(at)))
                .toList();
    }

    private Pair pair(Point at, TapeMark one, TapeMark other) {
        double crossingRad = TwoTapes.crossingRad(
                at.xM(),
                at.yM(),
                one.at().xM(),
                one.at().yM(),
                other.at().xM(),
                other.at().yM());
        double oneM = one.at().distanceM(at);
        double otherM = other.at().distanceM(at);
        double errorM = TwoTapes.errorM(offM(oneM), offM(otherM), crossingRad);
        return new Pair(one, other, crossingRad, errorM, oneM + otherM);
    }

    private double offM(double tapeM) {
        return parameters.reading().metres() + parameters.perLength().value() * tapeM;
    }

    private TwoTapeTie tie(Point at, Pair pair, List<TapeMark> seen) {
        boolean left = TwoTapes.isLeft(
                at.xM(),
                at.yM(),
                pair.one().at().xM(),
                pair.one().at().yM(),
                pair.other().at().xM(),
                pair.other().at().yM());
        return new TwoTapeTie(
                tape(pair.one(), at),
                tape(pair.other(), at),
                left ? TieSide.LEFT : TieSide.RIGHT,
                Angle.radians(pair.crossingRad()),
                check(at, pair, seen).map(mark -> tape(mark, at)),
                new Length(pair.errorM()));
    }

    /** The nearest other mark that looks at the stake from a direction of its own, else the nearest other one. */
    private Optional<TapeMark> check(Point at, Pair pair, List<TapeMark> seen) {
        List<TapeMark> others = seen.stream()
                .filter(mark -> !mark.equals(pair.one()) && !mark.equals(pair.other()))
                .toList();
        return others.stream()
                .filter(mark -> crosses(at, mark, pair.one()) && crosses(at, mark, pair.other()))
                .findFirst()
                .or(() -> others.stream().findFirst());
    }

    private boolean crosses(Point at, TapeMark one, TapeMark other) {
        double crossingRad = pair(at, one, other).crossingRad();
        return Math.min(crossingRad, Math.PI - crossingRad) >= leastCrossingRad;
    }

    private TapeTo tape(TapeMark mark, Point at) {
        double levelM = mark.at().distanceM(at);
        double riseM =
                ground.levelFinished(at).minus(ground.levelFinished(mark.at())).metres();
        return new TapeTo(mark, new Length(levelM), new Length(Math.hypot(levelM, riseM)));
    }
}
