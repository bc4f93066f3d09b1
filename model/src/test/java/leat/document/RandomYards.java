package leat.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import leat.model.catalog.Additions;
import leat.model.catalog.Costs;
import leat.model.catalog.FlowRule;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.HeadShape;
import leat.model.catalog.Jet;
import leat.model.catalog.MaterialKind;
import leat.model.catalog.PressureRange;
import leat.model.catalog.Price;
import leat.model.catalog.PriceBook;
import leat.model.catalog.PriceUnit;
import leat.model.catalog.RuleLimit;
import leat.model.catalog.Rules;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.geometry.Arc;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Region;
import leat.model.id.DigZoneId;
import leat.model.id.Id;
import leat.model.id.LaidId;
import leat.model.id.LineId;
import leat.model.id.ObstacleId;
import leat.model.id.SegmentId;
import leat.model.id.ServiceId;
import leat.model.id.SurfaceId;
import leat.model.plan.Aspect;
import leat.model.plan.Planned;
import leat.model.plan.Temporary;
import leat.model.plan.Yard;
import leat.model.power.PowerSystem;
import leat.model.quantity.Angle;
import leat.model.quantity.Dimension;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;
import leat.model.quantity.UnitSystem;
import leat.model.site.Course;
import leat.model.site.DigZone;
import leat.model.site.ExistingService;
import leat.model.site.Ground;
import leat.model.site.LimitLine;
import leat.model.site.Obstacle;
import leat.model.site.Phase;
import leat.model.site.SpotLevel;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Survey;
import leat.model.site.Terrain;
import leat.model.site.Watering;
import leat.model.trench.TrenchSegment;
import leat.model.water.WaterSystem;

/** Yards that use all that a document can hold, with names and figures that are awkward to write. Same seed, same yard. */
final class RandomYards {

    private static final Rules RULES = StandingData.load("leat-1").rules();

    private static final List<String> NAMES = List.of(
            "R", "süd 'wall'", "a/b~c", "say \"when\"", "back\\slash", "芝生", "🌱", "zone-3/lateral-2", "x: y, z", "{[");

    private final Random random;

    private int made;

    private RandomYards(long seed) {
        random = new Random(seed);
    }

    static Yard of(long seed) {
        return new RandomYards(seed).yard();
    }

    private Costs costs() {
        String currency = random.nextBoolean() ? "USD" : "EUR";
        SortedMap<MaterialKind, Ratio> byKind = new TreeMap<>();
        some(List.of(MaterialKind.values())).forEach(kind -> byKind.put(kind, Ratio.percent(random.nextInt(101))));
        return new Costs(
                new PriceBook(list(i -> Price.of(
                        name(),
                        any(PriceUnit.class).symbol(),
                        random.nextInt(1000) + "." + random.nextInt(1_000_000),
                        currency,
                        name(),
                        "20" + (10 + random.nextInt(90)) + "-0" + (1 + random.nextInt(9)) + "-28"))),
                Ratio.percent(random.nextInt(101)),
                byKind,
                Ratio.of(random.nextDouble()),
                Ratio.percent(random.nextInt(3) * 5));
    }

    private Yard yard() {
        Terrain terrain = terrain();
        WaterSystem water = new RandomWater(this).system();
        PowerSystem power = new RandomPower(this).system(water);
        List<LaidId> laid = new ArrayList<>(water.pipes().map(pipe -> pipe.id()).toList());
        power.conduits().forEach(conduit -> laid.add(conduit.id()));
        power.cables().forEach(cable -> laid.add(cable.id()));
        List<TrenchSegment> trenches = list(i -> new TrenchSegment(
                new SegmentId(name()), route(), length(), some(laid), random.nextBoolean(), any(Phase.class)));
        SortedMap<Id, SortedSet<Aspect>> planned = new TreeMap<>();
        for (Id id : Yard.plannable(water, power, trenches)) {
            planned.put(id, new TreeSet<>(some(List.of(Aspect.values()))));
        }
        return new Yard(
                name(),
                any(UnitSystem.class),
                Yard.EDITION,
                terrain,
                water,
                power,
                trenches,
                new RandomWatering(this).needs(terrain),
                costs(),
                list(i -> new Temporary("controller " + name(), random.nextBoolean() ? "on a post" : name())),
                new Planned(planned),
                new Additions(
                        list(i -> family()),
                        some(List.copyOf(RULES.byId().keySet())).stream()
                                .map(this::limit)
                                .toList()));
    }

    private Terrain terrain() {
        return new Terrain(
                maybe(this::survey),
                new Ground(list(i -> level()), list(i -> level())),
                list(i -> new Surface(
                        new SurfaceId(name()),
                        any(SurfaceKind.class),
                        region(),
                        any(Watering.class),
                        maybe(() -> "silt loam"),
                        maybe(() -> random.nextBoolean() ? "" : "line\nfeed, tab\t, null\0 and half a pair \uD83C"),
                        any(Phase.class))),
                list(i -> random.nextBoolean()
                        ? new Obstacle.Block(new ObstacleId(name()), region())
                        : new Obstacle.Tree(new ObstacleId(name()), point(), length())),
                list(i ->
                        new ExistingService(new ServiceId(name()), any(ExistingService.Kind.class), route(), length())),
                list(i -> new DigZone(new DigZoneId(name()), any(DigZone.Kind.class), region(), length())),
                list(i -> new LimitLine(new LineId(name()), any(LimitLine.Kind.class), route())));
    }

