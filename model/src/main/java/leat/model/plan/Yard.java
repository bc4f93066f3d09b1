package leat.model.plan;

import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.model.catalog.Additions;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.Require;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.quantity.UnitSystem;
import leat.model.site.Terrain;
import leat.model.trench.TrenchSegment;
import leat.model.water.WaterSystem;

/**
 * The whole plan of a yard, finished or not. Immutable; stages give a new one.
 *
 * @param edition   of the standing tables it was planned with, such as {@code leat-1}
 * @param planned   names only things that are there
 * @param additions to the standing tables
 */
public record Yard(
        String name,
        UnitSystem units,
        String edition,
        Terrain terrain,
        WaterSystem water,
        List<TrenchSegment> trenches,
        Planned planned,
        Additions additions) {

    /** The tables of this version. */
    public static final String EDITION = "leat-1";

    public Yard {
        Require.name("yard", name);
        Require.present("yard " + name, "units", units);
        Require.name("yard " + name, "edition", edition);
        Require.present("yard " + name, "terrain", terrain);
        Require.present("yard " + name, "water", water);
        Require.present("yard " + name, "planned", planned);
        Require.present("yard " + name, "additions", additions);
        trenches = Require.unique("trench", trenches, TrenchSegment::id);
        checkNames(water, trenches, planned);
    }

    /** A yard with nothing in it yet. */
    public static Yard empty(String name, UnitSystem units) {
        return new Yard(
                name, units, EDITION, Terrain.EMPTY, WaterSystem.EMPTY, List.of(), Planned.NOTHING, Additions.NONE);
    }

    /**
     * This yard with more parts in it. Names are resolved, all parts are converted, and whatever is missing or unknown
     * is reported at once.
     *
     * @throws leat.model.fault.UnfinishedException with a line for each thing that is missing
     * @throws InvalidValueException if a part cannot be as it says
     */
    public Yard with(Part... parts) {
        return YardDraft.of(this)
                .add(Require.entries("yard " + name, "parts", Arrays.asList(parts)))
                .build();
    }

    /** The same yard in other units; only its parts to come and its printing change. */
    public Yard units(UnitSystem newUnits) {
        return new Yard(name, newUnits, edition, terrain, water, trenches, planned, additions);
    }

    public boolean isPlanned(Id id, Aspect aspect) {
        return planned.has(id, aspect);
    }

    /**
     * Turns planned aspects into given ones: stages leave them alone from now on.
     *
     * @throws InvalidValueException if nothing that can be planned has that id
     */
    public Yard pin(Id id, Aspect... aspects) {
        requirePlannable(id, plannable(water, trenches));
        return withPlanned(planned.without(id, aspects));
    }

    /**
     * Turns given aspects into planned ones: stages may replace them.
     *
     * @throws InvalidValueException if nothing that can be planned has that id
     */
    public Yard release(Id id, Aspect... aspects) {
        return withPlanned(planned.with(id, aspects));
    }

    public Yard withWater(WaterSystem newWater) {
        return changed(newWater, trenches, planned);
    }

    public Yard withTerrain(Terrain newTerrain) {
        return new Yard(name, units, edition, newTerrain, water, trenches, planned, additions);
    }

    public Yard withPlanned(Planned newPlanned) {
        return changed(water, trenches, newPlanned);
    }

    /** What a stage changes, together, since each names things of the others. */
    public Yard changed(WaterSystem newWater, List<TrenchSegment> newTrenches, Planned newPlanned) {
        return new Yard(name, units, edition, terrain, newWater, newTrenches, newPlanned, additions);
    }

    /** Ids of all that a stage may plan. */
    public static SortedSet<Id> plannable(WaterSystem water, List<TrenchSegment> trenches) {
        SortedSet<Id> ids = new TreeSet<>();
        water.heads().forEach(head -> ids.add(head.id()));
        water.zones().forEach(zone -> ids.add(zone.id()));
        water.manifolds().forEach(manifold -> manifold.valves().forEach(valve -> ids.add(valve.id())));
        water.pipes().forEach(pipe -> ids.add(pipe.id()));
        trenches.forEach(trench -> ids.add(trench.id()));
        return ids;
    }

    private static void checkNames(WaterSystem water, List<TrenchSegment> trenches, Planned planned) {
        SortedSet<Id> known = plannable(water, trenches);
        for (TrenchSegment trench : trenches) {
            for (PipeId pipe : trench.contents()) {
                if (!known.contains(pipe)) {
                    throw new InvalidValueException(
                            "trench " + trench.id(),
                            "contents",
                            "'" + pipe + "', which is not there",
                            "pipes of the yard");
                }
            }
        }
        planned.aspects().keySet().forEach(id -> requirePlannable(id, known));
    }

    private static void requirePlannable(Id id, SortedSet<Id> known) {
        if (!known.contains(id)) {
            List<String> names = known.stream()
                    .filter(one -> one.kind().equals(id.kind()))
                    .map(Id::name)
                    .toList();
            throw new InvalidValueException(
                    "plan",
                    id.kind(),
                    "'" + id.name() + "', which is not there",
                    "a thing that can be planned" + Nearest.hint(id.name(), names));
        }
    }
}
