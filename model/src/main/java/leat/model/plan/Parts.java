package leat.model.plan;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import leat.model.catalog.HeadShape;
import leat.model.catalog.RuleLimit;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Region;
import leat.model.id.ObstacleId;
import leat.model.power.CodeFamily;
import leat.model.quantity.Angle;
import leat.model.quantity.Current;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Power;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Pressure;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Velocity;
import leat.model.quantity.Voltage;
import leat.model.site.DigZone;
import leat.model.site.ExistingService;
import leat.model.site.LimitLine;
import leat.model.site.Obstacle;
import leat.model.site.Phase;
import leat.model.site.SurfaceKind;
import leat.model.site.Watering;
import leat.model.water.GrowingPlace;
import leat.model.water.WateringNeeds;

/**
 * The vocabulary in which yards are stated, the same for scripts and for Java. Import it statically:
 *
 * <pre>{@code
 * Yard yard = yard("Plot").with(
 *         lawn("front", rectangle(at(0, 0), feet(20), feet(15))),
 *         mains("street", at(0, 0)).staticPressure(psi(60)));
 * }</pre>
 */
public final class Parts {

    public static final UnitSystem US = UnitSystem.US;
    public static final UnitSystem METRIC = UnitSystem.METRIC;
    public static final Phase NOW = Phase.NOW;
    public static final Phase LATER = Phase.LATER;
    public static final CodeFamily NFPA_70 = CodeFamily.NFPA_70;
    public static final CodeFamily IEC_60364 = CodeFamily.IEC_60364;
    public static final Watering HEADS = Watering.HEADS;
    public static final Watering DRIP = Watering.DRIP;
    public static final Watering NONE = Watering.NONE;
    public static final GrowingPlace.Grade LOW = GrowingPlace.Grade.LOW;
    public static final GrowingPlace.Grade AVERAGE = GrowingPlace.Grade.AVERAGE;
    public static final GrowingPlace.Grade HIGH = GrowingPlace.Grade.HIGH;

    private Parts() {}

    // Quantities

    public static Length feet(double value) {
        return Length.feet(value);
    }

    public static Length inches(double value) {
        return Length.inches(value);
    }

    public static Length metres(double value) {
        return Length.metres(value);
    }

    public static Length millimetres(double value) {
        return Length.millimetres(value);
    }

    public static Pressure psi(double value) {
        return Pressure.psi(value);
    }

    public static Pressure kilopascals(double value) {
        return Pressure.kilopascals(value);
    }

    public static Pressure bar(double value) {
        return Pressure.bar(value);
    }

    public static Flow gpm(double value) {
        return Flow.gpm(value);
    }

    public static Flow litresPerMinute(double value) {
        return Flow.litresPerMinute(value);
    }

    public static Velocity feetPerSecond(double value) {
        return Velocity.feetPerSecond(value);
    }

    public static Velocity metresPerSecond(double value) {
        return Velocity.metresPerSecond(value);
    }

    public static PrecipitationRate inchesPerHour(double value) {
        return PrecipitationRate.inchesPerHour(value);
    }

    public static PrecipitationRate millimetresPerHour(double value) {
        return PrecipitationRate.millimetresPerHour(value);
    }

    public static Angle degrees(double value) {
        return Angle.degrees(value);
    }

    public static Ratio percent(double value) {
        return Ratio.percent(value);
    }

    public static Current amps(double value) {
        return new Current(value);
    }

    public static Voltage volts(double value) {
        return new Voltage(value);
    }

    public static Power watts(double value) {
        return new Power(value);
    }

    // Places and shapes

    /** A place by plain numbers in the yard's unit: feet in a US yard, metres in a metric one. */
    public static Place at(double east, double north) {
        return Place.numbers(east, north);
    }

    public static Place at(Length east, Length north) {
        return Place.of(Point.at(east, north));
    }

    public static Path polyline(Place... places) {
        return new Path(Arrays.asList(places));
    }

    public static Path polyline(Polyline route) {
        return new Path(route.points().stream().map(Place::of).toList());
    }