    /** A square, measured a little wrong, or three of its sides. */
    private Survey survey() {
        double sideM = 10 + 20 * random.nextDouble();
        boolean measured = random.nextBoolean();
        List<Course> courses = new ArrayList<>();
        for (int i = 0; i < (measured ? 4 : 3); i++) {
            courses.add(
                    new Course(new Angle(90 * i + random.nextDouble()), new Length(sideM + random.nextDouble() / 10)));
        }
        return new Survey(near(), courses, measured ? Survey.Closing.MEASURED : Survey.Closing.DRAWN);
    }

    private SpotLevel level() {
        return new SpotLevel(point(), new Length(length().metres() - 5));
    }

    private HeadFamily family() {
        Length most = length();
        Pressure least = pressure();
        Jet jet = new Jet(
                most,
                most.times(0.1 + 0.9 * random.nextDouble()),
                flow(),
                any(FlowRule.class),
                random.nextBoolean() ? 0.5 : random.nextDouble(),
                random.nextBoolean() ? 0 : random.nextDouble(),
                name());
        Angle leastArc = new Angle(1 + 100 * random.nextDouble());
        return new HeadFamily(
                name(),
                any(HeadShape.class),
                jet,
                new PressureRange(least, least.times(1.5), least.times(2)),
                leastArc,
                random.nextBoolean() ? new Angle(360) : leastArc.times(2),
                random.nextBoolean() ? Length.ZERO : length(),
                new Citation(random.nextBoolean() ? "" : name(), any(Standing.class)));
    }

    private RuleLimit limit(String rule) {
        Dimension dimension = RULES.get(rule).limit().dimension();
        Quantity limit = dimension.of(dimension == Dimension.COUNT ? random.nextInt(9) : figure());
        return new RuleLimit(rule, limit);
    }

    // What RandomWater also draws from

    /** Another name each time. */
    String name() {
        return NAMES.get(random.nextInt(NAMES.size())) + made++;
    }

    boolean coin() {
        return random.nextBoolean();
    }

    <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    <E extends Enum<E>> E any(Class<E> type) {
        return one(List.of(type.getEnumConstants()));
    }

    /** Up to three. */
    <T> List<T> list(IntFunction<T> maker) {
        List<T> list = new ArrayList<>();
        int count = random.nextInt(4);
        for (int i = 0; i < count; i++) {
            list.add(maker.apply(i));
        }
        return list;
    }

    <T> List<T> some(List<T> of) {
        return of.stream().filter(one -> random.nextBoolean()).toList();
    }

    <T> Optional<T> maybe(Supplier<T> maker) {
        return random.nextBoolean() ? Optional.of(maker.get()) : Optional.empty();
    }

    /** From 0 to 1. */
    double share() {
        return random.nextBoolean() ? random.nextInt(101) / 100.0 : random.nextDouble();
    }

    /** More than 0: a round figure in some unit, or any double, now and then a very small or large one. */
    private double figure() {
        return switch (random.nextInt(5)) {
            case 0 -> (1 + random.nextInt(100)) * 0.3048;
            case 1 -> (1 + random.nextInt(400)) / 4.0;
            case 2 -> Math.pow(10, 40 * random.nextDouble() - 20);
            default -> 100 * random.nextDouble() + 0.001;
        };
    }

    Length length() {
        return new Length(figure());
    }

    Pressure pressure() {
        return random.nextBoolean()
                ? Pressure.psi(1 + random.nextInt(80))
                : new Pressure(1 + 1e6 * random.nextDouble());
    }

    Flow flow() {
        return random.nextBoolean() ? Flow.gpm((1 + random.nextInt(80)) / 4.0) : new Flow(1e-6 + random.nextDouble());
    }

    Arc arc() {
        return random.nextInt(4) == 0
                ? Arc.FULL
                : new Arc(new Angle(720 * random.nextDouble() - 360), new Angle(360 - 359 * random.nextDouble()));
    }

    Point point() {
        return new Point(figure() - 50, figure() - 50);
    }

    /** Not so far away that a step from it is lost in rounding. */
    private Point near() {
        return new Point(40 * random.nextDouble(), 40 * random.nextDouble());
    }

    Polyline route() {
        List<Point> points = new ArrayList<>(List.of(near()));
        int more = 1 + random.nextInt(4);
        for (int i = 0; i < more; i++) {
            points.add(points.get(i).moved(new Angle(360 * random.nextDouble()), Length.metres(1 + i)));
        }
        return new Polyline(points);
    }

    /** Seen from its middle each corner lies further around than the one before, so no sides cross. */
    private Region region() {
        Point middle = near();
        Region around = Region.of(ring(middle, 5));
        return random.nextBoolean() ? around : around.without(Region.of(ring(middle, 1)));
    }

    private List<Point> ring(Point middle, double radiusM) {
        int corners = 5 + random.nextInt(7);
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double bearing = 360.0 / corners * (i + 0.5 * random.nextDouble());
            ring.add(middle.moved(new Angle(bearing), new Length(radiusM * (1.5 + 0.5 * random.nextDouble()))));
        }
        return ring;
    }

    <A, B> SortedMap<A, B> mapped(List<A> keys, Function<A, B> to) {
        SortedMap<A, B> map = new TreeMap<>();
        keys.forEach(key -> map.put(key, to.apply(key)));
        return map;
    }
}
