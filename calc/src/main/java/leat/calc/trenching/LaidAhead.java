package leat.calc.trenching;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.internal.routes.Trenchwork.Piece;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.id.UpstreamId;
import leat.model.power.PowerSystem;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;
import leat.model.water.Lateral;
import leat.model.water.Main;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/**
 * Pipes of later that begin in a trench of now are laid now as far as they lie in it, for it is not dug twice. What goes on
 * from there waits for its own trench.
 */
final class LaidAhead {

    /** A shorter piece is not worth a cap and a joint; common practice, no source. */
    private static final double LEAST_AHEAD_M = 1;

    private final RouteDraft draft;
    private final SortedMap<Id, Phase> phases = new TreeMap<>();
    private final SortedSet<Piece> dugNow = new TreeSet<>();
    private final SortedMap<Piece, TrenchSegment> ready;
    private final TrenchingParameters parameters;

    LaidAhead(RouteDraft draft, WaterSystem water, TrenchingParameters parameters) {
        this.draft = draft;
        this.parameters = parameters;
        this.ready = draft.work().ready();
        water.pipes().forEach(run -> phases.put(run.id(), run.phase()));
        PowerSystem power = draft.before().power();
        power.conduits().forEach(one -> phases.put(one.id(), one.phase()));
        power.cables().forEach(one -> phases.put(one.id(), one.phase()));
        draft.work().pieces().forEach((piece, things) -> {
            if (things.stream().anyMatch(one -> phases.get(one) == Phase.NOW)) {
                dugNow.add(piece);
            }
        });
    }

    WaterSystem in(WaterSystem water) {
        List<Lateral> laterals = new ArrayList<>();
        for (Lateral lateral : water.laterals()) {
            List<PipeRun> runs = again(lateral.runs(), lateral.zone().name() + "/", "trench.cover.lateral");
            laterals.add(new Lateral(lateral.zone(), runs, lateral.heads()));
        }
        return water.withMain(new Main(again(water.main().runs(), "main-", "trench.cover.main")))
                .withLaterals(laterals);
    }

    /** @param runs upstream ones first */
    private List<PipeRun> again(List<PipeRun> runs, String stem, String cover) {
        List<PipeRun> all = new ArrayList<>();
        for (PipeRun run : runs) {
            boolean stays = run.phase() == Phase.NOW || draft.isGiven(run.id()) || !beginsNow(run.from());
            if (stays) {
                all.add(run);
            } else {
                all.addAll(parted(run, stem, draft.depthM(cover, parameters)));
            }
        }
        return all;
    }

    private boolean isDugNow(Piece piece, double deepM) {
        TrenchSegment given = ready.get(piece);
        boolean inGiven =
                given != null && given.phase() == Phase.NOW && given.depth().metres() >= deepM;
        return inGiven || dugNow.contains(piece);
    }

    private boolean beginsNow(UpstreamId from) {
        return !(from instanceof PipeId pipe) || phases.get(pipe) == Phase.NOW;
    }

    private List<PipeRun> parted(PipeRun run, String stem, double deepM) {
        List<Point> route = draft.work().route(run.id());
        int shared = 0;
        double sharedM = 0;
        while (shared + 1 < route.size() && isDugNow(Piece.between(route.get(shared), route.get(shared + 1)), deepM)) {
            sharedM += route.get(shared).distanceM(route.get(shared + 1));
            shared++;
        }
        if (shared + 1 == route.size()) {
            phases.put(run.id(), Phase.NOW);
            return List.of(draft.again(run, run.from(), run.route().points(), Phase.NOW));
        }
        if (sharedM < LEAST_AHEAD_M) {
            return List.of(run);
        }
        PipeId ahead = draft.nextName(stem);
        phases.put(ahead, Phase.NOW);
        PipeRun first = draft.run(ahead, run.from(), route.subList(0, shared + 1), run.series(), Phase.NOW);
        PipeRun rest = draft.again(run, ahead, route.subList(shared, route.size()), Phase.LATER);
        return List.of(first, rest);
    }
}
