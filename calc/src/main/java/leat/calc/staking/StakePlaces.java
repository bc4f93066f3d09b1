package leat.calc.staking;

import java.util.ArrayList;
import java.util.List;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.plan.Yard;
import leat.model.power.PowerSystem;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.site.SurfaceKind;
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
        places.addPower();
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

    private void addPower() {
        PowerSystem power = yard.power();
        power.panels().stream()
                .filter(one -> !one.existing())
                .forEach(one -> addOutside(one.id(), one.at(), one.phase()));
        power.loads().forEach(one -> addOutside(one.id(), one.at(), one.phase()));
        power.switches().forEach(one -> addOutside(one.id(), one.at(), one.phase()));
    }

    /** What hangs in a house that stands already needs no stake; what will be in one of later is staked as a stub. */
    private void addOutside(Id id, Point at, Phase phase) {
        boolean inside = yard.terrain().surfaces().stream()
                .anyMatch(one -> one.kind() == SurfaceKind.STRUCTURE
                        && one.phase() == Phase.NOW
                        && one.region().contains(at));
        if (!inside) {
            add(StakeKind.POWER, id, at, phase);
        }
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
