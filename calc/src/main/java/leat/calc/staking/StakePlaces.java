package leat.calc.staking;

import java.util.ArrayList;
import java.util.List;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;
import leat.model.water.WaterSystem;

/** All that a stake is driven for, before it is known how the places are found. */
final class StakePlaces {

    /** What a stake is for. */
    record Wanted(String label, StakeKind kind, Id id, Point at, Phase phase) {}

    private final Yard yard;
    private final double sameM;
    private final List<Wanted> wanted = new ArrayList<>();

    private StakePlaces(Yard yard, Length same) {
        this.yard = yard;
        this.sameM = same.metres();
    }

    /** In the order of kinds, and within a kind of ids. */
    static List<Wanted> of(Yard yard, Length same) {
        var places = new StakePlaces(yard, same);
        places.addWater();
        yard.trenches().forEach(places::addCorners);
        return List.copyOf(places.wanted);
    }

    private void addWater() {
        WaterSystem water = yard.water();
        water.backflows()
                .forEach(one -> water.pipe(one.on())
                        .ifPresent(run ->
                                add(StakeKind.BACKFLOW, one.id(), run.route().start(), run.phase())));
        water.manifolds().forEach(one -> add(StakeKind.MANIFOLD, one.id(), one.at(), Phase.NOW));
        water.bibs().forEach(one -> add(StakeKind.BIB, one.id(), one.at(), one.phase()));
        water.heads()
                .forEach(one -> add(
                        StakeKind.HEAD,
                        one.id(),
                        one.at(),
                        water.zoneOf(one.id()).map(zone -> zone.phase()).orElse(Phase.NOW)));
    }

    private void add(StakeKind kind, Id id, Point at, Phase phase) {
        wanted.add(new Wanted(id.name(), kind, id, at, phase));
    }

    /** Ends and bends of a trench where no other stake stands; a stake of this year's works serves a later trench too. */
    private void addCorners(TrenchSegment trench) {
        List<Point> points = trench.route().points();
        for (int i = 0; i < points.size(); i++) {
            Point at = points.get(i);
            boolean stands = wanted.stream()
                    .anyMatch(
                            one -> one.at().distanceM(at) < sameM && one.phase().compareTo(trench.phase()) <= 0);
            if (!stands) {
                String label = trench.id().name() + "/" + (i + 1);
                wanted.add(new Wanted(label, StakeKind.CORNER, trench.id(), at, trench.phase()));
            }
        }
    }
}
