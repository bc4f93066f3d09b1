package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.takeoff.Joint.OutletKind;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.UpstreamId;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/**
 * Walks along all pipes and notes where they begin, bend, meet and end. Places nearer to each other than 50 mm are one,
 * for one fitting is about so long.
 */
final class PipeWalk {

    private static final double ONE_PLACE_M = 0.05;

    private final WaterSystem water;
    private final SortedMap<PipeId, SortedMap<Double, Joint>> stations = new TreeMap<>();
    private final SortedMap<PipeId, Joint> starts = new TreeMap<>();
    private final SortedMap<UpstreamId, Joint> feeds = new TreeMap<>();
    private final SortedMap<PipeId, PipeRun> byId = new TreeMap<>();
    private final List<Joint> joints = new ArrayList<>();
    private final List<PipeRun> runs;

    PipeWalk(Yard yard) {
        water = yard.water();
        runs = water.pipes().toList();
        runs.forEach(run -> byId.put(run.id(), run));
        runs.forEach(this::walk);
        water.bibs().forEach(this::stand);
        water.manifolds().forEach(this::stand);
        water.laterals().forEach(this::standHeads);
        runs.forEach(this::lead);
    }

    /** A straight piece of a run, in the direction of the flow. */
    record Stretch(Joint from, Joint to) {}

    List<Joint> joints() {
        return joints;
    }

    List<PipeRun> runs() {
        return runs;
    }

    /** The straight pieces of a run from its start to its end. */
    List<Stretch> stretches(PipeRun run) {
        List<Stretch> stretches = new ArrayList<>();
        Joint from = start(run);
        for (Joint to : stations(run).values()) {
            stretches.add(new Stretch(from, to));
            from = to;
        }
        return stretches;
    }

    private Joint start(PipeRun run) {
        Joint joint = starts.get(run.id());
        if (joint == null) {
            throw new AssertionError(run.id());
        }
        return joint;
    }

    private SortedMap<Double, Joint> stations(PipeRun run) {
        return stations.computeIfAbsent(run.id(), key -> new TreeMap<>());
    }

    private void walk(PipeRun run) {
        starts.put(run.id(), startOf(run));
        double stationM = 0;
        List<Point> points = run.route().points();
        for (int i = 1; i < points.size(); i++) {
            stationM += points.get(i - 1).distanceM(points.get(i));
            boolean isLast = i == points.size() - 1;
            if (isLast || stationM > ONE_PLACE_M) {
                stations(run).put(stationM, joint(points.get(i)));
            }
        }
    }

    private Joint startOf(PipeRun run) {
        Point start = run.route().start();
        if (run.from() instanceof PipeId id && byId.containsKey(id)) {
            return at(byId.get(id), start);
        }
        return feeds.computeIfAbsent(run.from(), from -> {
            Joint joint = joint(start);
            joint.let(from instanceof SourceId ? OutletKind.SOURCE : OutletKind.VALVE, from, run.phase());
            return joint;
        });
    }

    /** The joint of a run that is nearest to a point: one that is there within reach of a fitting, or a new one. */
    private Joint at(PipeRun run, Point point) {
        double stationM = run.route().stationOf(point).metres();
        if (stationM <= ONE_PLACE_M) {
            return start(run);
        }
        SortedMap<Double, Joint> own = stations(run);
        for (Map.Entry<Double, Joint> station : own.entrySet()) {
            if (Math.abs(station.getKey() - stationM) <= ONE_PLACE_M) {
                return station.getValue();
            }
        }
        Joint joint = joint(run.route().at(new Length(stationM)));
        own.put(stationM, joint);
        return joint;
    }

    private Joint joint(Point at) {
        Joint joint = new Joint(at);
        joints.add(joint);
        return joint;
    }

    private void stand(HoseBib bib) {
        bib.on().flatMap(water::pipe).ifPresent(run -> at(run, bib.at()).let(OutletKind.BIB, bib.id(), bib.phase()));
    }

    private void stand(Manifold manifold) {
        manifold.on()
                .flatMap(water::pipe)
                .ifPresent(run -> at(run, manifold.at()).let(OutletKind.MANIFOLD, manifold.id(), Phase.NOW));
    }

    private void standHeads(Lateral lateral) {
        Phase phase = water.zone(lateral.zone()).map(Zone::phase).orElse(Phase.NOW);
        for (Map.Entry<HeadId, PipeId> head : lateral.heads().entrySet()) {
            PipeRun run = byId.get(head.getValue());
            if (run != null) {
                at(run, run.route().end()).let(OutletKind.HEAD, head.getKey(), phase);
            }
        }
    }

    private void lead(PipeRun run) {
        for (Stretch stretch : stretches(run)) {
            stretch.from().lead(run, stretch.to().at());
            stretch.to().lead(run, stretch.from().at());
        }
    }
}
