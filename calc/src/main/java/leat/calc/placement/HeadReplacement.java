package leat.calc.placement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.LaidId;
import leat.model.id.PipeId;
import leat.model.plan.Aspect;
import leat.model.plan.Planned;
import leat.model.plan.Yard;
import leat.model.trench.TrenchSegment;
import leat.model.water.Head;
import leat.model.water.Lateral;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/**
 * Puts other heads into a yard. Zones keep the heads that are still there. A planned lateral leads to heads where they stood: it
 * goes, with its planned trenches, when one of its heads was moved or is gone. When no head differs nothing else does.
 */
final class HeadReplacement {

    private final Yard yard;
    private final SortedSet<HeadId> kept = new TreeSet<>();
    private final SortedSet<HeadId> stale = new TreeSet<>();
    private final SortedSet<PipeId> gonePipes = new TreeSet<>();

    private HeadReplacement(Yard yard) {
        this.yard = yard;
    }

    static Yard in(Yard yard, List<Head> heads, Collection<? extends Id> placed) {
        return new HeadReplacement(yard).replaced(heads, placed);
    }

    private Yard replaced(List<Head> heads, Collection<? extends Id> placed) {
        WaterSystem water = yard.water();
        heads.forEach(head -> kept.add(head.id()));
        water.heads().stream().filter(head -> !heads.contains(head)).forEach(head -> stale.add(head.id()));
        List<Zone> zones = water.zones().stream()
                .map(zone -> zone.withHeads(
                        zone.heads().stream().filter(kept::contains).toList()))
                .toList();
        List<Lateral> laterals = new ArrayList<>();
        for (Lateral lateral : water.laterals()) {
            if (isStale(lateral)) {
                lateral.runs().forEach(run -> gonePipes.add(run.id()));
            } else {
                laterals.add(withHeadsThatAreThere(lateral));
            }
        }
        WaterSystem changed = new WaterSystem(
                water.sources(),
                water.backflows(),
                water.main(),
                water.manifolds(),
                heads,
                zones,
                laterals,
                water.bibs());
        List<TrenchSegment> trenches = trenches();
        Planned planned = yard.planned()
                .only(Yard.plannable(changed, yard.power(), trenches))
                .with(placed, Aspect.POSITION);
        return yard.changed(changed, trenches, planned);
    }

    private boolean isStale(Lateral lateral) {
        return lateral.heads().keySet().stream().anyMatch(stale::contains)
                && lateral.runs().stream().map(PipeRun::id).anyMatch(run -> yard.isPlanned(run, Aspect.ROUTE));
    }

    private Lateral withHeadsThatAreThere(Lateral lateral) {
        SortedMap<HeadId, PipeId> heads = new TreeMap<>(lateral.heads());
        heads.keySet().retainAll(kept);
        return new Lateral(lateral.zone(), lateral.runs(), heads);
    }

    private List<TrenchSegment> trenches() {
        List<TrenchSegment> left = new ArrayList<>();
        for (TrenchSegment trench : yard.trenches()) {
            List<LaidId> contents = trench.contents().stream()
                    .filter(laid -> !(laid instanceof PipeId pipe) || !gonePipes.contains(pipe))
                    .toList();
            boolean emptied = contents.isEmpty() && !trench.contents().isEmpty();
            if (!emptied || !yard.isPlanned(trench.id(), Aspect.ROUTE)) {
                left.add(trench.withContents(contents));
            }
        }
        return left;
    }
}
