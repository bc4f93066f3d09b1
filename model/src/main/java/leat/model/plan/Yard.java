package leat.model.plan;

import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.model.catalog.Additions;
import leat.model.catalog.Costs;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.Require;
import leat.model.id.Id;
import leat.model.id.LaidId;
import leat.model.id.SurfaceId;
import leat.model.power.CodeFamily;
import leat.model.power.PowerSystem;
import leat.model.quantity.UnitSystem;
import leat.model.site.Terrain;
import leat.model.trench.TrenchSegment;
import leat.model.water.WaterSystem;
import leat.model.water.WateringNeeds;

/**
 * The whole plan of a yard, finished or not. Immutable; stages give a new one.
 *
 * @param edition   of the standing tables it was planned with, such as {@code leat-1}
 * @param temporary arrangements of now until something later is there, by subject
 * @param planned   names only things that are there
 * @param additions to the standing tables
 */
public record Yard(
        String name,
        UnitSystem units,
        String edition,
        Terrain terrain,
        WaterSystem water,
        PowerSystem power,
        List<TrenchSegment> trenches,
        WateringNeeds watering,
        Costs costs,
        List<Temporary> temporary,
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
        Require.present("yard " + name, "power", power);
        Require.present("yard " + name, "watering", watering);
        Require.present("yard " + name, "costs", costs);
        Require.present("yard " + name, "planned", planned);
        Require.present("yard " + name, "additions", additions);
        trenches = Require.unique("trench", trenches, TrenchSegment::id);
        temporary = Require.unique("temporary arrangement for", temporary, Temporary::subject);
        checkNames(water, power, trenches, planned);
        checkPlaces(watering, terrain);
    }

    /** A yard with nothing in it yet. */
    public static Yard empty(String name, UnitSystem units) {
        return new Yard(
                name,
                units,
                EDITION,
                Terrain.EMPTY,
                WaterSystem.EMPTY,
                PowerSystem.EMPTY,
                List.of(),
                WateringNeeds.NONE,
                Costs.NONE,
                List.of(),
                Planned.NOTHING,
                Additions.NONE);
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
        return new Yard(
                name, newUnits, edition, terrain, water, power, trenches, watering, costs, temporary, planned,
                additions);
    }

    /** The family of electrical codes that was stated, or the one that goes with the units. */
    public CodeFamily codeFamily() {
        return power.code().orElse(units == UnitSystem.US ? CodeFamily.NFPA_70 : CodeFamily.IEC_60364);
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
        requirePlannable(id, plannable(water, power, trenches));
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
        return new Yard(
                name,
                units,
                edition,
                newTerrain,
                water,
                power,
                trenches,
                watering,
                costs,
                temporary,
                planned,
                additions);
    }

    public Yard withPower(PowerSystem newPower) {
        return changed(water, newPower, trenches, planned);
    }

    public Yard withWatering(WateringNeeds newWatering) {
        return new Yard(
                name,
                units,
                edition,
                terrain,
                water,
                power,
                trenches,
                newWatering,
                costs,
                temporary,
                planned,
                additions);
    }

    public Yard withCosts(Costs newCosts) {
        return new Yard(
                name, units, edition, terrain, water, power, trenches, watering, newCosts, temporary, planned,
                additions);
    }

    public Yard withPlanned(Planned newPlanned) {
        return changed(water, trenches, newPlanned);
    }

    /** What a stage changes, together, since each names things of the others. */
    public Yard changed(WaterSystem newWater, List<TrenchSegment> newTrenches, Planned newPlanned) {
        return changed(newWater, power, newTrenches, newPlanned);
    }

    /** As the other, with the power too. */
    public Yard changed(
            WaterSystem newWater, PowerSystem newPower, List<TrenchSegment> newTrenches, Planned newPlanned) {
        return new Yard(
                name,
                units,
                edition,
                terrain,
                newWater,
                newPower,
                newTrenches,
                watering,
                costs,
                temporary,
                newPlanned,
                additions);
    }

    /** Ids of all that a stage may plan. */
    public static SortedSet<Id> plannable(WaterSystem water, PowerSystem power, List<TrenchSegment> trenches) {
        SortedSet<Id> ids = new TreeSet<>();
        water.heads().forEach(head -> ids.add(head.id()));
        water.zones().forEach(zone -> ids.add(zone.id()));
        water.manifolds().forEach(manifold -> manifold.valves().forEach(valve -> ids.add(valve.id())));
        water.pipes().forEach(pipe -> ids.add(pipe.id()));
        power.circuits().forEach(circuit -> ids.add(circuit.id()));
        power.loads().forEach(load -> ids.add(load.id()));
        power.conduits().forEach(conduit -> ids.add(conduit.id()));
        power.cables().forEach(cable -> ids.add(cable.id()));
        trenches.forEach(trench -> ids.add(trench.id()));
        return ids;
    }

    private static void checkNames(
            WaterSystem water, PowerSystem power, List<TrenchSegment> trenches, Planned planned) {
        SortedSet<Id> known = plannable(water, power, trenches);
        for (TrenchSegment trench : trenches) {
            for (LaidId laid : trench.contents()) {
                if (!known.contains(laid)) {
                    throw new InvalidValueException(
                            "trench " + trench.id(),
                            "contents",
                            laid.kind() + " '" + laid + "', which is not there",
                            "pipes, conduits and cables of the yard");
                }
            }
        }
        planned.aspects().keySet().forEach(id -> requirePlannable(id, known));
    }

    private static void checkPlaces(WateringNeeds watering, Terrain terrain) {
        List<String> names =
                terrain.surfaces().stream().map(one -> one.id().name()).toList();
        for (SurfaceId id : watering.places().keySet()) {
            if (!names.contains(id.name())) {
                throw new InvalidValueException(
                        "watering",
                        "places",
                        "'" + id.name() + "', which is not there",
                        "surfaces of the yard" + Nearest.hint(id.name(), names));
            }
        }
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
