package leat.model.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import leat.model.catalog.Additions;
import leat.model.catalog.Costs;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.RuleLimit;
import leat.model.fault.Nearest;
import leat.model.fault.UnfinishedException;
import leat.model.id.Id;
import leat.model.id.ManifoldId;
import leat.model.id.NaturalOrder;
import leat.model.id.ValveId;
import leat.model.power.PowerSystem;
import leat.model.quantity.UnitSystem;
import leat.model.site.DigZone;
import leat.model.site.ExistingService;
import leat.model.site.Ground;
import leat.model.site.LimitLine;
import leat.model.site.Obstacle;
import leat.model.site.SpotLevel;
import leat.model.site.Surface;
import leat.model.site.Survey;
import leat.model.site.Terrain;
import leat.model.trench.TrenchSegment;
import leat.model.water.BackflowPreventer;
import leat.model.water.Head;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Main;
import leat.model.water.Manifold;
import leat.model.water.Source;
import leat.model.water.WaterSystem;
import leat.model.water.WateringNeeds;
import leat.model.water.Zone;

/** Collects what parts turn into, in any order; {@link #build} checks the whole. Used once. */
final class YardDraft {

    private final Yard before;
    private final List<String> complaints = new ArrayList<>();
    private final SortedSet<String> unfinished = new TreeSet<>();
    private WateringNeeds watering;
    private Optional<Survey> survey;
    private final List<SpotLevel> asItIs;
    private final List<SpotLevel> finished;
    private final List<Surface> surfaces;
    private final List<Obstacle> obstacles;
    private final List<ExistingService> services;
    private final List<DigZone> digZones;
    private final List<LimitLine> limitLines;
    private final List<Source> sources;
    private final List<BackflowPreventer> backflows;
    private final List<Manifold> manifolds;
    private final List<Head> heads;
    private final List<Zone> zones;
    private final List<HoseBib> bibs;
    private final List<TrenchSegment> trenches;
    private final List<HeadFamily> families;
    private final List<RuleLimit> limits;
    private final List<Temporary> temporary;
    private Costs costs;
    private final PipeDrafts pipes = new PipeDrafts(this);
    private final PowerDraft power;

    private YardDraft(Yard before) {
        this.before = before;
        Terrain terrain = before.terrain();
        WaterSystem water = before.water();
        watering = before.watering();
        survey = terrain.survey();
        asItIs = new ArrayList<>(terrain.ground().asItIs());
        finished = new ArrayList<>(terrain.ground().finished());
        surfaces = new ArrayList<>(terrain.surfaces());
        obstacles = new ArrayList<>(terrain.obstacles());
        services = new ArrayList<>(terrain.services());
        digZones = new ArrayList<>(terrain.digZones());
        limitLines = new ArrayList<>(terrain.limitLines());
        sources = new ArrayList<>(water.sources());
        backflows = new ArrayList<>(water.backflows());
        manifolds = new ArrayList<>(water.manifolds());
        heads = new ArrayList<>(water.heads());
        zones = new ArrayList<>(water.zones());
        bibs = new ArrayList<>(water.bibs());
        trenches = new ArrayList<>(before.trenches());
        families = new ArrayList<>(before.additions().heads());
        limits = new ArrayList<>(before.additions().limits());
        temporary = new ArrayList<>(before.temporary());
        costs = before.costs();
        power = new PowerDraft(this, before.power());
    }

    static YardDraft of(Yard before) {
        return new YardDraft(before);
    }

    YardDraft add(List<Part> parts) {
        parts.forEach(part -> part.addTo(this));
        return this;
    }

    UnitSystem units() {
        return before.units();
    }

    PipeDrafts pipes() {
        return pipes;
    }

    PowerDraft power() {
        return power;
    }

    List<Surface> surfaces() {
        return surfaces;
    }

    Stream<ManifoldId> manifolds() {
        return manifolds.stream().map(Manifold::id);
    }

    boolean complained() {
        return !complaints.isEmpty();
    }

    void complain(String complaint) {
        complaints.add(complaint);
    }

    /** Whether the fields have all that the thing needs; complains of what they lack. */
    boolean has(String kind, String name, Fields fields, String... required) {
        List<String> missing = fields.missing(List.of(required));
        if (!missing.isEmpty()) {
            complain(kind + " " + name + ": missing " + String.join(" and ", missing));
            unfinished.add(name);
        }
        return missing.isEmpty();
    }

    /** Complains of fields that such a thing does not have and that would be lost without a word. */
    void only(String thing, Fields fields, String... allowed) {
        List<String> others = fields.beside(List.of(allowed));
        if (!others.isEmpty()) {
            complain(thing + ": it has no " + String.join(" and no ", others));
        }
    }

    /** Complains of a name that nothing has; silent about things whose own lack was complained of. */
    void refer(String thing, String field, String name, String kinds, Collection<String> known) {
        if (!known.contains(name) && !unfinished.contains(name)) {
            complain(thing + ": " + field + " is '" + name + "'; no " + kinds + " has that name"
                    + Nearest.hint(name, known));
        }
    }

    void survey(Survey one) {
        if (survey.isPresent()) {
            complain("traverse: the yard has one already");
        }
        survey = Optional.of(one);
    }

