package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.LaidId;
import leat.model.plan.Site;
import leat.model.site.Ground;
import leat.model.trench.TrenchSegment;
import leat.model.water.PipeRun;

/** How deep pipes lie, and how long they are on sloping ground. */
final class Depths {

    /** Ground is straight enough between points so near to each other. */
    private static final double STEP_M = 1;

    private final Ground ground;
    private final SortedMap<LaidId, List<TrenchSegment>> trenches = new TreeMap<>();
    private final SortedSet<LaidId> ofMain = new TreeSet<>();
    private final double mainM;
    private final double lateralM;

    Depths(Site site, TakeoffParameters parameters) {
        ground = site.yard().terrain().ground();
        for (TrenchSegment trench : site.yard().trenches()) {
            trench.contents()
                    .forEach(pipe -> trenches.computeIfAbsent(pipe, key -> new ArrayList<>())
                            .add(trench));
        }
        site.yard().water().main().runs().forEach(run -> ofMain.add(run.id()));
        double belowM = parameters.belowPipe().metres();
        mainM = site.rules().get("trench.cover.main").limit().si() + belowM;
        lateralM = site.rules().get("trench.cover.lateral").limit().si() + belowM;
    }

    /** Of the nearest trench that holds the pipe; without one, of its least cover. */
    double depthM(PipeRun run, Point at) {
        return depthM(run.id(), at, ofMain.contains(run.id()) ? mainM : lateralM);
    }

    /** The same of a conduit or a cable; none where it lies in no trench. */
    double depthM(LaidId laid, Point at) {
        return depthM(laid, at, 0);
    }

    private double depthM(LaidId laid, Point at, double withoutTrenchM) {
        double depthM = withoutTrenchM;
        double nearestM = Double.POSITIVE_INFINITY;
        for (TrenchSegment trench : trenches.getOrDefault(laid, List.of())) {
            double awayM = trench.route().nearest(at).distanceM(at);
            if (awayM < nearestM) {
                nearestM = awayM;
                depthM = trench.depth().metres();
            }
        }
        return depthM;
    }

    /** Length of a straight way on the plan that follows the finished grade. */
    double slopeLengthM(Point from, Point to) {
        double planM = from.distanceM(to);
        if (ground.asItIs().isEmpty() && ground.finished().isEmpty()) {
            return planM;
        }
        int steps = Math.max(1, (int) Math.ceil(planM / STEP_M));
        double sumM = 0;
        double beforeM = levelM(from);
        for (int i = 1; i <= steps; i++) {
            double share = (double) i / steps;
            Point here = i == steps
                    ? to
                    : new Point(from.xM() + share * (to.xM() - from.xM()), from.yM() + share * (to.yM() - from.yM()));
            double levelM = levelM(here);
            sumM += Math.hypot(planM / steps, levelM - beforeM);
            beforeM = levelM;
        }
        return sumM;
    }

    double slopeLengthM(Polyline route) {
        double sumM = 0;
        for (int i = 1; i < route.points().size(); i++) {
            sumM += slopeLengthM(route.points().get(i - 1), route.points().get(i));
        }
        return sumM;
    }

    private double levelM(Point at) {
        return ground.levelFinished(at).metres();
    }
}