    public static Outline polygon(Place... corners) {
        return Outline.polygon(Arrays.asList(corners));
    }

    public static Outline polygon(Region region) {
        return Outline.of(region);
    }

    /** From its south-western corner, so wide to the east and so long to the north. */
    public static Outline rectangle(Place corner, Length east, Length north) {
        return Outline.rectangle(corner, east, north);
    }

    public static Outline circle(Place centre, Length radius) {
        return Outline.circle(centre, radius);
    }

    // The site

    /** A yard with nothing in it, in US units until told otherwise. */
    public static Yard yard(String name) {
        return Yard.empty(name, UnitSystem.US);
    }

    public static TraversePart traverse(Place start) {
        return new TraversePart(start, List.of(), Fields.NONE);
    }

    /** Height of the ground as it is. */
    public static LevelPart level(Place at, Length height) {
        return new LevelPart(at, height, false);
    }

    /** Height of the ground as it will be. */
    public static LevelPart finishedLevel(Place at, Length height) {
        return new LevelPart(at, height, true);
    }

    public static SurfacePart lawn(String name, Outline outline) {
        return new SurfacePart(name, SurfaceKind.LAWN, outline, Fields.NONE);
    }

    public static SurfacePart bed(String name, Outline outline) {
        return new SurfacePart(name, SurfaceKind.BED, outline, Fields.NONE);
    }

    public static SurfacePart paving(String name, Outline outline) {
        return new SurfacePart(name, SurfaceKind.PAVING, outline, Fields.NONE);
    }

    public static SurfacePart structure(String name, Outline outline) {
        return new SurfacePart(name, SurfaceKind.STRUCTURE, outline, Fields.NONE);
    }

    public static SurfacePart pond(String name, Outline outline) {
        return new SurfacePart(name, SurfaceKind.WATER, outline, Fields.NONE);
    }

    /** A wall, a boulder, a tank: no trench goes through it. */
    public static ObstaclePart obstacle(String name, Outline outline) {
        return new ObstaclePart(
                units -> new Obstacle.Block(new ObstacleId(name), outline.in(units, "obstacle " + name)));
    }

    /** A tree by the diameter of its trunk at breast height; its root zone follows from that. */
    public static ObstaclePart tree(String name, Place at, Length trunk) {
        return new ObstaclePart(units -> new Obstacle.Tree(new ObstacleId(name), at.in(units), trunk));
    }

    /** A line that lies in the ground already. */
    public static GroundRulePart existingService(String name, ExistingService.Kind kind, Path route) {
        return GroundRulePart.service(name, kind, route);
    }

    /** Ground in which no trench may be. */
    public static GroundRulePart noDig(String name, Outline outline) {
        return GroundRulePart.zone(name, DigZone.Kind.NO_DIG, outline);
    }

    /** Ground in which trenches are dug by hand. */
    public static GroundRulePart handDig(String name, Outline outline) {
        return GroundRulePart.zone(name, DigZone.Kind.HAND_DIG, outline);
    }

    /** A line that no trench may cross. */
    public static GroundRulePart setback(String name, Path line) {
        return GroundRulePart.line(name, LimitLine.Kind.SETBACK, line);
    }

    /** The line to a neighbour, where it is not the lot boundary. */
    public static GroundRulePart neighbourLine(String name, Path line) {
        return GroundRulePart.line(name, LimitLine.Kind.NEIGHBOUR, line);
    }

    // Water

    public static SourcePart mains(String name, Place at) {
        return new SourcePart(name, SourcePart.Kind.MAINS, at, Fields.NONE);
    }

    public static SourcePart pump(String name, Place at) {
        return new SourcePart(name, SourcePart.Kind.PUMP, at, Fields.NONE);
    }

    public static SourcePart tank(String name, Place at) {
        return new SourcePart(name, SourcePart.Kind.TANK, at, Fields.NONE);
    }

    public static PipePart pipe(String name, Path route) {
        return new PipePart(name, route, Fields.NONE);
    }

    public static BackflowPart backflow(String name) {
        return new BackflowPart(name, Fields.NONE);
    }