    void level(SpotLevel level, boolean isFinished) {
        (isFinished ? finished : asItIs).add(level);
    }

    void surface(Surface surface) {
        surfaces.add(surface);
    }

    void obstacle(Obstacle obstacle) {
        obstacles.add(obstacle);
    }

    void service(ExistingService service) {
        services.add(service);
    }

    void digZone(DigZone zone) {
        digZones.add(zone);
    }

    void limitLine(LimitLine line) {
        limitLines.add(line);
    }

    void source(Source source) {
        sources.add(source);
    }

    void backflow(BackflowPreventer backflow) {
        backflows.add(backflow);
    }

    void manifold(Manifold manifold) {
        manifolds.add(manifold);
    }

    void head(Head head) {
        heads.add(head);
    }

    void zone(Zone zone) {
        zones.add(zone);
    }

    void bib(HoseBib bib) {
        bibs.add(bib);
    }

    void trench(TrenchSegment trench) {
        trenches.add(trench);
    }

    void family(HeadFamily family) {
        families.add(family);
    }

    void limit(RuleLimit limit) {
        limits.add(limit);
    }

    void temporary(Temporary one) {
        temporary.add(one);
    }

    Costs costs() {
        return costs;
    }

    void costs(Costs newCosts) {
        costs = newCosts;
    }

    /** Takes the place of what was said before. */
    void watering(WateringNeeds needs) {
        watering = needs;
    }

    Yard build() {
        WaterSystem waterBefore = before.water();
        List<ValveId> valves = manifolds.stream()
                .flatMap(manifold -> manifold.valves().stream())
                .map(valve -> valve.id())
                .toList();
        pipes.resolve(sources.stream().map(Source::id).toList(), valves, waterBefore.main(), waterBefore.laterals());
        checkNames(valves);
        PowerSystem allPower = power.build(before.codeFamily());
        throwIfUnfinished();
        Main main = pipes.mainWith(waterBefore.main());
        List<Lateral> laterals = pipes.lateralsWith(waterBefore.laterals(), zones);
        throwIfUnfinished();
        var water = new WaterSystem(sources, backflows, main, manifolds, heads, zones, laterals, bibs);
        checkTemporary(water, allPower);
        throwIfUnfinished();
        return new Yard(
                before.name(),
                before.units(),
                before.edition(),
                new Terrain(survey, new Ground(asItIs, finished), surfaces, obstacles, services, digZones, limitLines),
                water,
                allPower,
                trenches,
                watering,
                costs,
                temporary,
                before.planned(),
                new Additions(families, limits));
    }

    private void checkNames(List<ValveId> valves) {
        SortedSet<String> ofHeads = names(heads.stream().map(Head::id));
        SortedSet<String> ofValves = names(valves.stream());
        SortedSet<String> ofMain = names(pipes.ofMain());
        SortedSet<String> ofPipes = names(pipes.all());
        for (Zone zone : zones) {
            refer("zone " + zone.id(), "valve", zone.valve().name(), "valve", ofValves);
            zone.heads().forEach(head -> refer("zone " + zone.id(), "heads", head.name(), "head", ofHeads));
        }
        SortedSet<String> ofSurfaces = names(surfaces.stream().map(Surface::id));
        watering.places().keySet().forEach(id -> refer("watering", "surface", id.name(), "surface", ofSurfaces));
        pipes.checkEnds(zones, ofHeads);
        backflows.forEach(
                one -> refer("backflow preventer " + one.id(), "on", one.on().name(), "pipe of the main", ofMain));
        manifolds.forEach(manifold -> manifold.on()
                .ifPresent(on -> refer("manifold " + manifold.id(), "on", on.name(), "pipe of the main", ofMain)));
        bibs.forEach(bib ->
                bib.on().ifPresent(on -> refer("hose bib " + bib.id(), "on", on.name(), "pipe of the main", ofMain)));
        trenches.forEach(trench ->
                trench.pipes().forEach(pipe -> refer("trench " + trench.id(), "holds", pipe.name(), "pipe", ofPipes)));
    }

    private void checkTemporary(WaterSystem water, PowerSystem allPower) {
        SortedSet<Id> there = Yard.plannable(water, allPower, trenches);
        water.manifolds().forEach(one -> there.add(one.id()));
        water.bibs().forEach(one -> there.add(one.id()));
        allPower.panels().forEach(one -> there.add(one.id()));
        allPower.switches().forEach(one -> there.add(one.id()));
        List<String> subjects = there.stream().map(Temporary::subjectOf).toList();
        temporary.stream()
                .filter(one -> !before.temporary().contains(one)) // what those were for may have gone in replanning
                .forEach(one -> refer("temporary arrangement", "subject", one.subject(), "thing", subjects));
    }

    private static SortedSet<String> names(Stream<? extends Id> ids) {
        SortedSet<String> names = new TreeSet<>(NaturalOrder::compare);
        ids.forEach(id -> names.add(id.name()));
        return names;
    }

    private void throwIfUnfinished() {
        if (!complaints.isEmpty()) {
            throw new UnfinishedException(complaints);
        }
    }
}