    public static ManifoldPart manifold(String name, Place at) {
        return new ManifoldPart(name, at, Fields.NONE);
    }

    public static ZonePart zone(String name) {
        return new ZonePart(name, Fields.NONE);
    }

    public static HeadPart rotor(String name, Place at) {
        return HeadPart.standing(name, HeadShape.ROTOR, at);
    }

    public static HeadPart spray(String name, Place at) {
        return HeadPart.standing(name, HeadShape.SPRAY, at);
    }

    public static HeadPart bubbler(String name, Place at) {
        return HeadPart.standing(name, HeadShape.BUBBLER, at);
    }

    public static HeadPart dripLine(String name, Path path) {
        return HeadPart.lying(name, path);
    }

    public static BibPart bib(String name, Place at) {
        return new BibPart(name, at, Fields.NONE);
    }

    // Power and control

    /** The family of electrical codes; by the yard's units if left out. */
    public static CodePart electricalCode(CodeFamily family) {
        return new CodePart(family);
    }

    public static PanelPart panel(String name, Place at) {
        return new PanelPart(name, at, Fields.NONE);
    }

    public static CircuitPart circuit(String name) {
        return new CircuitPart(name, Fields.NONE);
    }

    public static LoadPart outlet(String name, Place at) {
        return new LoadPart(name, LoadPart.Kind.OUTLET, List.of(at), Fields.NONE);
    }

    /** Lights that are switched together, one at each place. */
    public static LoadPart luminaires(String name, Place... places) {
        return new LoadPart(
                name,
                LoadPart.Kind.LUMINAIRES,
                Require.entries("luminaires " + name, "places", Arrays.asList(places)),
                Fields.NONE);
    }

    /** The supply of the structure of that name. */
    public static LoadPart feed(String structure) {
        return new LoadPart(structure, LoadPart.Kind.FEED, List.of(), Fields.NONE);
    }

    /** The clock that opens the zone valves. */
    public static LoadPart controller(String name) {
        return new LoadPart(name, LoadPart.Kind.CONTROLLER, List.of(), Fields.NONE);
    }

    /** What feeds lamps of low voltage. */
    public static TransformerPart transformer(String name) {
        return new TransformerPart(name, Fields.NONE);
    }

    public static ConduitPart conduit(String name, Path route) {
        return new ConduitPart(name, route, Fields.NONE);
    }

    /** The conductors of a circuit from one thing to the next. */
    public static CablePart cable(String name, Path route) {
        return new CablePart(name, false, route, Fields.NONE);
    }

    /** The wires from a controller to the valves of a manifold. */
    public static CablePart valveWires(String name, Path route) {
        return new CablePart(name, true, route, Fields.NONE);
    }

    /** By what the watering schedule is made. */
    public static WateringPart watering() {
        return new WateringPart(WateringNeeds.NONE);
    }

    // Trenches

    public static TrenchPart trench(String name, Path route) {
        return new TrenchPart(name, route, Fields.NONE);
    }

    // Additions to the standing tables

    public static FamilyPart rotorFamily(String key) {
        return new FamilyPart(key, HeadShape.ROTOR, Fields.NONE);
    }

    public static FamilyPart sprayFamily(String key) {
        return new FamilyPart(key, HeadShape.SPRAY, Fields.NONE);
    }

    /** A limit of this yard's own for a rule of the standing table. */
    public static LimitPart limit(String rule, Quantity limit) {
        return new LimitPart(new RuleLimit(rule, limit));
    }

    /**
     * How something of now does for a while without a thing that comes later.
     *
     * @param subject kind and name, such as {@code controller garden}
     */
    public static TemporaryPart temporary(String subject, String arrangement) {
        return new TemporaryPart(new Temporary(subject, arrangement));
    }

    /** What the budget has to go by: prices, waste, tax, contingency. */
    public static BudgetPart budget() {
        return new BudgetPart(Fields.NONE, Collections.emptySortedMap());
    }

    /** Several parts as one. */
    public static GroupPart group(Part... parts) {
        return new GroupPart(Arrays.asList(parts));
    }
}
